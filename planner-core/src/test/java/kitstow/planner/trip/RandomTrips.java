package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.PartState;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder.Decant;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Zone;

/**
 * Trips of all sorts from a seed: tanks, cans, fridges, rubbish, wet canvas, filling up, running
 * dry.
 */
final class RandomTrips {
  private final Random random;

  private RandomTrips(long seed) {
    random = new Random(seed);
  }

  static Loading loading(long seed) {
    return new RandomTrips(seed).rig().loading();
  }

  private TripRigs rig() {
    TripRigs rig =
        new TripRigs()
            .part("spare", 32_000L, random.nextBoolean() ? PartState.ON : PartState.OFF)
            .fuelTank("main", 80_000L, between(50_000, 80_000))
            .fuelTank("aux", 50_000L, between(0, 50_000))
            .module("drawer", "rear", 700, 20_000L, between(10_000, 40_000))
            .module("fridge", "drawer/top", 500, 6_000L, 9_000L)
            .module("slide", "left", 600, 15_000L, 25_000L)
            .module(
                "tankbox",
                "right",
                0,
                12_000L,
                0L,
                water("water1", 60_000L),
                water("water2", 40_000L))
            .trailer("van", 1_800_000L, between(60_000, 200_000))
            .fuelUse(between(9_000, 14_000), 1300, 1250)
            .dailyUse(between(3_000, 7_000), between(600, 1_800), between(100, 500));
    int people = (int) between(1, 5);
    for (int i = 0; i < people; i++) {
      rig.person(
          "p" + i,
          between(50_000, 110_000),
          random.nextBoolean() ? Optional.of(Zone.CANOPY_ROOF) : Optional.empty());
    }
    supplies(rig);
    for (int i = 0; i < 12; i++) {
      rig.gear("gear" + i, where(), between(300, 25_000));
    }
    orders(rig);
    int legs = (int) between(1, 5);
    for (int i = 0; i < legs; i++) {
      rig.leg(leg("leg" + i));
    }
    return rig;
  }

  private Tank water(String id, long capacityMl) {
    LocalBoxMm box = new LocalBoxMm(50, 50, 20, new SizeMm(400, 400, 200));
    long start = between(capacityMl / 4, capacityMl);
    return TripRigs.tank(id, SupplyKind.WATER, capacityMl, 1000L, 4_000L, box, start);
  }

  private void supplies(TripRigs rig) {
    rig.supply("can", where(), 20_500L, SupplyKind.FUEL, 16_640L, (int) between(1, 4))
        .supply("smallcan", where(), 10_400L, SupplyKind.FUEL, between(4_000, 8_320), 1)
        .supply("jug", where(), 11_000L, SupplyKind.WATER, 10_000L, (int) between(1, 3))
        .supply("cold", "fridge/in", 18_000L, SupplyKind.FOOD, between(5_000, 16_000), 1)
        .supply("dry", "pantry", 14_000L, SupplyKind.FOOD, between(4_000, 12_000), 1)
        .supply("tins", where(), 9_000L, SupplyKind.FOOD, 8_001L, 2)
        .supply("bottle", where(), 9_500L, SupplyKind.GAS, 4_000L, 2)
        .growing("rubbish", where(), 500L, new Growth(between(50, 300), between(2_000, 9_000), 0L))
        .growing("awning", where(), 9_000L, new Growth(0L, 0L, between(500, 4_000)));
    if (random.nextBoolean()) {
      rig.home("can", 1);
    }
    if (random.nextInt(4) == 0) {
      rig.home("dry", 1);
    }
  }

  private void orders(TripRigs rig) {
    Decant decant = random.nextBoolean() ? Decant.EARLY : Decant.WHEN_EMPTY;
    rig.order(
            SupplyKind.FUEL,
            decant,
            pick("main|aux|can,smallcan", "main,aux|smallcan|can", "can|aux|main"))
        .order(
            SupplyKind.WATER,
            Decant.EARLY,
            pick("water1,water2,jug", "jug|water1|water2", "water2,jug"))
        .order(
            SupplyKind.FOOD,
            Decant.EARLY,
            pick("cold,dry|tins", "tins,dry,cold", "tins#2|nothing|cold"));
    if (random.nextInt(5) > 0) {
      rig.order(SupplyKind.GAS, Decant.EARLY, pick("bottle", "bottle#2|bottle#1"));
    }
  }

  private Leg leg(String id) {
    double km = random.nextInt(6) == 0 ? 0.0 : between(20, 900) + random.nextDouble();
    double days = random.nextInt(6) == 0 ? 0.0 : between(1, 8) / 2.0;
    List<Leg.Resupply> resupply = new ArrayList<>();
    for (SupplyKind kind : SupplyKind.values()) {
      switch (random.nextInt(4)) {
        case 0 -> resupply.add(TripRigs.full(kind));
        case 1 -> resupply.add(TripRigs.add(kind, between(1_000, 40_000)));
        default -> {}
      }
    }
    return new Leg(
        id,
        id,
        km,
        days,
        random.nextBoolean() ? Surface.ROAD : Surface.OFF_ROAD,
        random.nextInt(3) == 0 ? Optional.of("van") : Optional.empty(),
        random.nextInt(3) == 0,
        resupply,
        random.nextInt(3) == 0);
  }

  private String where() {
    return pick("pantry", "drawer/in", "fridge/in", "slide/in", "tankbox/in");
  }

  private String pick(String... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** A whole number, both ends included. */
  private long between(long least, long most) {
    return least + random.nextInt((int) (most - least + 1));
  }
}
