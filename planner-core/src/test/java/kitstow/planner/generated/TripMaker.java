package kitstow.planner.generated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Leg;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.Masses;

/** People, legs, supplies and now and then a trailer of one scenario. */
final class TripMaker {
  /** Id of the trailer where there is one. */
  static final String TRAILER = "trailer";

  private final Random random;
  private final RigMaker rig;
  private final GearMaker gear;
  private final int number;
  private final boolean small;
  private final Leg.Room room;

  TripMaker(Random random, RigMaker rig, GearMaker gear, int number) {
    this.random = random;
    this.rig = rig;
    this.gear = gear;
    this.number = number;
    this.small = number < GeneratedScenarios.SMALL;
    this.room = GeneratedScenarios.ferry(number);
  }

  void make() {
    rig.builder().person("driver", Masses.kg(70 + random.nextInt(40)), "driver");
    if (random.nextBoolean()) {
      long massG = Masses.kg(55 + random.nextInt(40));
      if (!small && random.nextInt(3) == 0) {
        rig.builder().sleeper("mate", massG, "passenger", Zone.CANOPY_ROOF);
      } else {
        rig.builder().person("mate", massG, "passenger");
      }
    }
    boolean tows = GeneratedScenarios.tows(number);
    if (tows) {
      rig.builder()
          .trailer(
              new Trailer(
                  TRAILER,
                  TRAILER,
                  Masses.weighed(Masses.kg(900 + random.nextInt(1200))),
                  Masses.weighed(Masses.kg(130 + random.nextInt(200))),
                  /* braked= */ true,
                  /* behindBallMm= */ size(3_500),
                  /* heightMm= */ size(2_000)));
    }
    List<Leg> legs = new ArrayList<>();
    int count = small ? 1 : 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      legs.add(leg(i, tows && (i == 0 || random.nextBoolean())));
    }
    rig.builder()
        .legs(legs.toArray(new Leg[0]))
        .using(new Consumption(12_000L, 1400, 1300, 5_000L, 1_500L, 0L), orders());
  }

  /** Known where the room on a leg is short. */
  private OptionalInt size(int mm) {
    return room.equals(Leg.Room.UNLIMITED) ? OptionalInt.empty() : OptionalInt.of(mm);
  }

  private SupplyOrder[] orders() {
    List<SupplyOrder> orders = new ArrayList<>();
    addOrder(orders, SupplyKind.WATER, gear.water());
    addOrder(orders, SupplyKind.FOOD, gear.food());
    return orders.toArray(new SupplyOrder[0]);
  }

  private static void addOrder(List<SupplyOrder> orders, SupplyKind kind, List<String> ids) {
    if (!ids.isEmpty()) {
      List<List<String>> groups = new ArrayList<>();
      ids.forEach(id -> groups.add(List.of(id)));
      orders.add(new SupplyOrder(kind, groups, SupplyOrder.Decant.EARLY));
    }
  }

  private Leg leg(int index, boolean tows) {
    List<Leg.Resupply> resupply = new ArrayList<>();
    if (index > 0 && !gear.water().isEmpty() && random.nextBoolean()) {
      resupply.add(new Leg.Resupply(SupplyKind.WATER, OptionalLong.empty()));
    }
    return new Leg(
        "leg-" + index,
        "Leg " + index,
        /* distanceKm= */ 100.0 + random.nextInt(400),
        /* days= */ 0.5 + random.nextInt(3),
        random.nextBoolean() ? Surface.ROAD : Surface.OFF_ROAD,
        tows ? Optional.of(TRAILER) : Optional.empty(),
        /* wet= */ random.nextInt(4) == 0,
        resupply,
        /* emptyRubbish= */ random.nextBoolean(),
        room);
  }
}
