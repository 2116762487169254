package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.FittedTank;
import kitstow.planner.model.Item;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Trip;

/**
 * A second simulation of a trip that shares no code with the first: it walks each leg in tiny equal
 * steps and knows no events. Contents are grams by body key.
 */
final class TinySteps {
  static final int STEPS = 20_000;

  private final Loading loading;
  private final Trip trip;
  private final Map<String, Double> content = new LinkedHashMap<>();
  private final Map<String, Double> full = new HashMap<>();
  private final Map<String, Double> initial = new HashMap<>();
  private final Map<String, FittedTank> tanks = new HashMap<>();
  private final Map<String, Double> rubbish = new LinkedHashMap<>();
  private final Map<SupplyKind, List<List<String>>> groups = new HashMap<>();
  private final Map<SupplyKind, List<List<String>>> drawn = new HashMap<>();
  private final Map<SupplyKind, List<String>> opened = new HashMap<>();
  private final Map<String, Double> heldWhenOpened = new HashMap<>();
  private final Map<SupplyKind, Double> missing = new HashMap<>();
  private final List<String> fuelOrder = new ArrayList<>();
  private boolean wet;

  /** Sees the trip step by step. */
  interface Watcher {
    void see(Leg leg, int step, TinySteps now);
  }

  TinySteps(Loading loading) {
    this.loading = loading;
    this.trip = loading.scenario().trip();
    for (FittedTank fitted : loading.rig().tanks().values()) {
      String key = fitted.tank().id() + "-liquid";
      tanks.put(key, fitted);
      full.put(key, fitted.tank().capacityMl() * fitted.tank().densityGPerL() / 1000.0);
      content.put(key, fitted.tank().startMl() * fitted.tank().densityGPerL() / 1000.0);
    }
    for (PlacedItem placed : loading.placed().values()) {
      Item item = placed.item();
      if (item.content().isPresent()) {
        full.put(placed.key(), (double) item.content().get().contentG());
        content.put(placed.key(), (double) item.content().get().contentG());
      }
      if (item.growth().isPresent()) {
        rubbish.put(placed.key(), 0.0);
      }
    }
    initial.putAll(content);
    groups(SupplyKind.FUEL).forEach(fuelOrder::addAll);
  }

  void run(Watcher watcher) {
    for (Leg leg : trip.legs()) {
      opened.clear();
      missing.clear();
      for (Leg.Resupply resupply : leg.resupply()) {
        resupply(resupply);
      }
      if (leg.emptyRubbish()) {
        rubbish.replaceAll((key, grams) -> 0.0);
      }
      wet = leg.wet();
      watcher.see(leg, 0, this);
      for (int step = 1; step <= STEPS; step++) {
        decant();
        for (SupplyKind kind : SupplyKind.values()) {
          take(kind, perLeg(kind, leg) / STEPS);
        }
        grow(leg);
        watcher.see(leg, step, this);
      }
    }
  }

  /** Millilitres of fuel and water, grams of food and gas. */
  double perLeg(SupplyKind kind, Leg leg) {
    int people = trip.people().size();
    return switch (kind) {
      case FUEL ->
          leg.distanceKm()
              * trip.consumption().fuelMlPer100Km()
              / 100.0
              * (leg.surface() == Surface.OFF_ROAD
                  ? trip.consumption().offRoadFuelPermille() / 1000.0
                  : 1.0)
              * (leg.trailerId().isPresent()
                  ? trip.consumption().towingFuelPermille() / 1000.0
                  : 1.0);
      case WATER -> trip.consumption().waterMlPerPersonDay() * people * leg.days();
      case FOOD -> trip.consumption().foodGPerPersonDay() * people * leg.days();
      case GAS -> trip.consumption().gasGPerDay() * leg.days();
    };
  }

  double missing(SupplyKind kind) {
    return missing.getOrDefault(kind, 0.0);
  }

  private List<List<String>> groups(SupplyKind kind) {
    return groups.computeIfAbsent(kind, this::groupsOf);
  }

  private List<List<String>> groupsOf(SupplyKind kind) {
    List<List<String>> found = new ArrayList<>();
    for (SupplyOrder order : trip.orders()) {
      if (order.kind() == kind) {
        for (List<String> names : order.groups()) {
          List<String> keys = new ArrayList<>();
          for (String name : names) {
            keys.addAll(keysOf(name));
          }
          found.add(keys);
        }
      }
    }
    return found;
  }

  /** The same groups without fuel cans, which are never burnt from. */
  private List<List<String>> drawnOf(SupplyKind kind) {
    List<List<String>> found = groupsOf(kind);
    for (List<String> group : found) {
      group.removeIf(key -> kind == SupplyKind.FUEL && !tanks.containsKey(key));
    }
    return found;
  }

