package kitstow.planner.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Ute;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.HomeReason;
import kitstow.planner.report.Lever;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.Mend;
import kitstow.planner.report.Searched;
import kitstow.planner.report.SpaceRoom;
import kitstow.planner.report.Verdict;
import kitstow.planner.report.WeighFirst;
import kitstow.planner.statics.Bound;

/**
 * Writes a report as JSON. From its bodies, masses and shifts alone the totals, axle loads, centre
 * of mass and overhang moment of every state follow. Masses resolve 1 g; loads are rounded up and
 * margins down. The same report is always the same text, but for what is under {@code timing}.
 */
public final class ReportWriter {
  /** Version of the format. */
  public static final int SCHEMA_VERSION = 1;

  private final CheckReport report;
  private final Loading loading;
  private final Optional<Searched> searched;
  private final Optional<List<Lever>> levers;
  private final Map<String, Mend> mends = new LinkedHashMap<>();
  private final Output out;

  private ReportWriter(
      CheckReport report,
      Optional<Searched> searched,
      Optional<List<Lever>> levers,
      List<Mend> mends,
      Output out) {
    this.report = report;
    this.searched = searched;
    this.levers = levers;
    mends.forEach(mend -> this.mends.put(mend.findingKey(), mend));
    this.loading = report.situation().loading();
    this.out = out;
  }

  /** The report as a JSON text that ends in a line feed. */
  public static String write(CheckReport report) {
    return write(report, List.of());
  }

  /** The report on a plan that was given, with mends for its findings. */
  public static String write(CheckReport report, List<Mend> mends) {
    return Output.text(
        out -> new ReportWriter(report, Optional.empty(), Optional.empty(), mends, out).fields());
  }

  /** The same with levers on the tightest limit. */
  public static String write(CheckReport report, List<Mend> mends, List<Lever> levers) {
    return Output.text(
        out ->
            new ReportWriter(report, Optional.empty(), Optional.of(levers), mends, out).fields());
  }

  /** The report on a plan that was searched for, with mends for its findings. */
  public static String write(CheckReport report, Searched searched, List<Mend> mends) {
    return Output.text(
        out ->
            new ReportWriter(
                    report, Optional.of(searched), Optional.of(searched.levers()), mends, out)
                .fields());
  }

  private void fields() {
    out.whole("schemaVersion", SCHEMA_VERSION);
    out.object("verdict", fields -> verdict(report.verdict()));
    out.whole("brokenRules", report.brokenRules());
    out.object("frame", fields -> frame());
    OutsideWriter outside = new OutsideWriter(loading, out);
    out.object("outside", fields -> outside.alone());
    out.listAlways("outsideTowing", loading.scenario().trailers(), outside::with);
    BodyWriter.bodies(report.situation(), out);
    StateWriter states = new StateWriter(loading, out);
    out.listAlways("states", report.states(), states::write);
    out.listAlways("placements", loading.placed().values(), this::placement);
    out.listAlways("stayHome", home(), this::home);
    SupplyWriter supplies = new SupplyWriter(out);
    out.listAlways("supplies", report.situation().timeline().stocks(), supplies::stock);
    out.listAlways("runsOut", report.situation().timeline().shortfalls(), supplies::shortfall);
    Optional<WeighFirst> first =
        report.verdict().tightest().flatMap(reading -> WeighFirst.of(loading, reading));
    if (first.isPresent()) {
      out.object("weighFirst", fields -> weighFirst(first.get()));
    } else {
      out.nothing("weighFirst");
    }
    if (searched.isPresent()) {
      out.listAlways("roomLeft", searched.get().rooms(), this::room);
    } else {
      out.nothing("roomLeft");
    }
    if (levers.isPresent()) {
      out.listAlways("levers", levers.get(), this::lever);
    } else {
      out.nothing("levers");
    }
    out.listAlways("findings", report.findings(), this::finding);
    Optional<Bound> bound = searched.flatMap(Searched::bound);
    if (bound.isPresent()) {
      out.object("bound", fields -> bound(bound.get()));
    } else {
      out.nothing("bound");
    }
    if (searched.isPresent()) {
      out.object("solve", fields -> solve(searched.get()));
      searched
          .get()
          .tookSeconds()
          .ifPresent(took -> out.object("timing", fields -> out.near("searchSeconds", took, 3)));
    } else {
      out.nothing("solve");
    }
  }

  private void bound(Bound bound) {
    out.down("overhangMomentFloorNm", bound.floorNm(), 1);
    out.up("gapPercentOfWhole", bound.gapPercentOfWhole(), 1);
    out.up("gapPercentOfChangeable", bound.gapPercentOfChangeable(), 1);
    out.up("gapMm", bound.gapMm(), 0);
  }

  private void solve(Searched search) {
    out.whole("seed", search.seed());
    out.wholeOrNull("steps", search.steps());
    if (search.secondsLimit().isPresent()) {
      out.near("secondsLimit", search.secondsLimit().getAsDouble(), 3);
    } else {
      out.nothing("secondsLimit");
    }
    out.wholeOrNull("scoreCalculations", search.scoreCalculations());
  }

  private void verdict(Verdict verdict) {
    String kind =
        switch (verdict.kind()) {
          case WITHIN -> "within";
          case ON_PAPER_ONLY -> "onPaperOnly";
          case OVER -> "over";
        };
    Optional<LimitReading> tightest = verdict.tightest();
    out.text("kind", kind);
    out.textOrNull("rule", tightest.map(reading -> reading.rule().name()));
    out.textOrNull("stateId", tightest.map(reading -> reading.state().id()));
    if (tightest.isPresent()) {
      out.down("marginKg", tightest.get().margin().marginKg(), 3);
    } else {
      out.nothing("marginKg");
    }
  }

