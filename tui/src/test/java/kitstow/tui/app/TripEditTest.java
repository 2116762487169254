package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Person;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Trip;
import kitstow.tui.Shipped;
import kitstow.tui.app.EditRow.Part;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Tidy;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.screen.View;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TripEditTest {
  private final Desk desk = new Desk(Shipped.REMOTE);
  private final Design before = desk.work().design();

  @AfterEach
  void whatWasMadeCanBeReadAgainAndUndone() {
    assertThat(Tidy.faults(desk.work().design().scenario())).isEmpty();
    if (!desk.state().overlay().equals(Overlay.NONE)) {
      desk.press(KeyName.ESCAPE);
    }
    for (int steps = desk.work().past().done().size(); steps > 0; steps--) {
      desk.type("u");
    }
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void aPersonIsHeavierThanWasThought() {
    double totalKg = totalKg();
    mark(Part.PERSON, 1);
    desk.press(KeyName.ENTER).press(KeyName.TAB).type("200 lb").press(KeyName.ENTER).judge();
    Person second = trip().people().get(1);
    assertThat(second.mass().massG()).isEqualTo(90_718L);
    assertThat(second.mass().toleranceG()).isEqualTo(907L);
    assertThat(totalKg() - totalKg).isCloseTo(9.718, within(1e-6));
  }

  @Test
  void somebodyWithoutAMassIsNotTakenAndTheFaultIsShown() {
    mark(Part.PERSON, 1);
    desk.type("d")
        .press(KeyName.ENTER)
        .type("Kim")
        .press(KeyName.TAB)
        .type("many")
        .press(KeyName.ENTER);
    assertThat(shown()).contains("many_  ! e.g. 12.5, 12,5 kg");
    assertThat(trip().people()).hasSize(1);
    desk.press(KeyName.DELETE).type("64").press(KeyName.ENTER);
    List<Person> people = trip().people();
    assertThat(people).hasSize(2);
    assertThat(people.get(1).title()).isEqualTo("Kim");
    assertThat(people.stream().map(Person::seatId)).doesNotHaveDuplicates();
  }

  @Test
  void theLastPersonStaysAndNobodyFindsASeatWhereAllAreTaken() {
    assertThat(trip().people()).hasSameSizeAs(scenario().ute().seats());
    mark(Part.PERSON, 0);
    desk.type("n");
    assertThat(desk.state().note()).contains("every seat is taken");
    desk.type("dd");
    assertThat(trip().people()).hasSize(1);
    assertThat(desk.state().note()).contains("somebody must drive");
  }

  @Test
  void aLegIsAddedWithUnitsAsTheyAreWrittenAndFilledUpBefore() {
    int legs = trip().legs().size();
    mark(Part.LEG, 0);
    desk.type("nDetour").press(KeyName.TAB).type("100 mi").press(KeyName.TAB).type("6 h");
    desk.press(KeyName.TAB).type("o").press(KeyName.TAB).press(KeyName.TAB).type("fu");
    assertThat(shown()).contains("full, a mass such as 20 kg, or nothing");
    desk.type("ll").press(KeyName.ENTER).judge();
    assertThat(trip().legs()).hasSize(legs + 1);
    Leg leg = trip().legs().get(legs);
    assertThat(leg.distanceKm()).isEqualTo(160.934);
    assertThat(leg.days()).isEqualTo(0.25);
    assertThat(leg.surface()).isEqualTo(Surface.OFF_ROAD);
    assertThat(leg.resupply()).hasSize(1);
    assertThat(leg.resupply().get(0).kind()).isEqualTo(SupplyKind.FUEL);
    assertThat(leg.resupply().get(0).addG()).isEmpty();
  }

  @Test
  void aLegIsDrivenEarlierAndTheMarkFollowsIt() {
    Leg third = trip().legs().get(2);
    mark(Part.LEG, 2);
    desk.type("<");
    assertThat(trip().legs().get(1)).isEqualTo(third);
    assertThat(EditRows.marked(desk.work()).orElseThrow().id()).isEqualTo(third.id());
    desk.press(KeyPress.shifted(KeyName.UP)).type("<");
    assertThat(desk.state().note()).contains("the first leg already");
    desk.type(">>");
    assertThat(trip().legs().get(2)).isEqualTo(third);
  }

  @Test
  void aTrailerIsHitchedToAllLegsAndUnhitched() {
    mark(Part.TRAILER, 0);
    desk.press(KeyName.ENTER).type("Box trailer").press(KeyName.TAB).type("600 kg");
    desk.press(KeyName.TAB).type("700");
    assertThat(shown()).contains("more than the whole trailer");
    desk.press(KeyName.DELETE).type("60").press(KeyName.ENTER).judge();
    Trailer trailer = scenario().trailers().get(0);
    assertThat(trailer.ball().massG()).isEqualTo(60_000L);
    assertThat(trip().legs())
        .allSatisfy(leg -> assertThat(leg.trailerId()).isEqualTo(Optional.of(trailer.id())));
    assertThat(shown()).contains("on 6 of 6 legs");
    mark(Part.TRAILER, 0);
    desk.type("d").judge();
    assertThat(scenario().trailers()).isEmpty();
    assertThat(trip().legs()).allSatisfy(leg -> assertThat(leg.trailerId()).isEmpty());
  }

  @Test
  void moreFuelIsUsed() {
    mark(Part.USE, 0);
    desk.press(KeyName.ENTER).type("16,5 L").press(KeyName.TAB).type("180 %");
    desk.press(KeyName.ENTER).judge();
    assertThat(trip().consumption().fuelMlPer100Km()).isEqualTo(16_500L);
    assertThat(trip().consumption().offRoadFuelPermille()).isEqualTo(1_800);
  }

  @Test
  void nothingChangesWhenAFormIsTakenAsItWas() {
    for (Part part : List.of(Part.PERSON, Part.LEG, Part.USE, Part.NAME)) {
      mark(part, 0);
      desk.press(KeyName.ENTER).press(KeyName.ENTER);
      assertThat(desk.work().design()).as(part.title()).isEqualTo(before);
    }
  }

  private void mark(Part part, int index) {
    desk.mark("9", part, index);
  }

  private Scenario scenario() {
    return desk.work().design().scenario();
  }

  private double totalKg() {
    return desk.work().states().get(0).axles().totalKg();
  }

  private Trip trip() {
    return scenario().trip();
  }

  private String shown() {
    return String.join("\n", View.draw(desk.state()).lines());
  }
}
