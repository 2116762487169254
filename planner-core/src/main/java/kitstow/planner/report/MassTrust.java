package kitstow.planner.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Body;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Person;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Trailer;
import kitstow.planner.statics.Margin;

/**
 * How well the mass of a state is known: how much of it comes from which kind of figure, and which
 * masses may be off by most. What is in tanks goes by volume and density, a kind of its own. What
 * was on the ute when it was weighed is off by nothing: weighing it alone would add nothing.
 *
 * @param gramsBySource grams by the source of the figure
 * @param byVolumeG grams of what is in tanks
 * @param doubts tolerances, the largest first; units of one catalogue entry in one line
 */
public record MassTrust(Map<MassSource, Long> gramsBySource, long byVolumeG, List<Doubt> doubts) {
  /**
   * By how much one mass, or several of one catalogue entry, may be off.
   *
   * @param title what it is
   * @param bodies how many bodies it is
   * @param kg 95 % half width
   */
  public record Doubt(String title, int bodies, double kg) {}

  /** Copies its collections. */
  public MassTrust {
    gramsBySource = Map.copyOf(gramsBySource);
    doubts = List.copyOf(doubts);
  }

  /** Trust in the mass of a state. */
  public static MassTrust of(Loading loading, LoadState state) {
    Map<String, MassSource> sources = sources(loading, state);
    Map<MassSource, Long> bySource = new EnumMap<>(MassSource.class);
    Map<String, Doubt> doubts = new LinkedHashMap<>();
    long byVolumeG = 0L;
    for (int i = 0; i < state.size(); i++) {
      Body body = loading.bodies().get(i);
      long massG = state.massG(i);
      if (massG == 0L) {
        continue;
      }
      MassSource source = sources.get(body.key());
      if (source == null) {
        byVolumeG += massG;
      } else {
        bySource.merge(source, massG, Long::sum);
      }
      doubts.merge(
          body.toleranceKey(),
          new Doubt(titleOf(body), 1, Margin.toleranceG(loading, state, i) / 1000.0),
          (a, b) -> new Doubt(a.title(), a.bodies() + b.bodies(), a.kg() + b.kg()));
    }
    List<Doubt> sorted = new ArrayList<>(doubts.values());
    sorted.sort(Comparator.comparingDouble(Doubt::kg).reversed());
    return new MassTrust(bySource, byVolumeG, sorted);
  }

  static String titleOf(Body body) {
    return switch (body.key()) {
      case Loading.UTE_FRONT -> "empty ute, front axle";
      case Loading.UTE_REAR -> "empty ute, rear axle";
      default -> body.title();
    };
  }

  /** Source of the mass of every body but the liquids in tanks, by body key. */
  private static Map<String, MassSource> sources(Loading loading, LoadState state) {
    Map<String, MassSource> sources = new LinkedHashMap<>();
    for (Body body : loading.bodies()) {
      switch (body.kind()) {
        case UTE -> sources.put(body.key(), emptyUte(loading, body).source());
        case MODULE -> sources.put(body.key(), module(loading, body).source());
        case PERSON -> sources.put(body.key(), MassSource.PLATE);
        case LIQUID, PART, ACCESSORY, TRAY, CANOPY, TANK, ITEM, BALL -> {}
      }
    }
    for (RemovablePart part : loading.scenario().ute().parts()) {
      sources.put(part.id(), part.mass().source());
    }
    for (Accessory accessory : loading.scenario().accessories()) {
      sources.put(accessory.id(), accessory.mass().source());
    }
    loading.scenario().tray().ifPresent(tray -> sources.put("tray", tray.mass().source()));
    loading.scenario().canopy().ifPresent(one -> sources.put("canopy", one.mass().source()));
    loading
        .rig()
        .tanks()
        .values()
        .forEach(tank -> sources.put(tank.tank().id(), tank.tank().empty().source()));
    for (PlacedItem item : loading.placed().values()) {
      sources.put(item.key(), item.item().mass().source());
    }
    for (Person person : loading.scenario().trip().people()) {
      sources.put(person.id(), person.mass().source());
    }
    for (Trailer trailer : loading.scenario().trailers()) {
      if (state.trailerId().filter(trailer.id()::equals).isPresent()) {
        sources.put(Loading.BALL, trailer.ball().source());
      }
    }
    return sources;
  }

  private static KnownMass emptyUte(Loading loading, Body body) {
    return body.key().equals(Loading.UTE_FRONT)
        ? loading.scenario().ute().empty().front()
        : loading.scenario().ute().empty().rear();
  }

  private static KnownMass module(Loading loading, Body body) {
    var module = loading.rig().modules().get(body.id());
    if (module == null) {
      throw new IllegalArgumentException("no such module: " + body.id());
    }
    return body.key().equals(body.id()) ? module.module().fixed() : module.module().moving();
  }
}
