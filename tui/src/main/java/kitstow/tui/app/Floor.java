package kitstow.tui.app;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import kitstow.planner.model.Loading;

/**
 * The least overhang moment that any plan can have which leaves the same gear home and has its
 * modules in the same bays.
 *
 * @param home body keys of what is at home
 * @param moduleBays bay by module
 * @param momentNm the floor in N·m, of the worst moving state; absent where none can be told
 */
public record Floor(Set<String> home, Map<String, String> moduleBays, OptionalDouble momentNm) {
  /** Copies its collections. */
  public Floor {
    home = Set.copyOf(home);
    moduleBays = Map.copyOf(moduleBays);
  }

  /** A floor found for a loading. */
  public static Floor of(Loading loading, OptionalDouble momentNm) {
    return new Floor(Set.copyOf(loading.home()), loading.plan().moduleBays(), momentNm);
  }

  /** The floor, if it holds for a loading. */
  OptionalDouble nmFor(Loading loading) {
    boolean same =
        home.equals(Set.copyOf(loading.home())) && moduleBays.equals(loading.plan().moduleBays());
    return same ? momentNm : OptionalDouble.empty();
  }
}
