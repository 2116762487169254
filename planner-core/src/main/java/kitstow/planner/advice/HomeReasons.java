package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.DoorPassage;
import kitstow.planner.packing.Pose;
import kitstow.planner.packing.Room;
import kitstow.planner.packing.Wanted;
import kitstow.planner.report.HomeReason;
import kitstow.planner.report.HomeReason.Cause;
import kitstow.planner.report.LimitReading;
import kitstow.planner.rules.Situation;

/**
 * Why what stays home does: each unit is tried in each space with everything else where it is. Told
 * is the first that stands against it: a rule that bars it from the empty space, else, of what must
 * come, a limit that it would exceed there alone, else the room that others leave, else the limit
 * that would be exceeded most.
 */
public final class HomeReasons {
  private final Situation situation;
  private final Loading loading;
  private final Rig rig;
  private final Decoder decoder;
  private final Map<String, LimitReading> now;
  private final Map<String, List<BoxMm>> gaps = new LinkedHashMap<>();
  private final Map<String, Map<String, LimitReading>> emptiedReadings = new LinkedHashMap<>();

  private HomeReasons(Situation situation) {
    this.situation = situation;
    this.loading = situation.loading();
    this.rig = loading.rig();
    this.decoder = new Decoder(rig);
    this.now = Readings.of(situation);
  }

  /** Reasons for every unit at home and every space, in their order in the scenario. */
  public static List<HomeReason> of(Situation situation) {
    return new HomeReasons(situation).all();
  }

