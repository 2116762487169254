package kitstow.tui.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Bay;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.SpacePointMm;
import kitstow.tui.Shipped;
import kitstow.tui.cli.CheckInput;
import kitstow.tui.cli.InputFaults;
import org.junit.jupiter.api.Test;

/** A module put on, or taken from, a floor on which gear stands; demonstration data, invented. */
class InPlaceTest {
  private static final Path FOLDER = Path.of("..", "scenarios");
  private static final String DRAWER = "drawer";
  private static final String BEHIND_IT = "right-rear";
  private static final String WHOLE_SIDE = "right-floor-low";

  /** Into the place of the drawer. */
  private static final int FORWARD_MM = -500;

  private static final int UP_MM = 40;

  private final Design fitted = counter();

  @Test
  void whatStoodBehindAModuleStaysThereWithoutIt() {
    Design without = Modules.without(fitted, drawer());

    assertThat(in(without, BEHIND_IT)).isEmpty();
    assertThat(in(without, WHOLE_SIDE)).isEqualTo(in(fitted, BEHIND_IT)).isNotEmpty();
    Set<String> gone = keys(fitted);
    gone.removeAll(keys(without));
    Set<String> inDrawer = new TreeSet<>(in(fitted, "drawer/inside").keySet());
    inDrawer.addAll(in(fitted, "drawer/deck").keySet());
    assertThat(gone).isEqualTo(inDrawer).isNotEmpty();
  }

  @Test
  void whatStandsBesideANewModuleStaysThere() {
    Design back = with(Modules.without(fitted, drawer()));

    assertThat(in(back, BEHIND_IT)).isEqualTo(in(fitted, BEHIND_IT));
    assertThat(in(back, WHOLE_SIDE)).isEmpty();
  }

  @Test
  void whatIsInTheWayOfANewModuleAndWhatNothingCarriesGoesHome() {
    Design without = Modules.without(fitted, drawer());
    List<String> behind = List.copyOf(in(without, WHOLE_SIDE).keySet());
    String forward = behind.get(0);
    String raised = behind.get(1);
    Design moved =
        without.with(
            moved(moved(without.plan(), forward, FORWARD_MM, 0), raised, /* byXMm= */ 0, UP_MM));

    Design back = with(moved);

    Map<String, BoxMm> left = new TreeMap<>(in(fitted, BEHIND_IT));
    left.remove(forward);
    left.remove(raised);
    assertThat(in(moved, WHOLE_SIDE)).containsKeys(forward, raised);
    assertThat(in(back, BEHIND_IT)).isEqualTo(left).isNotEmpty();
    assertThat(keys(back)).doesNotContain(forward, raised);
  }

  @Test
  void theOrderOfThePlanDoesNotMatter() {
    List<Placement> lines = new ArrayList<>(fitted.plan().placements());
    Collections.reverse(lines);
    LoadPlan plan = fitted.plan();
    Design reversed =
        fitted.with(new LoadPlan(plan.scenarioId(), plan.moduleBays(), lines, plan.origin()));

    assertThat(in(reversed, BEHIND_IT).keySet()).hasSizeGreaterThan(1);
    assertThat(in(Modules.without(reversed, drawer()), WHOLE_SIDE))
        .isEqualTo(in(fitted, BEHIND_IT));
  }

  @Test
  void aPinGoesAlong() {
    String id = in(fitted, BEHIND_IT).keySet().iterator().next();
    Loading loading = Loading.of(fitted.scenario(), fitted.plan());
    PlacedItem placed = loading.placed().get(id);
    assertThat(placed.item().quantity()).isEqualTo(1);
    Pin pin =
        new Pin(
            BEHIND_IT,
            Optional.of(placed.placement().corner()),
            Optional.of(placed.placement().turn()));
    List<Item> items = new ArrayList<>();
    for (Item item : fitted.scenario().items()) {
      items.add(item.id().equals(id) ? item.pinned(Optional.of(pin)) : item);
    }
    Design pinned = new Design(fitted.scenario().withItems(items), fitted.plan());

    Design without = Modules.without(pinned, drawer());

    assertThat(LoadPlanner.check(without.scenario(), without.plan()).brokenFindings())
        .noneSatisfy(finding -> assertThat(finding.rule()).isEqualTo(RuleId.PIN_KEPT));
    Item now =
        without.scenario().items().stream()
            .filter(item -> item.id().equals(id))
            .findFirst()
            .orElseThrow();
    assertThat(now.pin().orElseThrow().spaceId()).isEqualTo(WHOLE_SIDE);
  }

