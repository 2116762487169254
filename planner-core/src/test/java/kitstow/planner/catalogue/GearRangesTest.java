package kitstow.planner.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Content;
import kitstow.planner.model.Item;
import kitstow.planner.model.Mark;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Settings;
import kitstow.planner.model.SupplyKind;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every piece of gear is as the trade has it. */
class GearRangesTest {
  private static final long G_PER_KG = 1000L;

  private static final Map<Character, Set<Turn>> TURNS =
      Map.of(
          'U', Set.of(Turn.LWH, Turn.WLH),
          'H', Set.of(Turn.LWH, Turn.WLH),
          'N', Set.of(Turn.LWH, Turn.WLH),
          'F', Set.of(Turn.LWH, Turn.WLH),
          '-', Set.of(Turn.LWH, Turn.WLH),
          'S', Set.of(Turn.LWH, Turn.WLH, Turn.LHW, Turn.HLW),
          'A', Set.of(Turn.values()));

  private static final Map<Character, Long> BEARS_KG = Map.of('0', 0L, '-', 0L, '1', 10L, '2', 30L);

  private static final Map<Character, Reach> REACH =
      Map.of(
          'E', Reach.EMERGENCY,
          'A', Reach.MANY_A_DAY,
          'B', Reach.DAILY,
          'C', Reach.FEW_DAYS,
          'D', Reach.RARE,
          '-', Reach.RARE);

  private static final Map<String, Mark> MARKS =
      Map.ofEntries(
          Map.entry("F", Mark.FUEL),
          Map.entry("G", Mark.GAS),
          Map.entry("O", Mark.OIL),
          Map.entry("FD", Mark.FOOD),
          Map.entry("W", Mark.WET),
          Map.entry("DR", Mark.DRY),
          Map.entry("FR", Mark.FRAGILE),
          Map.entry("EL", Mark.ELECTRIC),
          Map.entry("HT", Mark.COOL),
          Map.entry("SH", Mark.SHARP),
          Map.entry("BK", Mark.BULKY),
          Map.entry("TH", Mark.THEFT));

  private static final Map<String, Item> GEAR =
      ShippedCatalogue.read().gear().stream()
          .collect(Collectors.toMap(Item::id, Function.identity()));

  @Test
  void tableAndCatalogueNameTheSameGear() {
    assertThat(GEAR.keySet())
        .containsExactlyInAnyOrderElementsOf(GearTable.all().stream().map(GearRow::id).toList());
  }

  /** Fuel and gas must ride in the open or vented to it, wet things wherever it may be wet. */
  @Test
  void whatMustStayDryIsNeitherWetNorFuelNorGas() {
    assertThat(GEAR.values())
        .filteredOn(item -> item.marks().contains(Mark.DRY))
        .hasSizeGreaterThan(30)
        .noneMatch(item -> item.marks().contains(Mark.WET))
        .noneMatch(item -> item.marks().contains(Mark.FUEL))
        .noneMatch(item -> item.marks().contains(Mark.GAS));
  }

  /** What the trade carries on roofs: long, rolled up or made for it. */
  @Test
  void whatBelongsOnARoofMayRideThere() {
    long lightG = Settings.DEFAULTS.roofGearG();
    assertThat(
            List.of(
                "rooftop-tent-soft",
                "rooftop-tent-hard",
                "traction-boards-pair",
                "traction-boards-four",
                "swag-single",
                "swag-double",
                "touring-tent",
                "awning-walls",
                "tent-ladder",
                "folding-armchair",
                "roll-top-table",
                "flat-table",
                "ground-mat",
                "shower-tent",
                "rod-tube",
                "firewood",
                "extension-ladder",
                "step-ladder",
                "pipe-tube"))
        .extracting(GEAR::get)
        .allMatch(item -> item.marks().contains(Mark.BULKY) || item.mass().massG() <= lightG)
        .noneMatch(item -> item.marks().contains(Mark.DRY));
    assertThat(List.of("water-can-20", "diesel-can-20-steel", "chest-fridge-40", "spare-wheel-800"))
        .extracting(GEAR::get)
        .noneMatch(item -> item.marks().contains(Mark.BULKY))
        .allMatch(item -> item.mass().massG() > lightG);
  }

