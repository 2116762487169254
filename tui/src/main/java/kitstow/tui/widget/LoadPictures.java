package kitstow.tui.widget;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.statics.CentreOfMass;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Eye;
import kitstow.tui.view.LoadBoxes;
import kitstow.tui.view.Picture;
import kitstow.tui.view.Scale;

/** Views of the load in an area: as many as are legible in it, all to one scale. */
public final class LoadPictures {
  private static final long MEDIUM_G = 10_000L;
  private static final long HEAVY_G = 20_000L;
  private static final double ZOOM_STEP = 1.4;
  private static final int TENTHS = 10;

  /**
   * What is shown.
   *
   * @param loading the load
   * @param state moment of the trip, for what is pulled out
   * @param centre centre of mass
   * @param eye the view one is in
   * @param zoom steps nearer
   * @param panAcross tenths of the picture moved across
   * @param panUp tenths of the picture moved up
   * @param chosen body key of the chosen thing, or ""
   * @param broken body keys of things that stand where they may not
   */
  public record Subject(
      Loading loading,
      Optional<LoadState> state,
      Optional<CentreOfMass> centre,
      Eye eye,
      int zoom,
      int panAcross,
      int panUp,
      String chosen,
      Set<String> broken) {
    /** Copies its collections. */
    public Subject {
      broken = Set.copyOf(broken);
    }
  }

  private final Frame frame;
  private final Subject subject;
  private final LoadBoxes boxes;

  private LoadPictures(Frame frame, Subject subject) {
    this.frame = frame;
    this.subject = subject;
    this.boxes = new LoadBoxes(subject.loading(), subject.state());
  }

  /** Draws the views. */
  public static void draw(Frame frame, Area area, Subject subject) {
    new LoadPictures(frame, subject).draw(area);
  }

  private void draw(Area area) {
    BoxMm window = boxes.window();
    if (subject.zoom() > 0) {
      draw(area, subject.eye(), near(area, window));
      return;
    }
    List<Arrangement.Spot> spots = Arrangement.of(subject.eye(), window, area);
    for (Arrangement.Spot spot : spots) {
      draw(spot.area(), spot.eye(), spot.scale());
    }
  }

  /** A scale nearer by some steps, about the chosen thing or the middle. */
  private Scale near(Area area, BoxMm window) {
    Scale whole = Arrangement.alone(subject.eye(), window, area).scale();
    int mmPerColumn =
        Math.max(1, (int) Math.round(whole.mmPerColumn() / Math.pow(ZOOM_STEP, subject.zoom())));
    BoxMm about = boxes.items().getOrDefault(subject.chosen(), window);
    Eye eye = subject.eye();
    int columns = area.columns();
    int rows = Math.max(1, area.rows() - Arrangement.CAPTION_ROWS);
    int acrossMm = columns * mmPerColumn;
    int upMm = rows * 2 * mmPerColumn;
    int middleAcross = (eye.minAcrossMm(about) + eye.maxAcrossMm(about)) / 2;
    int middleUp = (eye.minUpMm(about) + eye.maxUpMm(about)) / 2;
    return new Scale(
        middleAcross - acrossMm / 2 + subject.panAcross() * acrossMm / TENTHS,
        middleUp + upMm / 2 + subject.panUp() * upMm / TENTHS,
        mmPerColumn,
        columns,
        rows);
  }

  private void draw(Area area, Eye eye, Scale scale) {
    Picture picture =
        new Picture(
            new Picture.Subject(subject.loading(), boxes, eye, subject.centre(), subject.chosen()),
            scale,
            frame.ascii());
    boolean here = eye == subject.eye();
    int taken =
        frame.text(area, 0, 0, (here ? "> " : "  ") + eye.title(), here ? Ink.STRONG : Ink.PLAIN);
    frame.text(area, taken, 0, ", " + scale.mmPerColumn() + " mm a cell", Ink.PLAIN);
    frame.target(area.top(1), new Target.Press(KeyPress.sign('v')));
    Area cells = area.belowTop(1);
    for (int row = 0; row < scale.rows() && row < cells.rows(); row++) {
      for (int column = 0; column < scale.columns() && column < cells.columns(); column++) {
        draw(cells, picture, column, row, eye, scale);
      }
    }
    captions(area.belowTop(1 + scale.rows()), eye, scale);
  }

  private void draw(Area cells, Picture picture, int column, int row, Eye eye, Scale scale) {
    char sign = picture.sign(column, row);
    Optional<String> thing = picture.thingAt(column, row);
    Ink ink = thing.map(key -> ink(picture, key, column, row)).orElse(Ink.PLAIN);
    frame.sign(cells, column, row, sign, sign, ink);
    frame.target(
        new Area(cells.column() + column, cells.row() + row, 1, 1),
        new Target.Spot(thing.orElse(""), eye.name(), scale.xMm(column), scale.upMm(row)));
  }

  private Ink ink(Picture picture, String key, int column, int row) {
    if (key.equals(subject.chosen())) {
      return subject.broken().contains(key) ? Ink.BROKEN : Ink.PICKED;
    }
    if (subject.broken().contains(key)) {
      return Ink.BROKEN;
    }
    Picture.Shape shape = picture.shapes().get(key);
    boolean inside =
        shape != null
            && column > shape.left()
            && column < shape.right()
            && row > shape.top()
            && row < shape.bottom();
    PlacedItem item = subject.loading().placed().get(key);
    if (!inside || item == null) {
      return Ink.PLAIN;
    }
    long massG = item.item().mass().massG();
    return massG >= HEAVY_G ? Ink.HEAVY : massG >= MEDIUM_G ? Ink.MEDIUM : Ink.PLAIN;
  }

  private void captions(Area area, Eye eye, Scale scale) {
    if (area.rows() < 1) {
      return;
    }
    if (eye == Eye.REAR) {
      frame.text(area, 0, 0, "left", Ink.PLAIN);
      frame.textRight(area.left(scale.columns()), 0, "right", Ink.PLAIN);
      return;
    }
    int axle = scale.column(subject.loading().scenario().ute().wheelbaseMm());
    String text = "rear axle";
    if (axle >= 0 && axle < scale.columns()) {
      boolean fits = axle + 2 + text.length() <= area.columns();
      frame.text(
          area,
          fits ? axle : Math.max(0, axle - text.length() - 1),
          0,
          fits ? "^ " + text : text + " ^",
          Ink.PLAIN);
    }
    if (axle > "front".length() + 1 || axle < 0) {
      frame.text(area, 0, 0, "front", Ink.PLAIN);
    }
  }
}
