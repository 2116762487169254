package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Trip;

/**
 * Runs a trip from event to event. Along a leg every rate is constant until a container runs out, a
 * can fits into a tank or rubbish has reached its most; each of these can happen only so often, so
 * a leg ends after a bounded number of them.
 */
final class TripRun {
  /** Events nearer to the end of a leg than this share of it belong to its end. */
  private static final double END = 1.0 - 1.0e-12;

  private final Loading loading;
  private final List<Growing> growings;
  private final List<Drain> drains = new ArrayList<>();
  private final MovingStates moving;
  private final ParkedStates parked;
  private final StateIds ids = new StateIds();
  private final Accounts accounts = new Accounts();
  private final int mostEvents;

  TripRun(Loading loading) {
    this.loading = loading;
    this.growings = Growing.of(loading);
    Stores stores = Stores.of(loading);
    for (SupplyKind kind : SupplyKind.values()) {
      drains.add(Drain.of(kind, stores, loading.scenario().trip().orders()));
    }
    Masses masses = new Masses(loading, stores, growings);
    this.moving = new MovingStates(masses, ids);
    this.parked = new ParkedStates(loading, masses, ids);
    // Every container empties once and once more per can poured into it; all else happens once.
    this.mostEvents = 4 * stores.all().size() + growings.size() + 4;
  }

  Timeline run() {
    Moment begun = Moment.DEPARTURE;
    boolean departed = false;
    for (Leg leg : loading.scenario().trip().legs()) {
      fillUp(leg);
      if (!departed) {
        parked.departure();
      }
      drive(leg, begun);
      departed = true;
      begun = begun.plus(leg.distanceKm(), leg.days());
    }
    if (!departed) {
      parked.departure();
    }
    List<LoadState> states = new ArrayList<>(moving.states());
    states.addAll(parked.states());
    states.add(CertificationState.of(loading, ids));
    return new Timeline(states, moving.segments(), accounts.stocks(), accounts.shortfalls());
  }

  private void fillUp(Leg leg) {
    for (Leg.Resupply resupply : leg.resupply()) {
      for (Drain drain : drains) {
        if (drain.kind() == resupply.kind()) {
          drain.fill(resupply.addG());
        }
      }
    }
    if (leg.emptyRubbish()) {
      growings.forEach(Growing::empty);
    }
  }

  private void drive(Leg leg, Moment begun) {
    Trip trip = loading.scenario().trip();
    for (Drain drain : drains) {
      drain.startLeg(Demand.of(drain.kind(), trip, leg));
    }
    for (Growing growing : growings) {
      growing.startLeg(leg);
    }
    MovingStates.OnLeg states = moving.new OnLeg(leg, begun);
    parked.legStart(leg);
    double[] outAt = fromEventToEvent(states);
    states.end();
    parked.legEnd(leg);
    for (int i = 0; i < outAt.length; i++) {
      accounts.close(leg, drains.get(i), states.moment(outAt[i]));
    }
  }

  /** Returns for each drain when it first had nothing left, as a share of the leg. */
  private double[] fromEventToEvent(MovingStates.OnLeg states) {
    double[] outAt = new double[drains.size()];
    double at = 0.0;
    decant(states, at);
    for (int event = 0; event <= mostEvents; event++) {
      drains.forEach(Drain::open);
      double step = stepToNextEvent();
      boolean last = at + step >= END;
      if (last) {
        step = 1.0 - at;
      }
      for (int i = 0; i < outAt.length; i++) {
        if (drains.get(i).missing() == 0.0) {
          outAt[i] = at;
        }
      }
      List<String> what = new ArrayList<>();
      List<String> texts = new ArrayList<>();
      advance(step, what, texts);
      if (last) {
        return outAt;
      }
      at += step;
      if (!what.isEmpty()) {
        states.breakpoint(at, what.get(0), String.join("; ", texts));
      }
      decant(states, at);
    }
    throw new IllegalStateException("leg does not come to an end: " + loading.scenario().id());
  }

  private double stepToNextEvent() {
    double step = Double.POSITIVE_INFINITY;
    for (Drain drain : drains) {
      step = Math.min(step, drain.nextEventIn());
    }
    for (Growing growing : growings) {
      step = Math.min(step, growing.fullIn());
    }
    return step;
  }

  private void advance(double step, List<String> what, List<String> texts) {
    for (Drain drain : drains) {
      drain.advance(step);
      List<Store> emptied = drain.ranOut();
      if (!emptied.isEmpty()) {
        String kind = drain.kind().name().toLowerCase(Locale.ROOT);
        boolean out = drain.isOut();
        what.add(out ? kind + "-out" : emptied.get(0).key() + "-empty");
        texts.add(titles(emptied) + " empty" + (out ? ", out of " + kind : ""));
      }
    }
    for (Growing growing : growings) {
      if (growing.advance(step)) {
        what.add(growing.key() + "-full");
        texts.add(growing.title() + " at its heaviest");
      }
    }
  }

  private void decant(MovingStates.OnLeg states, double at) {
    for (Drain drain : drains) {
      Optional<Decanting.Transfer> due = drain.due();
      while (due.isPresent()) {
        states.decant(at, due.get());
        due = drain.due();
      }
    }
  }

  private static String titles(List<Store> stores) {
    String first = stores.get(0).title();
    return switch (stores.size()) {
      case 1 -> first;
      case 2 -> first + " and " + stores.get(1).title();
      default -> first + " and " + (stores.size() - 1) + " more";
    };
  }
}
