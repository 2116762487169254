package kitstow.planner.trip;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kitstow.planner.model.Body;
import kitstow.planner.model.Item;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Person;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Trailer;

/** What every body weighs at the present moment of the trip. The one place where it is rounded. */
final class Masses {
  private final Loading loading;
  private final Stores stores;
  private final List<Growing> growings;
  private final long[] fixedG;
  private final double[] changingG;

  Masses(Loading loading, Stores stores, List<Growing> growings) {
    this.loading = loading;
    this.stores = stores;
    this.growings = growings;
    this.fixedG = fixedOf(loading);
    this.changingG = new double[fixedG.length];
  }

  private static long[] fixedOf(Loading loading) {
    EmptyUte empty = EmptyUte.of(loading.scenario());
    Set<String> people = new HashSet<>();
    for (Person person : loading.scenario().trip().people()) {
      people.add(person.id());
    }
    List<Body> bodies = loading.bodies();
    long[] fixed = new long[bodies.size()];
    for (int i = 0; i < fixed.length; i++) {
      Body body = bodies.get(i);
      fixed[i] =
          switch (body.kind()) {
            case UTE -> body.key().equals(Loading.UTE_FRONT) ? empty.frontG() : empty.rearG();
            case PART, ACCESSORY, TRAY, CANOPY, MODULE, TANK -> body.nominalG();
            case PERSON -> people.contains(body.key()) ? body.nominalG() : 0L;
            case ITEM -> withoutContentG(loading, body.key());
            case LIQUID, BALL -> 0L;
          };
    }
    return fixed;
  }

  private static long withoutContentG(Loading loading, String key) {
    PlacedItem placed = loading.placed().get(key);
    if (placed == null) {
      throw new IllegalArgumentException("no such item: " + key);
    }
    Item item = placed.item();
    return item.mass().massG() - item.content().map(content -> content.contentG()).orElse(0L);
  }

  /** Grams by body with everyone seated and no trailer. */
  long[] nowG() {
    Arrays.fill(changingG, 0.0);
    for (Store store : stores.all()) {
      changingG[store.body()] += store.contentG();
    }
    for (Growing growing : growings) {
      changingG[growing.body()] += growing.gainG();
    }
    long[] massG = Arrays.copyOf(fixedG, fixedG.length);
    for (int i = 0; i < massG.length; i++) {
      if (changingG[i] != 0.0) {
        massG[i] += Math.round(changingG[i]);
      }
    }
    return massG;
  }

  /** Grams by body while driving a leg. */
  long[] drivingG(Leg leg) {
    long[] massG = nowG();
    int ball = loading.indexOf(Loading.BALL);
    if (ball >= 0) {
      for (Trailer trailer : loading.scenario().trailers()) {
        if (leg.trailerId().isPresent() && leg.trailerId().get().equals(trailer.id())) {
          massG[ball] = trailer.ball().massG();
        }
      }
    }
    return massG;
  }

  /** Shift by body with everything closed: liquids at their level. */
  ShiftMm[] shifts() {
    ShiftMm[] shift = new ShiftMm[fixedG.length];
    Arrays.fill(shift, ShiftMm.NONE);
    for (Store store : stores.all()) {
      shift[store.body()] = store.shift();
    }
    return shift;
  }
}
