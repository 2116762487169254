package kitstow.planner.json;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Mark;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Need;
import kitstow.planner.model.PartState;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Regimes;
import kitstow.planner.model.Settings;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Zone;

/**
 * The words that stand for the values of an enum in a file: {@code cabRoof} for CAB_ROOF.
 *
 * @param <E> the enum
 */
final class Words<E extends Enum<E>> {
  static final Words<MassSource> MASS_SOURCE = camel(MassSource.values());
  static final Words<Settings.MassLimits> MASS_LIMITS = camel(Settings.MassLimits.values());
  static final Words<Regimes.RearOverhang> REAR_OVERHANG = camel(Regimes.RearOverhang.values());
  static final Words<Facing> SIDE = camel(Facing.LEFT, Facing.RIGHT);
  static final Words<Facing> FACING = camel(Facing.values());
  static final Words<Zone> ZONE = camel(Zone.values());
  static final Words<Zone> ROOF = camel(Zone.CAB_ROOF, Zone.CANOPY_ROOF);
  static final Words<Environment> ENVIRONMENT = camel(Environment.values());
  static final Words<AccessAxis> ACCESS =
      camel(AccessAxis.ABOVE, AccessAxis.LEFT, AccessAxis.RIGHT, AccessAxis.REAR, AccessAxis.FRONT);
  static final Words<AccessAxis> MODULE_ACCESS = camel(AccessAxis.FACE, AccessAxis.ABOVE);
  static final Words<SupplyKind> SUPPLY = camel(SupplyKind.values());
  static final Words<SupplyKind> TANK = camel(SupplyKind.FUEL, SupplyKind.WATER, SupplyKind.GAS);
  static final Words<SupplyOrder.Decant> DECANT = camel(SupplyOrder.Decant.values());
  static final Words<Need> NEED = camel(Need.values());
  static final Words<Mark> MARK = camel(Mark.values());
  static final Words<Reach> REACH = camel(Reach.values());
  static final Words<Surface> SURFACE = camel(Surface.values());
  static final Words<PartState> PART_STATE = camel(PartState.values());
  static final Words<KeepClear.Face> FACE = camel(KeepClear.Face.values());
  static final Words<KeepClear.Kind> CLEAR_KIND = camel(KeepClear.Kind.values());
  static final Words<Turn> TURN = named(Turn.values());

  private final Map<String, E> byWord;
  private final String listed;

  private Words(Map<String, E> byWord) {
    this.byWord = byWord;
    this.listed = Shown.list(byWord.keySet());
  }

  @SafeVarargs
  static <E extends Enum<E>> Words<E> camel(E... values) {
    Map<String, E> byWord = new LinkedHashMap<>();
    for (E value : values) {
      byWord.put(of(value), value);
    }
    return new Words<>(byWord);
  }

  @SafeVarargs
  private static <E extends Enum<E>> Words<E> named(E... values) {
    Map<String, E> byWord = new LinkedHashMap<>();
    for (E value : values) {
      byWord.put(value.name(), value);
    }
    return new Words<>(byWord);
  }

  /** The word for a value; turns keep their name. */
  static String of(Enum<?> value) {
    if (value instanceof Turn) {
      return value.name();
    }
    StringBuilder word = new StringBuilder();
    for (String part : value.name().split("_", -1)) {
      String lower = part.toLowerCase(Locale.ROOT);
      word.append(word.length() == 0 ? lower : part.charAt(0) + lower.substring(1));
    }
    return word.toString();
  }

  /** The value a word stands for. */
  Optional<E> find(String word) {
    return Optional.ofNullable(byWord.get(word));
  }

  /** All words. */
  Set<String> all() {
    return byWord.keySet();
  }

  /** All words as a text. */
  String listed() {
    return listed;
  }

  /** A value to go on with where the input gives none. */
  E usable() {
    return byWord.values().iterator().next();
  }
}
