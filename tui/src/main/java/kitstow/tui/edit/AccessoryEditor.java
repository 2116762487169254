package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;

/**
 * A fixed addition, such as a bar: its mass and where its middle is, from the nearer axle line as
 * it is measured beside the vehicle.
 */
public final class AccessoryEditor implements Editor {
  private static final long MOST_G = 1_000_000L;
  private static final long MOST_ALONG_MM = 6_000L;
  private static final long MOST_UP_MM = 4_000L;
  private static final long MOST_ACROSS_MM = 1_500L;

  private static final List<String> WAYS =
      List.of(
          "ahead of the front axle",
          "behind the front axle",
          "ahead of the rear axle",
          "behind the rear axle");

  private static final String UNTOLD = "?";
  private static final List<String> SIDES = List.of("left", "right");

  private final Scenario scenario;
  private final Accessory accessory;
  private final boolean isNew;
  private final List<Zone> roofs;
  private final Field name = Field.text("Name");
  private final Field mass = Field.mass("Mass", MOST_G);
  private final Field source = Field.words("Known by", Words.all(Words.SOURCES));
  private final Field along =
      Field.length("Distance of its middle", new Field.Range(0L, MOST_ALONG_MM));
  private final List<String> ways = new ArrayList<>(WAYS);
  private final Field way;
  private final Field up = Field.length("Middle above ground", new Field.Range(0L, MOST_UP_MM));
  private final Field across =
      Field.length("Off the centre line", new Field.Range(0L, MOST_ACROSS_MM));
  private final Field side = Field.words("To the", SIDES);
  private final Field roof;

  private AccessoryEditor(Scenario scenario, Accessory accessory, boolean isNew) {
    this.scenario = scenario;
    this.accessory = accessory;
    this.isNew = isNew;
    this.roofs = Words.roofs(scenario);
    if (isNew) {
      ways.add(UNTOLD);
    }
    this.way = Field.words("Counted", ways);
    this.roof = Field.words("On a roof", Words.roofOrNone(roofs));
  }

  /** An editor of an accessory of a scenario. */
  public static AccessoryEditor of(Scenario scenario, Accessory accessory) {
    return new AccessoryEditor(scenario, accessory, /* isNew= */ false);
  }

  /** An editor of one more; where it is must be told. */
  public static AccessoryEditor added(Scenario scenario, Accessory entry) {
    Accessory one =
        new Accessory(
            Ids.free(scenario, entry.id()),
            entry.title(),
            entry.id(),
            entry.source(),
            entry.mass(),
            entry.box(),
            entry.roof());
    return new AccessoryEditor(scenario, one, /* isNew= */ true);
  }

  /** Where the middle of an accessory is along the vehicle, in words. */
  public static String place(Scenario scenario, Accessory accessory) {
    int wheelbaseMm = scenario.ute().wheelbaseMm();
    int middleMm = middle(accessory.box()).xMm();
    return Words.mm(Math.abs(middleMm - from(wayOf(middleMm, wheelbaseMm), wheelbaseMm)))
        + " "
        + WAYS.get(wayOf(middleMm, wheelbaseMm));
  }

  /** The way from the nearer axle line. */
  private static int wayOf(int middleMm, int wheelbaseMm) {
    if (2 * middleMm < wheelbaseMm) {
      return middleMm < 0 ? 0 : 1;
    }
    return middleMm < wheelbaseMm ? 2 : 3;
  }

  private static int from(int way, int wheelbaseMm) {
    return way < 2 ? 0 : wheelbaseMm;
  }

  private static PointMm middle(BoxMm box) {
    return new PointMm(
        Math.floorDiv(box.minXMm() + box.maxXMm(), 2),
        Math.floorDiv(box.minYMm() + box.maxYMm(), 2),
        Math.floorDiv(box.minZMm() + box.maxZMm(), 2));
  }

  @Override
  public String title() {
    return accessory.title();
  }

