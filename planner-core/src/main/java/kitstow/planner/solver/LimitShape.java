package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.statics.LoadLine;

/**
 * What counts in which limit on one rig, read off the rules themselves: a weightless probe stands
 * in every space, and the lines that the rules draw up show which limits it loads. So no formula of
 * a limit is written twice. Axles are told apart, since there the place in the space matters; bars
 * are left to {@link BarSums}.
 */
final class LimitShape {
  /** How gear loads a line. */
  enum Lever {
    /** By its mass, wherever in its space it stands. */
    SPACE,
    /** By its lever on the rear axle. */
    REAR,
    /** By its lever on the front axle. */
    FRONT
  }

  /** Keys of fixed bodies and the weight with which they count. */
  record FixedTerm(String bodyKey, long numerator) {}

  /** A space whose contents count, by index, and the weight with which they do. */
  record Member(int space, long numerator) {}

  /** One limit in one kind of state; limits of one rule and subject share an index. */
  record Line(
      int index,
      RuleId rule,
      String subjectId,
      Lever lever,
      long limitScaled,
      long constantScaled,
      List<FixedTerm> fixed,
      List<Member> members,
      long denominator) {}

  private final Loading probed;
  private final Map<String, String> spaceOfProbe = new HashMap<>();
  private final Map<String, Integer> spaceIndex = new HashMap<>();
  private final Map<String, Integer> lineIndex = new LinkedHashMap<>();
  private final Map<String, LimitGroup> bySignature = new HashMap<>();

  LimitShape(RigView view, Scenario scenario) {
    List<Item> probes = new ArrayList<>();
    List<Placement> placements = new ArrayList<>();
    int i = 0;
    for (Space space : view.rig().spaces().values()) {
      String id = "probe-" + i++;
      probes.add(probe(id));
      placements.add(new Placement(id, 1, space.id(), 0, Turn.LWH, new SpacePointMm(0, 0, 0)));
      spaceOfProbe.put(id, space.id());
      spaceIndex.put(space.id(), spaceIndex.size());
    }
    this.probed =
        Loading.of(
            scenario.withItems(probes),
            new LoadPlan(scenario.id(), view.moduleBays(), placements, LoadPlan.Origin.HAND));
  }

  private static Item probe(String id) {
    return new Item(
        id,
        id,
        id,
        "probe",
        List.of(new SizeMm(1, 1, 1)),
        KnownMass.NONE,
        Optional.empty(),
        Set.of(Turn.LWH),
        0L,
        List.of(),
        Set.of(),
        Reach.RARE,
        Optional.empty(),
        Need.NICE,
        0,
        1,
        Optional.empty(),
        Optional.empty());
  }

  /** The limits that apply in states like this one. */
  LimitGroup groupOf(LoadState state) {
    String signature =
        state.kind() + " " + state.surface() + " " + state.trailerId() + " " + state.slidesOut();
    LimitGroup group = bySignature.get(signature);
    if (group == null) {
      group = new LimitGroup(bySignature.size(), read(state), spaces());
      bySignature.put(signature, group);
    }
    return group;
  }

  /** Rule and subject of every limit read so far, by index. */
  List<String> keys() {
    return new ArrayList<>(lineIndex.keySet());
  }

  /** Number of spaces. */
  int spaces() {
    return spaceIndex.size();
  }

  /** Index of a space. */
  int indexOf(String spaceId) {
    return spaceIndex.getOrDefault(spaceId, -1);
  }

  private List<Line> read(LoadState like) {
    int bodies = probed.bodies().size();
    LoadState empty =
        new LoadState(
            like.id(),
            like.title(),
            like.kind(),
            like.surface(),
            like.trailerId(),
            like.legId(),
            like.slidesOut(),
            like.noteOnly(),
            new long[bodies],
            Collections.nCopies(bodies, ShiftMm.NONE));
    List<Line> lines = new ArrayList<>();
    for (LimitRule rule : RuleBook.LIMITS) {
      if (rule.card().id() == RuleId.BAR_LIMIT) {
        continue;
      }
      for (LoadLine line : rule.lines(probed, empty)) {
        lines.add(read(line, empty));
      }
    }
    return lines;
  }

  private Line read(LoadLine line, LoadState empty) {
    Lever lever =
        switch (line.rule()) {
          case REAR_AXLE_LIMIT, REAR_TYRE_LIMIT -> Lever.REAR;
          case FRONT_AXLE_LIMIT, FRONT_TYRE_LIMIT -> Lever.FRONT;
          default -> Lever.SPACE;
        };
    List<FixedTerm> fixed = new ArrayList<>();
    List<Member> members = new ArrayList<>();
    for (LoadLine.Term term : line.terms()) {
      Body body = probed.bodies().get(term.body());
      String space = spaceOfProbe.get(body.key());
      if (body.kind() != BodyKind.ITEM) {
        fixed.add(new FixedTerm(body.key(), term.numerator()));
      } else if (lever == Lever.SPACE && space != null) {
        members.add(new Member(indexOf(space), term.numerator()));
      }
    }
    String key = line.rule() + " " + line.subjectId();
    return new Line(
        lineIndex.computeIfAbsent(key, k -> lineIndex.size()),
        line.rule(),
        line.subjectId(),
        lever,
        line.limitG() * line.denominator(),
        line.scaledLoad(empty),
        fixed,
        members,
        line.denominator());
  }
}
