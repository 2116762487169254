package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Zone;
import kitstow.planner.statics.CentreOfMass;

/** All drawings of a load to one scale, and the legend for them. */
public final class Drawings {
  private final Loading loading;
  private final CentreOfMass centre;
  private final Page page;
  private final Keys keys;
  private final LoadBlocks load;
  private final BoxMm window;
  private final Set<String> drawn = new TreeSet<>();

  /** Drawings of a loading with its centre of mass in one state. */
  public Drawings(Loading loading, CentreOfMass centre, Page page) {
    this.loading = loading;
    this.centre = centre;
    this.page = page;
    this.keys = Keys.of(loading);
    this.load = new LoadBlocks(loading, keys);
    this.window = window();
  }

  private BoxMm window() {
    int rearAxle = loading.scenario().ute().wheelbaseMm();
    BoxMm all = BoxMm.point(rearAxle, 0, 0);
    boolean first = true;
    for (BoxMm box : load.all()) {
      BoxMm around =
          new BoxMm(
              Math.min(rearAxle, Math.min(all.minXMm(), box.minXMm())),
              Math.min(all.minYMm(), box.minYMm()),
              first ? box.minZMm() : Math.min(all.minZMm(), box.minZMm()),
              Math.max(rearAxle, Math.max(all.maxXMm(), box.maxXMm())),
              Math.max(all.maxYMm(), box.maxYMm()),
              first ? box.maxZMm() : Math.max(all.maxZMm(), box.maxZMm()));
      all = around;
      first = false;
    }
    return all;
  }

  /** The left or right half of the load seen from its side. */
  public Drawing side(Facing side) {
    Drawing drawing = new Drawing(sideScale());
    boolean here = side == Facing.LEFT ? centre.yMm() <= 0.0 : centre.yMm() >= 0.0;
    return drawn(drawing, SideView.blocks(load, side), here, centre.zMm());
  }

  /** The load from above, roofs or all but roofs. */
  public Drawing plan(Predicate<Zone> zones) {
    Drawing drawing = new Drawing(planScale());
    return drawn(
        drawing, PlanView.blocks(load, zones), !zones.test(Zone.CANOPY_ROOF), centre.yMm());
  }

  private Drawing drawn(Drawing drawing, List<Block> blocks, boolean markCentre, double centreUp) {
    AxleMarks.lines(loading.scenario().ute(), drawing, page);
    if (markCentre) {
      drawing.mark(centre.xMm(), centreUp, AxleMarks.centre(page));
    }
    drawing.draw(blocks);
    drawn.addAll(drawing.spots().keySet());
    return drawing;
  }

  private Scale sideScale() {
    return Scale.fit(
        window.minXMm(), window.maxXMm(), window.minZMm(), window.maxZMm(), Page.DRAWING_WIDTH);
  }

  private Scale planScale() {
    return Scale.fit(
        window.minXMm(), window.maxXMm(), window.minYMm(), window.maxYMm(), Page.DRAWING_WIDTH);
  }

  /** Every drawing under a line that says what it shows. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.addAll(WholeView.lines(loading, centre, page));
    Scale scale = sideScale();
    lines.add("");
    lines.addAll(
        page.paragraph(
            "",
            "The load, to a scale of "
                + scale.mmPerColumn()
                + " mm per cell across and "
                + scale.mmPerRow()
                + " mm per cell up; front at the left; the left edge is "
                + scale.leftMm()
                + " mm behind the front axle. Letters are modules, numbers are gear; boxes without"
                + " a key are tray, canopy and spaces; "
                + AxleMarks.centre(page)
                + " is the centre of mass, where it is in the picture."));
    add("Left side, left half" + kerb(Facing.LEFT), side(Facing.LEFT), lines);
    add(
        "Right side, right half, seen through from the left" + kerb(Facing.RIGHT),
        side(Facing.RIGHT),
        lines);
    add(
        "From above, without the roofs; the right side is at the top",
        plan(z -> !PlanView.roof(z)),
        lines);
    if (onRoofs()) {
      add("From above, the roofs alone; the right side is at the top", plan(PlanView::roof), lines);
    }
    return lines;
  }

  private void add(String title, Drawing drawing, List<String> lines) {
    lines.add("");
    lines.add(title);
    lines.addAll(drawing.canvas().lines(page.ascii()));
    lines.add(AxleMarks.captions(loading.scenario().ute(), drawing.scale()));
  }

  private String kerb(Facing side) {
    return loading.scenario().settings().kerbSide() == side ? "; the kerb side" : "";
  }

  private boolean onRoofs() {
    for (PlacedItem item : loading.placed().values()) {
      if (PlanView.roof(item.space().zone())) {
        return true;
      }
    }
    for (FittedModule module : loading.rig().modules().values()) {
      if (PlanView.roof(module.bay().zone())) {
        return true;
      }
    }
    return false;
  }

  /** What the letters and numbers stand for; call it after the drawings are made. */
  public List<String> legend(Subjects subjects) {
    return Legend.lines(loading, keys, drawn, subjects, page);
  }
}