  @Override
  public String deed() {
    return (isNew ? "add " : "change ") + accessory.title();
  }

  @Override
  public List<Field> fields() {
    return List.of(name, mass, source, along, way, up, across, side, roof);
  }

  @Override
  public List<String> texts() {
    PointMm middle = middle(accessory.box());
    int wheelbaseMm = scenario.ute().wheelbaseMm();
    int nearer = wayOf(middle.xMm(), wheelbaseMm);
    return List.of(
        accessory.title(),
        Words.kg(accessory.mass().massG()),
        Words.of(accessory.mass().source()),
        isNew ? "" : Words.mm(Math.abs(middle.xMm() - from(nearer, wheelbaseMm))),
        isNew ? UNTOLD : WAYS.get(nearer),
        isNew ? "" : Words.mm(middle.zMm()),
        Words.mm(isNew ? 0L : Math.abs(middle.yMm())),
        SIDES.get(isNew || middle.yMm() <= 0 ? 0 : 1),
        accessory.roof().map(Words::of).orElse(Words.NO_ROOF));
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    if (field == way && form.text(way).equals(UNTOLD)) {
      return Optional.of("from which axle, and to which side of it");
    }
    int heightMm = accessory.box().heightMm();
    return field == up && form.value(up) < heightMm / 2
        ? Optional.of("it is " + heightMm + " mm high and would be in the ground")
        : Optional.empty();
  }

  @Override
  public Design after(Design before, Form form) {
    KnownMass weight =
        Words.mass(
            form.value(mass), Words.SOURCES.get(form.word(source)), Optional.of(accessory.mass()));
    String title = form.text(name).strip();
    boolean same =
        weight.equals(accessory.mass())
            && (title.equals(accessory.title()) || uses(accessory.entryId()) == 0L);
    Accessory changed =
        new Accessory(
            accessory.id(),
            title,
            same ? accessory.entryId() : ownEntry(),
            same ? accessory.source() : Words.OWN_FIGURES,
            weight,
            moved(form),
            Words.roof(roofs, form.word(roof)));
    Optional<Accessory> old = isNew ? Optional.empty() : Optional.of(accessory);
    return with(before, Lists.with(before.scenario().accessories(), old, changed));
  }

  /** How many other accessories are of an entry. */
  private long uses(String entryId) {
    return scenario.accessories().stream()
        .filter(other -> !other.id().equals(accessory.id()) && other.entryId().equals(entryId))
        .count();
  }

  private String ownEntry() {
    String id = Ids.OWN + accessory.id();
    while (uses(id) > 0L) {
      id = Ids.OWN + id;
    }
    return id;
  }

  private BoxMm moved(Form form) {
    PointMm middle = middle(accessory.box());
    int fromMm = from(form.word(way), scenario.ute().wheelbaseMm());
    boolean ahead = form.word(way) % 2 == 0;
    int alongMm = Math.toIntExact(form.value(along));
    int acrossMm = Math.toIntExact(form.value(across));
    return accessory
        .box()
        .moved(
            new PointMm(
                fromMm + (ahead ? -alongMm : alongMm) - middle.xMm(),
                (form.word(side) == 0 ? -acrossMm : acrossMm) - middle.yMm(),
                Math.toIntExact(form.value(up)) - middle.zMm()));
  }

  /** A design without an accessory. */
  public static Design without(Design before, Accessory gone) {
    return with(before, Lists.without(before.scenario().accessories(), gone));
  }

  /** Why an accessory cannot be removed. */
  public static Optional<String> needed(Scenario scenario, Accessory accessory) {
    return scenario.ute().empty().fitted().contains(accessory.id())
        ? Optional.of("the ute was weighed with it; say under Weighing that it was not on it first")
        : Optional.empty();
  }

  private static Design with(Design before, List<Accessory> accessories) {
    Scenario scenario = before.scenario();
    return new Design(
        scenario.withBody(scenario.tray(), scenario.canopy(), accessories), before.plan());
  }
}
