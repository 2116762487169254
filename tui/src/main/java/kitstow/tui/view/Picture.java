package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.statics.CentreOfMass;

/**
 * One view of a load to scale, as cells of a screen: which sign stands in a cell and which thing is
 * seen in it. The chosen thing is drawn over all others with a double outline. A thing carries its
 * name where there is room for it, else its number.
 */
public final class Picture {
  private static final int LEAST_NAME = 4;

  /**
   * A thing as it lies on cells.
   *
   * @param key body key
   * @param left first column
   * @param top first row
   * @param right last column
   * @param bottom last row
   */
  public record Shape(String key, int left, int top, int right, int bottom) {}

  /**
   * What a picture shows.
   *
   * @param loading the load
   * @param boxes where everything is
   * @param eye from where
   * @param centre centre of mass, where it is known
   * @param chosen body key of the chosen thing, or ""
   */
  public record Subject(
      Loading loading, LoadBoxes boxes, Eye eye, Optional<CentreOfMass> centre, String chosen) {}

  private final Subject subject;
  private final Scale scale;
  private final boolean ascii;
  private final Map<String, Shape> shapes = new LinkedHashMap<>();
  private final char[][] signs;
  private final String[][] seen;
  private final Keys keys;

  /** Draws a subject to a scale. */
  public Picture(Subject subject, Scale scale, boolean ascii) {
    this.subject = subject;
    this.scale = scale;
    this.ascii = ascii;
    this.keys = Keys.of(subject.loading());
    this.signs = new char[scale.rows()][scale.columns()];
    this.seen = new String[scale.rows()][scale.columns()];
    draw();
  }

