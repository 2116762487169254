package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Bay;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Zone;
import kitstow.tui.Shipped;
import kitstow.tui.app.EditRow.Part;
import kitstow.tui.edit.Bays;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Modules;
import kitstow.tui.edit.TankEditor;
import kitstow.tui.edit.Tidy;
import kitstow.tui.keys.KeyName;
import kitstow.tui.screen.View;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class UteEditTest {
  private final Desk desk = new Desk(Shipped.REMOTE);
  private final Design before = desk.work().design();

  @AfterEach
  void whatWasMadeCanBeReadAgainAndUndone() {
    assertThat(Tidy.faults(scenario())).isEmpty();
    if (!desk.state().overlay().equals(Overlay.NONE)) {
      desk.press(KeyName.ESCAPE);
    }
    for (int steps = desk.work().past().done().size(); steps > 0; steps--) {
      desk.type("u");
    }
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void aTankIsHalfFullAndNoFullerThanItCanBe() {
    mark(Part.TANK, 0);
    desk.press(KeyName.ENTER).type("900 L");
    assertThat(shown()).contains("! 0 to ");
    desk.press(KeyName.DELETE).type("40").press(KeyName.ENTER).judge();
    assertThat(TankEditor.all(scenario()).get(0).startMl()).isEqualTo(40_000L);
  }

  @Test
  void aTankOfAModuleIsEmptied() {
    int last = TankEditor.all(scenario()).size() - 1;
    Tank tank = TankEditor.all(scenario()).get(last);
    assertThat(tank.id()).contains("/");
    mark(Part.TANK, last);
    desk.press(KeyName.ENTER).type("0").press(KeyName.ENTER).judge();
    assertThat(TankEditor.all(scenario()).get(last).startMl()).isZero();
  }

  @Test
  void theUteIsWeighedWithWhatWasOnIt() {
    mark(Part.WEIGHING, 0);
    desk.press(KeyName.ENTER).type("1320").press(KeyName.TAB).type("1,18 t").press(KeyName.TAB);
    choose("weighed");
    desk.press(KeyName.ENTER).judge();
    EmptyAxleLoads empty = scenario().ute().empty();
    assertThat(empty.front().massG()).isEqualTo(1_320_000L);
    assertThat(empty.rear().massG()).isEqualTo(1_180_000L);
    assertThat(empty.rear().source()).isEqualTo(MassSource.WEIGHED);
    assertThat(empty.rear().toleranceG()).isEqualTo(11_800L);
    assertThat(empty.fitted()).isEqualTo(before.scenario().ute().empty().fitted());
  }

  @Test
  void aPageOfRowsIsAsItWasLeftAndAPageOfTextBeginsAtItsTop() {
    mark(Part.TANK, 1);
    EditRow tank = EditRows.marked(desk.work()).orElseThrow();
    desk.mark("9", Part.LEG, 1);
    EditRow leg = EditRows.marked(desk.work()).orElseThrow();
    desk.type("5").press(KeyName.DOWN).press(KeyName.DOWN);
    assertThat(desk.work().looking().row()).isEqualTo(2);

    desk.type("0");
    assertThat(EditRows.marked(desk.work())).contains(tank);
    desk.type("9");
    assertThat(EditRows.marked(desk.work())).contains(leg);
    desk.type("5");
    assertThat(desk.work().looking().row()).isZero();
  }

  @Test
  void aModuleIsTakenOutWithAllThatIsInIt() {
    ModuleChoice pantry = module("pantry");
    mark(Part.MODULE, scenario().modules().indexOf(pantry));
    assertThat(desk.work().loading().placed().values())
        .anySatisfy(item -> assertThat(item.space().inModules()).contains("pantry"));
    desk.type("d").judge();
    assertThat(desk.work().design().plan().moduleBays()).doesNotContainKey("pantry");
    assertThat(desk.work().loading().placed().values())
        .noneSatisfy(item -> assertThat(item.space().inModules()).contains("pantry"));
    assertThat(desk.work().loading().home()).hasSizeGreaterThan(1);
  }

  @Test
  void aModuleIsLeftOutAndGoesBackIntoItsBay() {
    String bay = before.plan().moduleBays().getOrDefault("pantry", "");
    openModule("pantry");
    desk.press(KeyName.TAB);
    choose("left out");
    desk.press(KeyName.ENTER).judge();
    assertThat(desk.work().design().plan().moduleBays()).doesNotContainKey("pantry");
    assertThat(shown()).contains("LEFT OUT");
    openModule("pantry");
    desk.press(KeyName.TAB);
    String name = desk.work().loading().rig().bays().get(bay).title();
    choose(name);
    desk.press(KeyName.ENTER).judge();
    assertThat(desk.work().design().plan().moduleBays()).containsEntry("pantry", bay);
  }

  @Test
  void twoModulesChangePlacesWhereBothFit() {
    Map<String, String> bays = before.plan().moduleBays();
    String first = bays.getOrDefault("fuel-holder-a", "");
    String second = bays.getOrDefault("fuel-holder-b", "");
    openModule("fuel-holder-a");
    desk.press(KeyName.TAB);
    String name = desk.work().loading().rig().bays().get(second).title();
    choose(name);
    assertThat(shown()).contains("in the place of Fuel");
    desk.press(KeyName.ENTER).judge();
    assertThat(desk.work().design().plan().moduleBays())
        .containsEntry("fuel-holder-a", second)
        .containsEntry("fuel-holder-b", first);
  }

  @Test
  void aSearchMayMoveAModule() {
    openModule("pantry");
    desk.press(KeyName.TAB).press(KeyName.TAB).press(KeyName.RIGHT).press(KeyName.ENTER).judge();
    assertThat(module("pantry").bayIds()).hasSizeGreaterThan(1);
    Set<String> there = desk.work().loading().rig().bays().keySet();
    assertThat(there).containsAll(module("pantry").bayIds());
  }

  @Test
  void aModuleOfTheCatalogueStandsInAFreeBay() {
    int modules = scenario().modules().size();
    desk.type("0nlocker");
    assertThat(shown()).contains("Gas locker");
    desk.press(KeyName.ENTER).judge();
    assertThat(shown()).contains("Stands in").contains("Done: add Gas locker");
    desk.press(KeyName.ENTER);
    assertThat(scenario().modules()).hasSize(modules + 1);
    ModuleChoice added = scenario().modules().get(modules);
    assertThat(desk.work().design().plan().moduleBays()).containsKey(added.module().id());
    assertThat(EditRows.marked(desk.work()).orElseThrow().id()).isEqualTo(added.module().id());
  }

  @Test
  void whatBelongsOnARoofStandsOnTheCanopyAndNotOnARackAboveIt() {
    ModuleChoice roof =
        scenario().modules().stream()
            .filter(choice -> choice.bayIds().contains("canopy-roof"))
            .findFirst()
            .orElseThrow();

    Design added = Modules.with(Modules.without(before, roof), roof.module()).orElseThrow();

    assertThat(new Bays(added).taking(roof.module()))
        .extracting(Bay::id)
        .containsSubsequence("rack", "canopy-roof");
    assertThat(added.plan().moduleBays()).containsEntry(roof.module().id(), "canopy-roof");
  }

  @Test
  void whatFitsNoFreeBayIsNotAdded() {
    desk.type("0");
    for (int i = 0; i < 5; i++) {
      desk.type("ntrundle").press(KeyName.ENTER).press(KeyName.ESCAPE);
    }
    desk.type("ntrundle").press(KeyName.ENTER);
    assertThat(desk.state().note()).contains("No free bay takes its 1650 (deep) x 950 x 200 mm");
  }

  @Test
  void anotherCanopyKeepsWhatStillFitsAndSendsTheRestHome() {
    int aboard = desk.work().loading().placed().size();
    mark(Part.VEHICLE, 0);
    desk.press(KeyName.ENTER).press(KeyName.TAB);
    choose("Canopy 1500, doors left and right");
    assertThat(shown()).contains(" more at home");
    desk.press(KeyName.ENTER).judge();
    assertThat(scenario().canopy().orElseThrow().size().lengthMm()).isEqualTo(1_500);
    assertThat(desk.work().loading().placed().size()).isBetween(1, aboard - 1);
    assertThat(desk.work().design().plan().moduleBays()).isNotEmpty();
    assertThat(desk.work().report().orElseThrow().brokenFindings())
        .noneSatisfy(
            finding ->
                assertThat(finding.rule())
                    .isIn(RuleId.MODULE_CLASH, RuleId.MODULE_IN_BAY, RuleId.INSIDE_SPACE));
  }

  @Test
  void withoutACanopyItsModulesGoAndAllElseStays() {
    mark(Part.VEHICLE, 0);
    desk.press(KeyName.ENTER).press(KeyName.TAB);
    choose("none");
    assertThat(shown()).contains(" modules go, ");
    desk.press(KeyName.ENTER).judge();
    assertThat(scenario().canopy()).isEmpty();
    assertThat(scenario().modules())
        .extracting(choice -> choice.module().id())
        .doesNotContain("pantry")
        .contains("fuel-holder-a");
    assertThat(desk.work().loading().rig().spaces().values())
        .noneSatisfy(space -> assertThat(space.zone()).isEqualTo(Zone.CANOPY));
  }

  @Test
  void aCanopyIsNoLongerThanItsTray() {
    mark(Part.VEHICLE, 0);
    desk.press(KeyName.ENTER);
    desk.press(KeyName.LEFT);
    assertThat(shown()).contains("Aluminium tray 2200").contains("edge; this ute");
    choose("none");
    assertThat(shown()).contains("stands on a tray only");
    desk.press(KeyName.ENTER);
    assertThat(desk.state().note()).contains("Put right what is marked");
  }

  /** Turns the field one is in to a word. */
  private void choose(String word) {
    for (int i = 0; i < 40 && !shown().contains("< " + word + " >"); i++) {
      desk.press(KeyName.RIGHT);
    }
    assertThat(shown()).contains("< " + word + " >");
  }

  private void openModule(String id) {
    mark(Part.MODULE, scenario().modules().indexOf(module(id)));
    desk.press(KeyName.ENTER);
  }

  private void mark(Part part, int index) {
    desk.mark("0", part, index);
  }

  private ModuleChoice module(String id) {
    Optional<ModuleChoice> found = EditRows.module(scenario(), id);
    return found.orElseThrow();
  }

  private Scenario scenario() {
    return desk.work().design().scenario();
  }

  private String shown() {
    return String.join("\n", View.draw(desk.state()).lines());
  }
}
