package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Ute;
import kitstow.planner.statics.CentreOfMass;
import kitstow.planner.statics.RearOverhangLimit;

/** The whole ute from the side: axles, tray, canopy, people, ball and centre of mass. */
final class WholeView {
  private static final int ROOM_AHEAD_MM = 300;

  private WholeView() {}

  static List<String> lines(Loading loading, CentreOfMass centre, Page page) {
    Ute ute = loading.scenario().ute();
    Drawing drawing = new Drawing(scale(loading));
    AxleMarks.lines(ute, drawing, page);
    List<Block> blocks = new ArrayList<>();
    int rearMm = ute.rearmostXMm();
    int topMm = ute.cabRoofZMm();
    for (Body body : loading.bodies()) {
      BoxMm box = body.box();
      switch (body.kind()) {
        case TRAY, CANOPY -> blocks.add(outline(box));
        case PERSON -> {
          if (!body.key().startsWith(Loading.SEAT)) {
            drawing.mark(box.minXMm(), box.minZMm(), 'p');
          }
        }
        case BALL -> drawing.mark(box.minXMm(), box.minZMm(), 'b');
        case UTE, PART, ACCESSORY, MODULE, TANK, LIQUID, ITEM -> {}
      }
      if (body.kind() != BodyKind.UTE && body.kind() != BodyKind.BALL) {
        rearMm = Math.max(rearMm, box.maxXMm());
        topMm = Math.max(topMm, box.maxZMm());
      }
    }
    drawing.mark(centre.xMm(), centre.zMm(), AxleMarks.centre(page));
    int groundRow = drawing.scale().row(0);
    drawing.canvas().rectangle(0, groundRow, drawing.scale().columns() - 1, groundRow);
    drawing.mark(0, 0, 'O');
    drawing.mark(ute.wheelbaseMm(), 0, 'O');
    drawing.draw(blocks);

    List<String> lines =
        new ArrayList<>(
            page.paragraph(
                "",
                "The whole ute from the left, "
                    + drawing.scale().mmPerColumn()
                    + " mm per cell across and "
                    + drawing.scale().mmPerRow()
                    + " mm per cell up: tray"
                    + (loading.indexOf(Rig.CANOPY) >= 0 ? " and canopy" : "")
                    + ", p people, b tow ball, O wheels, "
                    + AxleMarks.centre(page)
                    + " centre of mass ("
                    + Figures.near(centre.xMm(), 0)
                    + " mm behind the front axle, "
                    + Figures.near(Math.abs(centre.yMm()), 0)
                    + (centre.yMm() < 0.0 ? " mm to the left, " : " mm to the right, ")
                    + Figures.near(centre.zMm(), 0)
                    + " mm up). Ute, body and load reach "
                    + Figures.near(Math.max(0, rearMm - ute.wheelbaseMm()), 0)
                    + " mm behind the rear axle and "
                    + Figures.near(topMm, 0)
                    + " mm up."));
    lines.addAll(page.paragraph("", reachCompared(ute.wheelbaseMm())));
    lines.addAll(drawing.canvas().lines(page.ascii()));
    lines.add(AxleMarks.captions(ute, drawing.scale()));
    return lines;
  }

  /** Figures to hold the reach behind the rear axle against; no rule is made of them. */
  private static String reachCompared(int wheelbaseMm) {
    int sixtyMm = RearOverhangLimit.sixtyPercentMm(wheelbaseMm);
    int australianMm = RearOverhangLimit.australianMm(wheelbaseMm);
    return "To compare that reach with: 60 % of the wheelbase is "
        + Figures.near(sixtyMm, 0)
        + " mm (a UK guide); the lesser of that and 3.7 m, here "
        + Figures.near(australianMm, 0)
        + " mm, binds heavy vehicles in Australia; light-vehicle law differs by state.";
  }

  private static Scale scale(Loading loading) {
    int rear = loading.scenario().ute().rearmostXMm();
    int front = -ROOM_AHEAD_MM;
    int top = loading.scenario().ute().cabRoofZMm();
    for (Body body : loading.bodies()) {
      rear = Math.max(rear, body.box().maxXMm());
      front = Math.min(front, body.box().minXMm());
      top = Math.max(top, body.box().maxZMm());
    }
    return Scale.fit(front, rear, 0, top, Page.DRAWING_WIDTH);
  }

  private static Block outline(BoxMm box) {
    return new Block(
        "", box.minXMm(), box.maxXMm(), box.minZMm(), box.maxZMm(), 0, /* solid= */ false);
  }
}
