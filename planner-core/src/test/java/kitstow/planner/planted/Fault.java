package kitstow.planner.planted;

import com.google.errorprone.annotations.Immutable;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** The faults that are planted, each by the smallest amount. */
enum Fault {
  OVERLAP_BY_1_MM(PlaceFaults::overlap),
  OUTSIDE_BY_1_MM(PlaceFaults::outside),
  SUPPORT_79_PERCENT(PlaceFaults::support),
  BEARING_BY_1_G(ItemFaults::bearing),
  LID_BLOCKED(ItemFaults::lid),
  WRONG_TURN(ItemFaults::turn),
  RATING_BY_1_G_IN_ONE_STATE(MassFaults::rating),
  BAY_RATING_BY_1_G(MassFaults::bay),
  CANOPY_ROOF_BY_1_G(MassFaults::canopyRoof),
  BAR_BY_2_G(MassFaults::bar),
  FORBIDDEN_PAIR(ItemFaults::pair),
  DRY_ITEM_IN_THE_OPEN(ItemFaults::rainedOn),
  ROOF_GEAR_BY_1_G(ItemFaults::heavyOnRoof),
  BURIED_EMERGENCY_ITEM(ItemFaults::buried),
  CAB_GEAR_ELSEWHERE(ItemFaults::outsideTheCab),
  SHUT_IN_AT_A_STOP(ItemFaults::shutIn),
  AXLE_BY_1_G(MassFaults::axle);

  private final Planter planter;

  Fault(Planter planter) {
    this.planter = planter;
  }

  /** Plants a fault in a sound plan, where the plan has a place for it. */
  @Immutable
  interface Planter {
    /** One planted plan for each place that suits, in random order; may be empty. */
    List<Planted> in(SoundPlan plan, Random random);
  }

  /** One planted plan, if this plan has a place for the fault. */
  Optional<Planted> plant(SoundPlan plan, Random random) {
    List<Planted> all = planter.in(plan, random);
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
  }
}
