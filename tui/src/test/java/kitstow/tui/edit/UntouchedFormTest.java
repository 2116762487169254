package kitstow.tui.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Trip;
import kitstow.tui.cli.CheckInput;
import kitstow.tui.cli.InputFaults;
import org.junit.jupiter.api.Test;

/** What a form has no field for stays as it was: a form that is taken untouched changes nothing. */
class UntouchedFormTest {
  private static final Leg.Room FERRY = new Leg.Room(OptionalInt.of(12_000), OptionalInt.of(3_500));

  private final Design design = design();

  /** A trip with a trailer, and a ferry on every leg; invented. */
  private static Design design() {
    Path file = Path.of("..", "scenarios", "towing-week.json");
    Scenario read = CheckInput.readScenario(file, null, new InputFaults()).orElseThrow();
    List<Leg> legs = new ArrayList<>();
    for (Leg leg : read.trip().legs()) {
      legs.add(
          new Leg(
              leg.id(),
              leg.title(),
              leg.distanceKm(),
              leg.days(),
              leg.surface(),
              leg.trailerId(),
              leg.wet(),
              leg.resupply(),
              leg.emptyRubbish(),
              FERRY));
    }
    Trip trip = read.trip();
    return Design.unpacked(
        read.withTrip(
            read.trailers(), new Trip(trip.people(), legs, trip.consumption(), trip.orders())));
  }

  private <T> void staysAsItIs(List<T> all, Function<T, Editor> editor) {
    assertThat(all).isNotEmpty();
    for (T one : all) {
      Editor edits = editor.apply(one);
      assertThat(edits.after(design, Form.of(edits)).scenario()).isEqualTo(design.scenario());
    }
  }

  @Test
  void aLegKeepsTheRoomOfItsFerry() {
    staysAsItIs(
        design.scenario().trip().legs(), leg -> new LegEditor(design.scenario(), Optional.of(leg)));
  }

  @Test
  void aTrailerKeepsItsLengthAndLegsTheirRoom() {
    assertThat(design.scenario().trailers().get(0).behindBallMm()).isPresent();
    staysAsItIs(
        design.scenario().trailers(),
        trailer -> new TrailerEditor(design.scenario(), Optional.of(trailer)));
    Trailer trailer = design.scenario().trailers().get(0);
    assertThat(TrailerEditor.without(design, trailer).scenario().trip().legs())
        .allSatisfy(leg -> assertThat(leg.room()).isEqualTo(FERRY));
  }

  @Test
  void aTankIsTheOnlyThingThatIsFilled() {
    assertThat(design.scenario().ute().foremostXMm()).isPresent();
    assertThat(TankEditor.all(design.scenario())).isNotEmpty();
    for (Tank tank : TankEditor.all(design.scenario())) {
      Design full = TankEditor.filled(design, tank, tank.startMl());
      assertThat(full.scenario()).isEqualTo(design.scenario());
    }
  }

  @Test
  void legsKeepTheirRoomWhenASupplyGoes() {
    Trip trip = design.scenario().trip();
    String container = trip.orders().get(0).groups().get(0).get(0);
    assertThat(Supplies.without(trip, container::equals).legs())
        .allSatisfy(leg -> assertThat(leg.room()).isEqualTo(FERRY));
  }

  @Test
  void peoplePartsModulesGearAndUseStayAsTheyAre() {
    Scenario scenario = design.scenario();
    staysAsItIs(scenario.trip().people(), one -> new PersonEditor(scenario, Optional.of(one)));
    staysAsItIs(scenario.ute().parts(), PartEditor::new);
    staysAsItIs(scenario.modules(), choice -> new ModuleEditor(design, choice));
    staysAsItIs(scenario.items(), GearEditor::new);
    staysAsItIs(List.of(scenario), ConsumptionEditor::new);
    staysAsItIs(List.of(scenario), NameEditor::new);
    staysAsItIs(TankEditor.all(scenario), TankEditor::new);
    staysAsItIs(List.of(design), one -> new BodyEditor(one, Catalogue.EMPTY));
  }
}