  private List<HomeReason> all() {
    List<HomeReason> reasons = new ArrayList<>();
    for (Item item : loading.scenario().items()) {
      List<HomeReason> ofItem = new ArrayList<>();
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (!loading.home().contains(item.keyOf(unit))) {
          continue;
        }
        if (ofItem.isEmpty()) {
          Wanted wanted = Wanted.of(item, unit);
          rig.spaces().values().forEach(space -> ofItem.add(reason(wanted, space)));
        }
        for (HomeReason one : ofItem) {
          reasons.add(
              new HomeReason(
                  item.keyOf(unit),
                  one.spaceId(),
                  one.cause(),
                  one.rule(),
                  one.subjectId(),
                  one.stateId(),
                  one.shortBy(),
                  one.unit()));
        }
      }
    }
    return reasons;
  }

  private HomeReason reason(Wanted wanted, Space space) {
    Optional<HomeReason> whateverIsThere = inEmpty(wanted, space);
    if (whateverIsThere.isPresent()) {
      return whateverIsThere.get();
    }
    Decoder.Found step = decoder.among(loading.placed().values(), wanted, space);
    if (step.place().isPresent()) {
      return byMass(step.place().get(), loading.plan(), now)
          .map(reading -> over(wanted, space, reading, Cause.OVER_LIMIT))
          .orElseGet(() -> plain(wanted, space, Cause.NOTHING, RuleId.MUST_TAKE));
    }
    return alone(wanted, space).orElseGet(() -> crowded(wanted, space, step.barredBy()));
  }

  /** A limit that what must come would exceed with nothing else in the space. */
  private Optional<HomeReason> alone(Wanted wanted, Space space) {
    if (wanted.item().need() != Need.MUST) {
      return Optional.empty();
    }
    Optional<PlacedItem> place = decoder.alone(wanted, space).place();
    if (!place.isPresent()) {
      return Optional.empty();
    }
    List<Placement> elsewhere = new ArrayList<>(loading.plan().placements());
    elsewhere.removeIf(placement -> placement.spaceId().equals(space.id()));
    LoadPlan emptied = with(elsewhere);
    Map<String, LimitReading> before =
        emptiedReadings.computeIfAbsent(space.id(), id -> readings(emptied));
    return byMass(place.get(), emptied, before)
        .map(reading -> over(wanted, space, reading, Cause.OVER_LIMIT_ALONE));
  }

  private LoadPlan with(List<Placement> placements) {
    LoadPlan plan = loading.plan();
    return new LoadPlan(plan.scenarioId(), plan.moduleBays(), placements, plan.origin());
  }

  private Map<String, LimitReading> readings(LoadPlan plan) {
    return Readings.of(Situation.of(Loading.of(loading.scenario(), plan)));
  }

  private static HomeReason over(Wanted wanted, Space space, LimitReading worst, Cause cause) {
    return new HomeReason(
        wanted.key(),
        space.id(),
        cause,
        worst.rule(),
        worst.subjectId(),
        worst.state().id(),
        -worst.margin().marginKg(),
        "kg");
  }

  /** What bars a thing from a space that holds nothing else. */
  private Optional<HomeReason> inEmpty(Wanted wanted, Space space) {
    Decoder.Found alone = decoder.alone(wanted, space);
    if (alone.place().isPresent()) {
      return Optional.empty();
    }
    RuleId barredBy = alone.barredBy();
    if (barredBy == RuleId.INSIDE_SPACE || barredBy == RuleId.DOOR_APERTURE) {
      HomeReason size =
          tooLarge(
              wanted,
              space,
              List.of(Room.of(space)),
              RuleId.INSIDE_SPACE,
              List.of(Cause.TOO_LONG, Cause.TOO_WIDE, Cause.TOO_HIGH));
      return Optional.of(size.shortBy() > 0.0 ? size : door(wanted, space, barredBy));
    }
    return Optional.of(plain(wanted, space, Cause.BARRED, barredBy));
  }

  private HomeReason door(Wanted wanted, Space space, RuleId barredBy) {
    BoxMm room = Room.of(space);
    int least = Integer.MAX_VALUE;
    for (Pose pose : wanted.poses()) {
      BoxMm box = BoxMm.at(room.corner(), pose.size());
      int clearance = situation.settings().apertureClearanceMm();
      boolean fits =
          pose.size().lengthMm() <= room.lengthMm()
              && pose.size().widthMm() <= room.widthMm()
              && pose.size().heightMm() <= room.heightMm();
      int shortMm = DoorPassage.shortMm(rig, space, box, clearance);
      if (fits && shortMm > 0) {
        least = Math.min(least, shortMm);
      }
    }
    return least == Integer.MAX_VALUE
        ? plain(wanted, space, Cause.BARRED, barredBy)
        : new HomeReason(
            wanted.key(), space.id(), Cause.DOOR, RuleId.DOOR_APERTURE, "", "", least, "mm");
  }

  private HomeReason crowded(Wanted wanted, Space space, RuleId barredBy) {
    List<BoxMm> free = gaps.computeIfAbsent(space.id(), id -> Gaps.of(loading, space));
    HomeReason gap =
        tooLarge(
            wanted,
            space,
            free,
            RuleId.NO_OVERLAP,
            List.of(Cause.GAP_TOO_SHORT, Cause.GAP_TOO_NARROW, Cause.GAP_TOO_LOW));
    return gap.shortBy() > 0.0 ? gap : plain(wanted, space, Cause.BARRED_BY_OTHERS, barredBy);
  }

  /** How much is missing in the best turn and the best box; 0 if some turn fits some box. */
  private static HomeReason tooLarge(
      Wanted wanted, Space space, List<BoxMm> boxes, RuleId rule, List<Cause> causes) {
    int least = Integer.MAX_VALUE;
    int worstAxis = 0;
    for (BoxMm box : boxes) {
      for (Pose pose : wanted.poses()) {
        int[] excess = Gaps.excessMm(pose.size(), box);
        int axis = 0;
        for (int i = 1; i < excess.length; i++) {
          axis = excess[i] > excess[axis] ? i : axis;
        }
        if (excess[axis] < least) {
          least = excess[axis];
          worstAxis = axis;
        }
      }
    }
    if (boxes.isEmpty()) {
      return plain(wanted, space, Cause.BARRED_BY_OTHERS, rule);
    }
    return new HomeReason(
        wanted.key(), space.id(), causes.get(worstAxis), rule, "", "", Math.max(0, least), "mm");
  }

  /** The limit that would be exceeded most if a thing were in a place beside what a plan has. */
  private Optional<LimitReading> byMass(
      PlacedItem place, LoadPlan plan, Map<String, LimitReading> before) {
    List<Placement> placements = new ArrayList<>(plan.placements());
    placements.add(place.placement());
    LimitReading worst = null;
    for (Map.Entry<String, LimitReading> entry : readings(with(placements)).entrySet()) {
      LimitReading reading = entry.getValue();
      double overKg = -reading.margin().marginKg();
      boolean more = reading.margin().loadKg() > Readings.loadKg(before, entry.getKey());
      if (overKg > 0.0 && more && (worst == null || overKg > -worst.margin().marginKg())) {
        worst = reading;
      }
    }
    return Optional.ofNullable(worst);
  }

  private static HomeReason plain(Wanted wanted, Space space, Cause cause, RuleId rule) {
    return new HomeReason(wanted.key(), space.id(), cause, rule, "", "", 0.0, "");
  }
}
