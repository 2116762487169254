package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Person;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Zone;

/** Somebody on the trip: name, mass, seat, and which roof is slept on. */
public final class PersonEditor implements Editor {
  private static final long MOST_G = 400_000L;

  private final Optional<Person> person;
  private final List<Seat> seats;
  private final List<Zone> roofs;
  private final Field name = Field.text("Name");
  private final Field mass = Field.mass("Mass", MOST_G);
  private final Field source = Field.words("Known by", Words.all(Words.SOURCES));
  private final Field seat;
  private final Field sleeps;

  /**
   * An editor of a person.
   *
   * @param person the person; nobody for one more, who must find a free seat
   */
  public PersonEditor(Scenario scenario, Optional<Person> person) {
    this.person = person;
    this.seats = freeSeats(scenario, person);
    this.roofs = Words.roofs(scenario);
    this.seat = Field.words("Seat", seats.stream().map(Seat::title).toList());
    this.sleeps = Field.words("Sleeps on", Words.roofOrNone(roofs));
  }

  /** Seats that nobody else takes. */
  public static List<Seat> freeSeats(Scenario scenario, Optional<Person> person) {
    List<Seat> free = new ArrayList<>(scenario.ute().seats());
    for (Person other : scenario.trip().people()) {
      if (!person.map(Person::id).equals(Optional.of(other.id()))) {
        free.removeIf(one -> one.id().equals(other.seatId()));
      }
    }
    return free;
  }

  @Override
  public String title() {
    return person.map(Person::title).orElse("Another person");
  }

  @Override
  public String deed() {
    return person.map(one -> "change " + one.title()).orElse("add a person");
  }

  @Override
  public List<Field> fields() {
    return List.of(name, mass, source, seat, sleeps);
  }

  @Override
  public List<String> texts() {
    String first = seats.get(0).title();
    return person
        .map(
            one ->
                List.of(
                    one.title(),
                    Words.kg(one.mass().massG()),
                    Words.of(one.mass().source()),
                    seats.stream()
                        .filter(free -> free.id().equals(one.seatId()))
                        .findFirst()
                        .map(Seat::title)
                        .orElse(first),
                    one.sleepsOn().map(Words::of).orElse(Words.NO_ROOF)))
        .orElse(List.of("", "", Words.of(MassSource.ESTIMATE), first, Words.NO_ROOF));
  }

  @Override
  public Design after(Design before, Form form) {
    Scenario scenario = before.scenario();
    Trip trip = scenario.trip();
    Person changed =
        new Person(
            person.map(Person::id).orElseGet(() -> Ids.free(scenario, "person")),
            form.text(name).strip(),
            Words.mass(
                form.value(mass), Words.SOURCES.get(form.word(source)), person.map(Person::mass)),
            seats.get(form.word(seat)).id(),
            Words.roof(roofs, form.word(sleeps)));
    return with(before, Lists.with(trip.people(), person, changed));
  }

  /** A design without a person. */
  public static Design without(Design before, Person person) {
    return with(before, Lists.without(before.scenario().trip().people(), person));
  }

  private static Design with(Design before, List<Person> people) {
    Scenario scenario = before.scenario();
    Trip trip = scenario.trip();
    return new Design(
        scenario.withTrip(
            scenario.trailers(), new Trip(people, trip.legs(), trip.consumption(), trip.orders())),
        before.plan());
  }
}