  private void frame() {
    Ute ute = loading.scenario().ute();
    out.whole("rearAxleXMm", ute.wheelbaseMm());
    out.whole("wheelbaseMm", ute.wheelbaseMm());
    if (ute.ball().isPresent()) {
      out.whole("ballXMm", ute.ball().get().xMm());
    } else {
      out.nothing("ballXMm");
    }
  }

  private void placement(PlacedItem placed) {
    Item item = placed.item();
    out.text("itemId", item.id());
    BodyWriter.unit(unitOf(item, placed.unit()), out);
    out.text("spaceId", placed.space().id());
    out.milli("massKg", item.mass().massG());
    BodyWriter.corners(placed.box(), out);
  }

  private record Home(Item item, int unit) {}

  private List<Home> home() {
    List<Home> home = new ArrayList<>();
    for (Item item : loading.scenario().items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (loading.home().contains(item.keyOf(unit))) {
          home.add(new Home(item, unit));
        }
      }
    }
    return home;
  }

  private void home(Home home) {
    out.text("itemId", home.item().id());
    BodyWriter.unit(unitOf(home.item(), home.unit()), out);
    // A plan typed by hand does not say why; reasons come with plans that were searched for.
    List<HomeReason> reasons = new ArrayList<>();
    for (HomeReason reason : searched.map(Searched::reasons).orElse(List.of())) {
      boolean against = reason.cause() != HomeReason.Cause.NOTHING;
      if (against && reason.key().equals(home.item().keyOf(home.unit()))) {
        reasons.add(reason);
      }
    }
    out.listAlways("reasons", reasons, this::reason);
  }

  private void reason(HomeReason reason) {
    out.text("spaceId", reason.spaceId());
    out.text("rule", reason.rule().name());
    out.up("shortBy", reason.shortBy(), 3);
    out.text("unit", reason.unit());
  }

  private void weighFirst(WeighFirst first) {
    out.textsAlways("bodies", first.bodyKeys());
    out.near("massKg", first.kg(), 3);
    out.up("bandKg", first.bandKg(), 3);
    out.up("thenBandKg", first.thenKg(), 3);
  }

  private void room(SpaceRoom room) {
    out.text("spaceId", room.space().id());
    if (room.largestGap().isPresent()) {
      out.object("largestGap", gap -> BodyWriter.corners(room.largestGap().get(), gap));
    } else {
      out.nothing("largestGap");
    }
    out.milli("freeL", room.freeMl());
    if (room.left().isPresent()) {
      SpaceRoom.Left left = room.left().get();
      out.down("leftKg", left.kg(), 3);
      out.text("rule", left.rule().name());
      out.text("subjectId", left.subjectId());
      out.text("stateId", left.stateId());
    } else {
      out.nothing("leftKg");
      out.nothing("rule");
      out.nothing("subjectId");
      out.nothing("stateId");
    }
    out.object(
        "tenKgMore",
        more -> {
          more.near("momentNm", room.tenMore().momentNm(), 1);
          more.near("tightestKg", room.tenMore().tightestKg(), 3);
        });
  }

  private static int unitOf(Item item, int unit) {
    return item.quantity() == 1 ? 0 : unit;
  }

  private void finding(Finding finding) {
    out.text("rule", finding.rule().name());
    out.word("severity", finding.severity());
    out.text("stateId", finding.stateId());
    out.textsAlways("subjectIds", finding.subjectIds());
    out.near("value", finding.value(), 6);
    out.near("limit", finding.limit(), 6);
    out.text("unit", finding.unit());
    out.text("source", finding.source());
    out.word("sourceStatus", finding.status());
    out.text("message", finding.message());
    out.text("mend", finding.mend());
    out.textOrNull(
        "override",
        finding.override().isEmpty() ? Optional.empty() : Optional.of(finding.override()));
    Optional<Mend> mend =
        finding.severity() == Finding.Severity.BROKEN
            ? Optional.ofNullable(mends.get(finding.key()))
            : Optional.empty();
    if (mend.isPresent()) {
      out.object("change", change -> change(mend.get(), finding));
    } else {
      out.nothing("change");
    }
  }

  private void change(Mend mend, Finding finding) {
    out.word("outcome", mend.outcome());
    out.up("leaves", mend.after(), 6);
    out.text("unit", finding.unit());
    out.listAlways("steps", mend.steps(), this::step);
  }

  private void lever(Lever lever) {
    if (lever.change() instanceof Lever.Repacked repacked) {
      out.object("step", fields -> step(repacked.step()));
    } else {
      out.nothing("step");
    }
    if (lever.change() instanceof Lever.Drained drained) {
      out.object(
          "drain",
          fields -> {
            out.text("tankId", drained.tankId());
            out.milli("litres", drained.ml());
            out.near("kg", drained.kg(), 3);
          });
    } else {
      out.nothing("drain");
    }
    out.down("gainKg", lever.gainKg(), 3);
    out.down("marginKg", lever.marginKg(), 3);
    out.near("momentChangeNm", lever.momentChangeNm(), 1);
  }

  private void step(Mend.Step step) {
    out.word("what", step.what());
    out.text("key", step.key());
    out.text("from", step.from());
    out.text("to", step.to());
    out.near("kg", step.kg(), 3);
    boolean swap = step.what() == Mend.What.SWAP;
    out.textOrNull("withKey", swap ? Optional.of(step.withKey()) : Optional.empty());
    if (swap) {
      out.near("withKg", step.withKg(), 3);
    } else {
      out.nothing("withKg");
    }
  }
}