  private void draw() {
    Loading loading = subject.loading();
    Eye eye = subject.eye();
    Drawing drawing = new Drawing(scale);
    axles(drawing);
    List<Block> blocks = new ArrayList<>();
    for (BoxMm host : subject.boxes().hosts()) {
      blocks.add(eye.block("", host, /* solid= */ false));
    }
    for (Space space : loading.rig().spaces().values()) {
      if (space.inModules().isEmpty()
          && eye.sees(space.box(), space.zone())
          && !loading.in(space.id()).isEmpty()) {
        blocks.add(eye.block("", space.box(), /* solid= */ false));
      }
    }
    for (FittedModule module : loading.rig().modules().values()) {
      if (eye.sees(module.box(), module.bay().zone())) {
        String id = module.module().id();
        blocks.add(
            eye.block(keys.modules().getOrDefault(id, ""), module.box(), /* solid= */ false));
        BoxMm out = subject.boxes().pulledOut().get(id);
        if (out != null) {
          blocks.add(eye.block("", out, /* solid= */ false));
        }
      }
    }
    List<PlacedItem> things = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (eye.sees(item.box(), item.space().zone())) {
        things.add(item);
        blocks.add(
            eye.block(keys.items().getOrDefault(item.key(), ""), boxOf(item), /* solid= */ true));
      }
    }
    subject.centre().ifPresent(centre -> mark(drawing, centre));
    drawing.draw(blocks);
    copy(drawing);
    things.sort(Comparator.comparingInt(item -> eye.near(boxOf(item))));
    things.forEach(this::see);
    shapes.values().forEach(this::name);
    Optional.ofNullable(shapes.get(subject.chosen())).ifPresent(this::outline);
  }

  private BoxMm boxOf(PlacedItem item) {
    return subject.boxes().items().getOrDefault(item.key(), item.box());
  }

  private void axles(Drawing drawing) {
    if (subject.eye() == Eye.REAR) {
      for (int row = 0; row < scale.rows(); row++) {
        drawing.canvas().sign(scale.column(0), row, ascii ? ':' : '┊');
      }
    } else {
      AxleMarks.lines(subject.loading().scenario().ute(), drawing, page());
    }
  }

  private Page page() {
    return new Page(Page.USUAL_WIDTH, ascii);
  }

  private void mark(Drawing drawing, CentreOfMass centre) {
    Eye eye = subject.eye();
    boolean here =
        switch (eye) {
          case LEFT -> centre.yMm() <= 0.0;
          case RIGHT -> centre.yMm() > 0.0;
          case ABOVE, REAR -> true;
          case ROOFS -> false;
        };
    if (here) {
      drawing.mark(
          eye == Eye.REAR ? centre.yMm() : centre.xMm(),
          eye.flat() ? centre.yMm() : centre.zMm(),
          AxleMarks.centre(page()));
    }
  }

  private void copy(Drawing drawing) {
    List<String> lines = drawing.canvas().lines(ascii);
    for (int row = 0; row < scale.rows(); row++) {
      String line = lines.get(row);
      for (int column = 0; column < scale.columns(); column++) {
        signs[row][column] = column < line.length() ? line.charAt(column) : ' ';
      }
    }
  }

  private void see(PlacedItem item) {
    BoxMm box = boxOf(item);
    Eye eye = subject.eye();
    Shape shape =
        new Shape(
            item.key(),
            scale.column(eye.minAcrossMm(box)),
            scale.row(eye.maxUpMm(box)),
            scale.column(eye.maxAcrossMm(box)),
            scale.row(eye.minUpMm(box)));
    shapes.put(item.key(), shape);
    for (int row = shape.top(); row <= shape.bottom(); row++) {
      for (int column = shape.left(); column <= shape.right(); column++) {
        if (scale.holds(column, row)) {
          seen[row][column] = item.key();
        }
      }
    }
  }

  /** Writes a name into a shape none of which is hidden, if there is room for a word of it. */
  private void name(Shape shape) {
    int width = shape.right() - shape.left() - 1;
    int height = shape.bottom() - shape.top() - 1;
    if (width < LEAST_NAME || height < 1 || !whole(shape)) {
      return;
    }
    List<String> lines = label(shape.key(), width, height);
    if (lines.isEmpty()) {
      return;
    }
    clear(shape);
    int row = shape.top() + 1 + (height - lines.size()) / 2;
    for (String line : lines) {
      int column = shape.left() + 1 + (width - line.length()) / 2;
      for (int i = 0; i < line.length(); i++) {
        signs[row][column + i] = line.charAt(i);
      }
      row++;
    }
  }

  private boolean whole(Shape shape) {
    for (int row = shape.top() + 1; row < shape.bottom(); row++) {
      for (int column = shape.left() + 1; column < shape.right(); column++) {
        if (!scale.holds(column, row) || !shape.key().equals(seen[row][column])) {
          return false;
        }
      }
    }
    return true;
  }

  /** The number and as many words of the name as fit; nothing if that is none. */
  private List<String> label(String key, int width, int height) {
    PlacedItem item = subject.loading().placed().get(key);
    if (item == null) {
      return List.of();
    }
    String[] words = page().shown(item.item().title()).replace(",", "").split(" +", -1);
    String number = keys.items().getOrDefault(key, "");
    for (int count = words.length; count >= 1; count--) {
      List<String> taken = new ArrayList<>(List.of(number));
      taken.addAll(List.of(words).subList(0, count));
      boolean fits = taken.stream().allMatch(word -> word.length() <= width);
      List<String> lines = fits ? Page.wrapped(String.join(" ", taken), width) : List.of();
      if (fits && lines.size() <= height) {
        return lines;
      }
    }
    return List.of();
  }

  private void clear(Shape shape) {
    for (int row = shape.top() + 1; row < shape.bottom(); row++) {
      for (int column = shape.left() + 1; column < shape.right(); column++) {
        signs[row][column] = ' ';
      }
    }
  }

  private void outline(Shape shape) {
    for (int column = shape.left(); column <= shape.right(); column++) {
      sign(column, shape.top(), ascii ? '#' : '═');
      sign(column, shape.bottom(), ascii ? '#' : '═');
    }
    for (int row = shape.top(); row <= shape.bottom(); row++) {
      boolean edge = row == shape.top() || row == shape.bottom();
      sign(shape.left(), row, ascii ? '#' : !edge ? '║' : row == shape.top() ? '╔' : '╚');
      sign(shape.right(), row, ascii ? '#' : !edge ? '║' : row == shape.top() ? '╗' : '╝');
    }
    if (!whole(shape)) {
      number(shape);
    }
  }

  /** The number of the chosen thing over whatever hides it. */
  private void number(Shape shape) {
    String number = keys.items().getOrDefault(shape.key(), "");
    for (int row = shape.top() + 1; row < shape.bottom(); row++) {
      for (int column = shape.left() + 1; column < shape.right(); column++) {
        sign(column, row, ' ');
      }
    }
    int row = (shape.top() + shape.bottom()) / 2;
    int column = (shape.left() + shape.right() + 1 - number.length()) / 2;
    for (int i = 0; i < number.length(); i++) {
      sign(column + i, row, number.charAt(i));
    }
  }

  private void sign(int column, int row, char sign) {
    if (scale.holds(column, row)) {
      signs[row][column] = sign;
      seen[row][column] = subject.chosen();
    }
  }

  /** The sign in a cell. */
  public char sign(int column, int row) {
    return signs[row][column];
  }

  /** Body key of the thing that is seen in a cell. */
  public Optional<String> thingAt(int column, int row) {
    return Optional.ofNullable(seen[row][column]);
  }

  /** Every thing that is seen from here, the farthest first. */
  public Map<String, Shape> shapes() {
    return shapes;
  }

  /** How millimetres lie on cells. */
  public Scale scale() {
    return scale;
  }
}
