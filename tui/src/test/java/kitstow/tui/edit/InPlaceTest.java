package kitstow.tui.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.SpacePointMm;
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

  private Design with(Design without) {
    Map<String, String> bays = new LinkedHashMap<>(without.plan().moduleBays());
    bays.put(DRAWER, "right-fore");
    return Tidy.plan(without, fitted.scenario(), bays);
  }

  private ModuleChoice drawer() {
    return fitted.scenario().modules().stream()
        .filter(choice -> choice.module().id().equals(DRAWER))
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