  @TestFactory
  List<DynamicTest> gearIsAsTheTradeHasIt() {
    return GearTable.all().stream()
        .map(row -> DynamicTest.dynamicTest(row.id(), () -> check(row, GEAR.get(row.id()))))
        .toList();
  }

  private static void check(GearRow row, Item item) {
    checkShapes(row, item);
    checkMass(row, item);
    assertThat(item.turns()).isEqualTo(TURNS.get(row.stands()));
    assertThat(item.bearsG()).isEqualTo(BEARS_KG.get(row.bears()) * G_PER_KG);
    assertThat(item.reach()).isEqualTo(REACH.get(row.reach()));
    assertThat(item.marks()).isEqualTo(marks(row));
    assertThat(item.keepClear())
        .containsExactlyInAnyOrderElementsOf(
            GearExtras.KEEP_CLEAR.getOrDefault(row.id(), List.of()));
  }

  private static void checkShapes(GearRow row, Item item) {
    assertThat(item.shapes().get(0)).isEqualTo(row.size());
    assertThat(item.shapes()).hasSizeBetween(1, GearExtras.SOFT.contains(row.id()) ? 3 : 1);
    for (SizeMm shape : item.shapes()) {
      double ratio = (double) shape.volumeMm3() / row.size().volumeMm3();
      assertThat(GearExtras.SHAPE_VOLUME_RATIO.holds(ratio)).as("%s", shape).isTrue();
    }
  }

  private static void checkMass(GearRow row, Item item) {
    boolean read = !row.basis().equals(Basis.COMMON_PRACTICE);
    assertThat(item.source()).isEqualTo(row.basis());
    assertThat(item.mass().source()).isEqualTo(read ? MassSource.LABEL : MassSource.ESTIMATE);
    boolean fillsOnTheWay = row.id().equals(GearExtras.RUBBISH);
    long fullG = grams(row.fullKg());
    long usedUpG = fullG - grams(row.emptyKg());
    assertThat(item.mass().massG()).isEqualTo(fillsOnTheWay ? grams(row.emptyKg()) : fullG);
    assertThat(item.content()).isEqualTo(kind(row.id()).map(k -> new Content(k, usedUpG)));
    if (fillsOnTheWay) {
      assertThat(item.growth())
          .hasValueSatisfying(
              growth -> {
                assertThat(growth.upToG()).isEqualTo(usedUpG);
                assertThat(GearExtras.RUBBISH_PER_PERSON_DAY.holds(kg(growth.perPersonDayG())))
                    .isTrue();
              });
    } else if (GearExtras.WET.containsKey(row.id())) {
      assertThat(item.growth())
          .hasValueSatisfying(
              growth -> assertThat(GearExtras.WET.get(row.id()).holds(kg(growth.wetG()))).isTrue());
    } else {
      assertThat(item.growth()).isEmpty();
    }
  }

  private static Optional<SupplyKind> kind(String id) {
    return GearExtras.CONTENT.entrySet().stream()
        .filter(entry -> entry.getValue().contains(id))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** A thing with gas is gas, not fuel; vents show in what is kept clear, not in a mark. */
  private static Set<Mark> marks(GearRow row) {
    Set<Mark> marks = new HashSet<>();
    for (String flag : row.flags()) {
      boolean gasAnyway = flag.equals("F") && row.flags().contains("G");
      if (MARKS.containsKey(flag) && !gasAnyway) {
        marks.add(MARKS.get(flag));
      }
    }
    if (GearExtras.HEAVY_TOOLS.contains(row.id())) {
      marks.add(Mark.HEAVY_TOOL);
    }
    if (GearExtras.UNDER_COVER.contains(row.id())) {
      marks.add(Mark.DRY);
    }
    if (GearExtras.CAB.contains(row.id())) {
      marks.add(Mark.CAB);
    }
    if (GearExtras.BEDDING.contains(row.id())) {
      marks.add(Mark.BEDDING);
    }
    return marks;
  }

  private static long grams(double kg) {
    return Math.round(kg * G_PER_KG);
  }

  private static double kg(long grams) {
    return (double) grams / G_PER_KG;
  }
}