  private List<String> keysOf(String name) {
    List<String> keys = new ArrayList<>();
    if (tanks.containsKey(name + "-liquid")) {
      keys.add(name + "-liquid");
    }
    for (String key : full.keySet()) {
      PlacedItem placed = loading.placed().get(key);
      if (placed != null && (placed.item().id().equals(name) || key.equals(name))) {
        keys.add(key);
      }
    }
    keys.sort(String::compareTo);
    return keys;
  }

  private void resupply(Leg.Resupply resupply) {
    double left = resupply.addG().orElse(0L);
    for (List<String> group : groups(resupply.kind())) {
      for (String key : group) {
        double now = content.get(key);
        if (resupply.addG().isPresent()) {
          double more = Math.min(left, full.get(key) - now);
          left -= more;
          content.put(key, now + more);
        } else if (now < initial.get(key)) {
          content.put(key, initial.get(key));
        }
      }
    }
  }

  private void decant() {
    SupplyOrder fuel = null;
    for (SupplyOrder order : trip.orders()) {
      if (order.kind() == SupplyKind.FUEL) {
        fuel = order;
      }
    }
    List<String> order = fuelOrder;
    boolean again = fuel != null;
    while (again) {
      again = false;
      boolean dry = true;
      for (String key : order) {
        dry &= !tanks.containsKey(key) || content.get(key) <= 0.0;
      }
      for (String can : order) {
        if (tanks.containsKey(can) || content.get(can) <= 0.0) {
          continue;
        }
        if (fuel.decant() == SupplyOrder.Decant.EARLY || dry) {
          for (String tank : order) {
            if (tanks.containsKey(tank)
                && !again
                && full.get(tank) - content.get(tank) >= content.get(can)) {
              content.merge(tank, content.get(can), Double::sum);
              content.put(can, 0.0);
              again = true;
            }
          }
        }
        break;
      }
    }
  }

  private void take(SupplyKind kind, double wanted) {
    double left = wanted;
    if (left <= 0.0) {
      return;
    }
    for (List<String> from : drawn.computeIfAbsent(kind, this::drawnOf)) {
      if (left <= 0.0) {
        break;
      }
      double there = 0.0;
      for (String key : from) {
        there += content.get(key) / gramsOf(key);
      }
      if (there <= 0.0) {
        continue;
      }
      if (!from.equals(opened.get(kind)) || kind == SupplyKind.FUEL) {
        opened.put(kind, from);
        from.forEach(key -> heldWhenOpened.put(key, content.get(key) / gramsOf(key)));
      }
      double held = 0.0;
      for (String key : from) {
        held += heldWhenOpened.get(key);
      }
      double taken = Math.min(left, there);
      for (String key : from) {
        double share = taken * heldWhenOpened.get(key) / held * gramsOf(key);
        double rest = taken == there ? 0.0 : Math.max(0.0, content.get(key) - share);
        content.put(key, rest);
      }
      left -= taken;
    }
    missing.merge(kind, Math.max(0.0, left), Double::sum);
  }

  private double gramsOf(String key) {
    FittedTank tank = tanks.get(key);
    return tank == null ? 1.0 : tank.tank().densityGPerL() / 1000.0;
  }

  private void grow(Leg leg) {
    for (Map.Entry<String, Double> one : rubbish.entrySet()) {
      var growth = loading.placed().get(one.getKey()).item().growth().get();
      double more = growth.perPersonDayG() * trip.people().size() * leg.days() / STEPS;
      one.setValue(Math.min((double) growth.upToG(), one.getValue() + more));
    }
  }

  /** Grams of every body now, unrounded. */
  double[] massesG(Leg leg) {
    EmptyUte empty = EmptyUte.of(loading.scenario());
    double[] mass = new double[loading.bodies().size()];
    for (int i = 0; i < mass.length; i++) {
      Body body = loading.bodies().get(i);
      mass[i] = body.nominalG();
      if (body.key().equals("ute-front")) {
        mass[i] = empty.frontG();
      } else if (body.key().equals("ute-rear")) {
        mass[i] = empty.rearG();
      } else if (body.key().startsWith("seat-")) {
        mass[i] = 0.0;
      } else if (body.kind() == BodyKind.LIQUID) {
        mass[i] = content.get(body.key());
      } else if (body.kind() == BodyKind.BALL) {
        mass[i] = ballG(leg);
      } else if (body.kind() == BodyKind.ITEM) {
        mass[i] = itemG(body.key());
      }
    }
    return mass;
  }

  private double ballG(Leg leg) {
    for (Trailer trailer : loading.scenario().trailers()) {
      if (leg.trailerId().isPresent() && leg.trailerId().get().equals(trailer.id())) {
        return trailer.ball().massG();
      }
    }
    return 0.0;
  }

  private double itemG(String key) {
    Item item = loading.placed().get(key).item();
    double mass = item.mass().massG();
    if (item.content().isPresent()) {
      mass += content.get(key) - full.get(key);
    }
    if (item.growth().isPresent()) {
      mass += rubbish.get(key) + (wet ? item.growth().get().wetG() : 0L);
    }
    return mass;
  }
}
