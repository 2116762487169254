package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import kitstow.planner.model.Leg;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Trip;

/** A trailer: mass, ball mass, brakes, and on which legs it is on. */
public final class TrailerEditor implements Editor {
  private static final long MOST_G = 50_000_000L;
  private static final String ALL = "all";
  private static final String NONE = "none";
  private static final String SOME = "as each leg says";

  private final Optional<Trailer> trailer;
  private final List<Leg> legs;
  private final Field name = Field.text("Name");
  private final Field total = Field.mass("Mass, uncoupled", MOST_G);
  private final Field ball =
      Field.figure(
          "Mass on the ball",
          Measures::massG,
          new Field.Range(0L, MOST_G),
          "a part of its mass, often about a tenth, e.g. 140 kg");
  private final Field source = Field.words("Known by", Words.all(Words.SOURCES));
  private final Field brakes = Field.words("Brakes", List.of(Words.YES, Words.NO));
  private final Field on = Field.words("On which legs", List.of(ALL, NONE, SOME));

  /**
   * An editor of a trailer.
   *
   * @param trailer the trailer; none for one more, which is on all legs at first
   */
  public TrailerEditor(Scenario scenario, Optional<Trailer> trailer) {
    this.trailer = trailer;
    this.legs = scenario.trip().legs();
  }

  @Override
  public String title() {
    return trailer.map(Trailer::title).orElse("Another trailer");
  }

  @Override
  public String deed() {
    return trailer.map(one -> "change " + one.title()).orElse("add a trailer");
  }

  @Override
  public List<Field> fields() {
    return List.of(name, total, ball, source, brakes, on);
  }

  @Override
  public List<String> texts() {
    return trailer
        .map(
            one ->
                List.of(
                    one.title(),
                    Words.kg(one.total().massG()),
                    Words.kg(one.ball().massG()),
                    Words.of(one.total().source()),
                    Words.yesOrNo(one.braked()),
                    onLegs(one)))
        .orElse(List.of("", "", "", Words.of(MassSource.ESTIMATE), Words.YES, ALL));
  }

  private String onLegs(Trailer one) {
    long count = legs.stream().filter(leg -> isOn(leg, one.id())).count();
    return count == 0 ? NONE : count == legs.size() ? ALL : SOME;
  }

  private static boolean isOn(Leg leg, String id) {
    return leg.trailerId().filter(id::equals).isPresent();
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    boolean heavier =
        field == ball
            && total.fault(form.text(total)).isEmpty()
            && form.value(ball) > form.value(total);
    return heavier
        ? Optional.of("more than the whole trailer; often about a tenth of it")
        : Optional.empty();
  }

  @Override
  public Design after(Design before, Form form) {
    Scenario scenario = before.scenario();
    MassSource known = Words.SOURCES.get(form.word(source));
    Trailer changed =
        new Trailer(
            trailer.map(Trailer::id).orElseGet(() -> Ids.free(scenario, "trailer")),
            form.text(name).strip(),
            Words.mass(form.value(total), known, trailer.map(Trailer::total)),
            Words.mass(form.value(ball), known, trailer.map(Trailer::ball)),
            form.word(brakes) == 0,
            trailer.map(Trailer::behindBallMm).orElse(OptionalInt.empty()),
            trailer.map(Trailer::heightMm).orElse(OptionalInt.empty()));
    List<Leg> driven = new ArrayList<>();
    for (Leg leg : legs) {
      driven.add(
          switch (form.text(on)) {
            case ALL -> leg.towing(Optional.of(changed.id()));
            case NONE -> isOn(leg, changed.id()) ? leg.towing(Optional.empty()) : leg;
            default -> leg;
          });
    }
    return with(before, Lists.with(scenario.trailers(), trailer, changed), driven);
  }

  /** A design without a trailer, which is then on no leg. */
  public static Design without(Design before, Trailer trailer) {
    List<Leg> driven = new ArrayList<>();
    for (Leg leg : before.scenario().trip().legs()) {
      driven.add(isOn(leg, trailer.id()) ? leg.towing(Optional.empty()) : leg);
    }
    return with(before, Lists.without(before.scenario().trailers(), trailer), driven);
  }

  private static Design with(Design before, List<Trailer> trailers, List<Leg> legs) {
    Trip trip = before.scenario().trip();
    return new Design(
        before
            .scenario()
            .withTrip(trailers, new Trip(trip.people(), legs, trip.consumption(), trip.orders())),
        before.plan());
  }
}
