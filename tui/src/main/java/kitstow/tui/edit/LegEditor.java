package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Trip;

/** A leg: how far, how long, on what, with which trailer, and what is filled up before it. */
public final class LegEditor implements Editor {
  private static final String NO_TRAILER = "none";
  private static final String FULL = "full";
  private static final Field.Range DISTANCE = new Field.Range(0L, 20_000_000L);
  private static final Field.Range TIME = new Field.Range(0L, 365_000L);
  private static final Field.Range ADDED = new Field.Range(1L, 10_000_000L);
  private static final List<Surface> SURFACES = List.of(Surface.values());

  private final Optional<Leg> leg;
  private final List<Trailer> trailers;
  private final Field name = Field.text("Name");
  private final Field distance =
      Field.figure("Distance", Measures::distanceM, DISTANCE, "e.g. 320, 320 km, 200 mi");
  private final Field time =
      Field.figure("Time", Measures::timeMilliDays, TIME, "e.g. 1.5, 2 days, 6 h");
  private final Field surface = Field.words("Surface", Words.all(SURFACES));
  private final Field trailer;
  private final Map<SupplyKind, Field> fills = new LinkedHashMap<>();
  private final Field wet = Field.words("Canvas gets wet", List.of(Words.NO, Words.YES));
  private final Field rubbish = Field.words("Rubbish left before", List.of(Words.NO, Words.YES));

  /**
   * An editor of a leg.
   *
   * @param leg the leg; none for one more at the end
   */
  public LegEditor(Scenario scenario, Optional<Leg> leg) {
    this.leg = leg;
    this.trailers = scenario.trailers();
    List<String> words = new ArrayList<>(List.of(NO_TRAILER));
    trailers.forEach(one -> words.add(one.title()));
    this.trailer = Field.words("Trailer", words);
    for (SupplyOrder order : scenario.trip().orders()) {
      String kind = Words.of(order.kind());
      fills.put(
          order.kind(),
          Field.figureIfAny(
              "Fill up " + kind,
              LegEditor::added,
              ADDED,
              "full, a mass such as 20 kg, or nothing"));
    }
  }

  /** "full" reads as the largest amount there is. */
  private static OptionalLong added(String text) {
    return text.strip().equalsIgnoreCase(FULL)
        ? OptionalLong.of(ADDED.most())
        : Measures.massG(text);
  }

  @Override
  public String title() {
    return leg.map(Leg::title).orElse("Another leg");
  }

  @Override
  public String deed() {
    return leg.map(one -> "change " + one.title()).orElse("add a leg");
  }

  @Override
  public List<Field> fields() {
    List<Field> fields = new ArrayList<>(List.of(name, distance, time, surface, trailer));
    fields.addAll(fills.values());
    fields.add(wet);
    fields.add(rubbish);
    return fields;
  }

  @Override
  public List<String> texts() {
    List<String> texts = new ArrayList<>();
    texts.add(leg.map(Leg::title).orElse(""));
    texts.add(
        leg.map(one -> Measures.thousandths(Math.round(one.distanceKm() * 1000.0)) + " km")
            .orElse(""));
    texts.add(
        leg.map(one -> Measures.thousandths(Math.round(one.days() * 1000.0)) + " days")
            .orElse("1 days"));
    texts.add(Words.of(leg.map(Leg::surface).orElse(Surface.ROAD)));
    texts.add(
        leg.flatMap(Leg::trailerId)
            .flatMap(id -> trailers.stream().filter(one -> one.id().equals(id)).findFirst())
            .map(Trailer::title)
            .orElse(NO_TRAILER));
    fills.keySet().forEach(kind -> texts.add(filled(kind)));
    texts.add(Words.yesOrNo(leg.map(Leg::wet).orElse(false)));
    texts.add(Words.yesOrNo(leg.map(Leg::emptyRubbish).orElse(false)));
    return texts;
  }

  private String filled(SupplyKind kind) {
    for (Leg.Resupply one : leg.map(Leg::resupply).orElse(List.of())) {
      if (one.kind() == kind) {
        return one.addG().isPresent() ? Words.kg(one.addG().getAsLong()) : FULL;
      }
    }
    return "";
  }

  @Override
  public Design after(Design before, Form form) {
    Scenario scenario = before.scenario();
    int towed = form.word(trailer);
    List<Leg.Resupply> resupply = new ArrayList<>();
    fills.forEach(
        (kind, field) -> {
          long addG = form.value(field);
          if (addG > 0L) {
            boolean full = form.text(field).strip().equalsIgnoreCase(FULL);
            resupply.add(
                new Leg.Resupply(kind, full ? OptionalLong.empty() : OptionalLong.of(addG)));
          }
        });
    Leg changed =
        new Leg(
            leg.map(Leg::id).orElseGet(() -> Ids.free(scenario, "leg")),
            form.text(name).strip(),
            form.value(distance) / 1000.0,
            form.value(time) / 1000.0,
            SURFACES.get(form.word(surface)),
            towed == 0 ? Optional.empty() : Optional.of(trailers.get(towed - 1).id()),
            form.word(wet) == 1,
            resupply,
            form.word(rubbish) == 1,
            leg.map(Leg::room).orElse(Leg.Room.UNLIMITED));
    return with(before, Lists.with(scenario.trip().legs(), leg, changed));
  }

  /** A design without a leg. */
  public static Design without(Design before, Leg leg) {
    return with(before, Lists.without(before.scenario().trip().legs(), leg));
  }

  /** A design with a leg driven so many legs later. */
  public static Design moved(Design before, Leg leg, int by) {
    return with(before, Lists.moved(before.scenario().trip().legs(), leg, by));
  }

  private static Design with(Design before, List<Leg> legs) {
    Scenario scenario = before.scenario();
    Trip trip = scenario.trip();
    return new Design(
        scenario.withTrip(
            scenario.trailers(), new Trip(trip.people(), legs, trip.consumption(), trip.orders())),
        before.plan());
  }
}
