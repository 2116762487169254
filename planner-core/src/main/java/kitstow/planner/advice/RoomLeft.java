package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.SpaceRoom;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.Lever;

/**
 * What still goes into each space. The mass is found by trying: a probe is put into the largest gap
 * and every limit is read again in every state; loads are linear in it.
 */
public final class RoomLeft {
  private static final long TEN_KG_G = 10_000L;
  private static final long PROBE_G = 100_000L;
  private static final String PROBE = "\u0000probe";
  private static final long MM3_PER_ML = 1000L;

  private RoomLeft() {}

  /** Room left in every space of a loading, in the order of its spaces. */
  public static List<SpaceRoom> of(Situation situation) {
    Loading loading = situation.loading();
    Map<String, LimitReading> now = Readings.of(situation);
    List<SpaceRoom> rooms = new ArrayList<>();
    Optional<String> tightest = tightest(now);
    for (Space space : loading.rig().spaces().values()) {
      Optional<BoxMm> gap = Gaps.largest(Gaps.of(loading, space));
      Map<String, LimitReading> then = probed(loading, space, gap.orElse(space.box()));
      rooms.add(
          new SpaceRoom(
              space,
              gap,
              freeMl(loading, space),
              left(then, now),
              tenMore(loading, gap.orElse(space.box()), tightest, now, then)));
    }
    return rooms;
  }

  private static SpaceRoom.TenMore tenMore(
      Loading loading,
      BoxMm gap,
      Optional<String> tightest,
      Map<String, LimitReading> now,
      Map<String, LimitReading> then) {
    long halfGMm =
        Lever.overhangHalfGMm(
            TEN_KG_G, gap.minXMm(), gap.maxXMm(), loading.scenario().ute().wheelbaseMm());
    double addedKg =
        tightest.map(key -> Readings.loadKg(then, key) - Readings.loadKg(now, key)).orElse(0.0);
    return new SpaceRoom.TenMore(
        Lever.newtonMetres(halfGMm, Lever.STANDARD_GRAVITY_M_S2), addedKg * TEN_KG_G / PROBE_G);
  }

  /** The reading with the largest used share. */
  private static Optional<String> tightest(Map<String, LimitReading> now) {
    Optional<String> tightest = Optional.empty();
    double used = -1.0;
    for (Map.Entry<String, LimitReading> entry : now.entrySet()) {
      double ratio = entry.getValue().margin().usedRatio();
      if (ratio > used) {
        used = ratio;
        tightest = Optional.of(entry.getKey());
      }
    }
    return tightest;
  }

  private static long freeMl(Loading loading, Space space) {
    long freeMm3 = Gaps.volumeMm3(space.box());
    for (PlacedItem item : loading.in(space.id())) {
      if (Boxes.overlap(item.box(), space.box())) {
        freeMm3 -=
            (long) Boxes.overlapXMm(item.box(), space.box())
                * Boxes.overlapYMm(item.box(), space.box())
                * Boxes.overlapZMm(item.box(), space.box());
      }
    }
    return Math.max(0L, freeMm3 / MM3_PER_ML);
  }

  /** Every limit again with the probe in a gap. */
  private static Map<String, LimitReading> probed(Loading loading, Space space, BoxMm gap) {
    return Readings.of(
        Situation.of(Loading.of(withProbe(loading, gap), probedPlan(loading, space, gap))));
  }

  private static Optional<SpaceRoom.Left> left(
      Map<String, LimitReading> probed, Map<String, LimitReading> now) {
    SpaceRoom.Left least = null;
    for (Map.Entry<String, LimitReading> entry : probed.entrySet()) {
      LimitReading then = entry.getValue();
      double loadKg = Readings.loadKg(now, entry.getKey());
      double perKg = (then.margin().loadKg() - loadKg) * 1000.0 / PROBE_G;
      if (perKg > 1.0e-6) {
        double kg = (then.margin().limitKg() - loadKg) / perKg;
        if (least == null || kg < least.kg()) {
          least = new SpaceRoom.Left(kg, then.rule(), then.subjectId(), then.state().id());
        }
      }
    }
    return Optional.ofNullable(least);
  }

  private static LoadPlan probedPlan(Loading loading, Space space, BoxMm gap) {
    List<Placement> placements = new ArrayList<>(loading.plan().placements());
    placements.add(new Placement(PROBE, 1, space.id(), 0, Turn.LWH, space.cornerOf(gap.corner())));
    LoadPlan plan = loading.plan();
    return new LoadPlan(plan.scenarioId(), plan.moduleBays(), placements, plan.origin());
  }

  private static Scenario withProbe(Loading loading, BoxMm gap) {
    Scenario scenario = loading.scenario();
    List<Item> items = new ArrayList<>(scenario.items());
    items.add(
        new Item(
            PROBE,
            "probe",
            PROBE,
            "",
            List.of(new SizeMm(gap.lengthMm(), gap.widthMm(), gap.heightMm())),
            new KnownMass(PROBE_G, MassSource.WEIGHED, 0L),
            Optional.empty(),
            Set.of(Turn.LWH),
            /* bearsG= */ 0L,
            List.of(),
            Set.of(),
            Reach.FEW_DAYS,
            Optional.empty(),
            Need.NICE,
            /* value= */ 1,
            /* quantity= */ 1,
            Optional.empty(),
            Optional.empty()));
    return scenario.withItems(items);
  }
}
