package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.report.Finding;

/** Which units and modules a finding may be mended with, the most promising first. */
final class Movers {
  private static final int MOST = 12;

  private Movers() {}

  /** Units that bear on a finding: the heaviest on a limit, else its subjects and their company. */
  static List<PlacedItem> units(Loading loading, Finding finding, Optional<SameMasses> limit) {
    if (limit.isPresent()) {
      return heaviestOn(loading, limit.get());
    }
    List<PlacedItem> units = new ArrayList<>();
    for (String subject : finding.subjectIds()) {
      PlacedItem unit = loading.placed().get(subject);
      if (unit != null) {
        units.add(unit);
      }
    }
    for (PlacedItem subject : new ArrayList<>(units)) {
      for (PlacedItem other : loading.in(subject.space().id())) {
        if (units.stream().noneMatch(other::is)) {
          units.add(other);
        }
      }
    }
    for (String subject : finding.subjectIds()) {
      for (PlacedItem unit : loading.placed().values()) {
        boolean inside =
            unit.space().inModules().contains(subject) || unit.space().id().equals(subject);
        if (inside && units.stream().noneMatch(unit::is)) {
          units.add(unit);
        }
      }
    }
    return first(units);
  }

  /** The units that load a limit most. */
  static List<PlacedItem> heaviestOn(Loading loading, SameMasses limit) {
    List<PlacedItem> units = new ArrayList<>();
    for (PlacedItem unit : loading.placed().values()) {
      if (limit.loadKg(unit.key()) > 0.0) {
        units.add(unit);
      }
    }
    units.sort(
        Comparator.comparingDouble((PlacedItem unit) -> limit.loadKg(unit.key())).reversed());
    return first(units);
  }

  /** Units that may stay home, by what they take off a limit for what leaving them costs. */
  static List<PlacedItem> mayStayHome(Loading loading, Optional<SameMasses> limit) {
    List<PlacedItem> units = new ArrayList<>();
    for (PlacedItem unit : loading.placed().values()) {
      boolean bears = !limit.isPresent() || limit.get().loadKg(unit.key()) > 0.0;
      if (unit.item().need() != Need.MUST && bears) {
        units.add(unit);
      }
    }
    units.sort(
        Comparator.comparingDouble(
                (PlacedItem unit) ->
                    limit.map(one -> one.loadKg(unit.key())).orElse(1.0)
                        / (1.0 + unit.item().value()))
            .reversed());
    return units;
  }

  /** Modules that bear on a finding. */
  static List<FittedModule> modules(Loading loading, Finding finding, Optional<SameMasses> limit) {
    List<FittedModule> modules = new ArrayList<>();
    for (FittedModule module : loading.rig().modules().values()) {
      String id = module.module().id();
      boolean bears =
          limit.isPresent() ? limit.get().loadKg(id) > 0.0 : finding.subjectIds().contains(id);
      if (bears) {
        modules.add(module);
      }
    }
    return modules;
  }

  private static List<PlacedItem> first(List<PlacedItem> units) {
    return units.size() > MOST ? new ArrayList<>(units.subList(0, MOST)) : units;
  }
}