  /** A frame that is longer than its bay's first part reaches into the bay behind it. */
  @Test
  void whatAModuleReachesIntoFromItsBayGoesHomeToo() {
    Design bare = fitted;
    for (String id : List.of("fridge-slide", "pantry", DRAWER)) {
      bare = Modules.without(bare, module(bare, id));
    }
    FitOutModule frame = entry("drawer-pair-frame");
    List<ModuleChoice> modules = new ArrayList<>(bare.scenario().modules());
    modules.add(new ModuleChoice(frame, List.of("left-wide"), Need.MUST, /* value= */ 100));
    Map<String, String> bays = new LinkedHashMap<>(bare.plan().moduleBays());
    bays.put(frame.id(), "left-wide");

    Design framed = Tidy.plan(bare, bare.scenario().withModules(modules), bays);

    assertThat(framed.plan().moduleBays()).containsKey(frame.id());
    assertThat(in(bare, "left-floor")).isNotEmpty();
    assertThat(LoadPlanner.check(framed.scenario(), framed.plan()).brokenFindings())
        .noneSatisfy(finding -> assertThat(finding.rule()).isEqualTo(RuleId.MODULE_CLASH));
    BoxMm there = Rig.of(framed.scenario(), bays).modules().get(frame.id()).box();
    Map<String, BoxMm> stood = in(bare, "left-floor");
    stood.values().removeIf(box -> !Boxes.overlap(box, there));
    assertThat(stood).isNotEmpty();
    assertThat(keys(framed)).doesNotContainAnyElementsOf(stood.keySet());
    assertThat(in(framed, "rear-seat")).isEqualTo(in(bare, "rear-seat")).isNotEmpty();
  }

  @Test
  void onABareTrayAModuleStandsOnTheDeckAndNotOnARackAboveIt() {
    Design bare = Refit.on(fitted, fitted.scenario().tray(), Optional.empty());

    Design added = Modules.with(bare, entry("side-drawer")).orElseThrow();

    assertThat(new Bays(bare).taking(entry("side-drawer"))).extracting(Bay::id).contains("rack");
    assertThat(added.plan().moduleBays()).containsEntry("side-drawer", "open-deck-left");
  }

  @Test
  void whatHasASlideIsNotPutOnARoofThoughThereIsRoom() {
    FitOutModule kitchen = entry("slide-out-kitchen");
    Design full = fitted;
    while (Modules.with(full, kitchen).isPresent()) {
      full = Modules.with(full, kitchen).orElseThrow();
    }

    Bays bays = new Bays(full);
    assertThat(bays.taking(kitchen).stream().filter(bays::isFree))
        .isNotEmpty()
        .allSatisfy(bay -> assertThat(bay.id()).isIn("cab-roof", "canopy-roof", "rack"));
  }

  @Test
  void aShortCanopyIsNoPlaceForAModuleOfTheDeck() {
    Design remote = Shipped.REMOTE.design();
    Optional<Canopy> forward =
        Shipped.CATALOGUE.canopies().stream()
            .filter(canopy -> canopy.id().equals("canopy-1000"))
            .findFirst();
    Design ahead = Refit.on(remote, remote.scenario().tray(), forward);

    assertThat(ahead.scenario().canopy().orElseThrow().fromTrayFrontMm()).isZero();
    assertThat(new Bays(ahead).taking(entry("side-drawer")))
        .extracting(Bay::id)
        .doesNotContain("open-deck-left", "open-deck-right");
  }

  private static FitOutModule entry(String id) {
    return Shipped.CATALOGUE.modules().stream()
        .filter(module -> module.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Design with(Design without) {
    Map<String, String> bays = new LinkedHashMap<>(without.plan().moduleBays());
    bays.put(DRAWER, "right-fore");
    return Tidy.plan(without, fitted.scenario(), bays);
  }

  private ModuleChoice drawer() {
    return module(fitted, DRAWER);
  }

  private static ModuleChoice module(Design design, String id) {
    return design.scenario().modules().stream()
        .filter(choice -> choice.module().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static LoadPlan moved(LoadPlan plan, String key, int byXMm, int byZMm) {
    List<Placement> lines = new ArrayList<>();
    for (Placement line : plan.placements()) {
      SpacePointMm corner = line.corner();
      boolean isIt = keysOf(line).contains(key);
      lines.add(
          isIt
              ? new Placement(
                  line.itemId(),
                  line.unit(),
                  line.spaceId(),
                  line.shape(),
                  line.turn(),
                  new SpacePointMm(corner.xMm() + byXMm, corner.yMm(), corner.zMm() + byZMm))
              : line);
    }
    return new LoadPlan(plan.scenarioId(), plan.moduleBays(), lines, plan.origin());
  }

  private static Set<String> keysOf(Placement line) {
    return Set.of(line.itemId(), line.itemId() + "#" + line.unit());
  }

  /** Where the gear in a space stands on the vehicle, by unit. */
  private static Map<String, BoxMm> in(Design design, String space) {
    return Loading.of(design.scenario(), design.plan()).in(space).stream()
        .collect(
            Collectors.toMap(PlacedItem::key, PlacedItem::box, (one, other) -> one, TreeMap::new));
  }

  private static Set<String> keys(Design design) {
    return new TreeSet<>(Loading.of(design.scenario(), design.plan()).placed().keySet());
  }

  private static Design counter() {
    CheckInput read =
        CheckInput.read(
                FOLDER.resolve("counter-1500.json"),
                FOLDER.resolve("counter-1500.plan.json"),
                null,
                new InputFaults())
            .orElseThrow();
    return new Design(read.scenario(), read.plan());
  }
}
