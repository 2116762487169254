package kitstow.tui.view;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Slide;
import kitstow.planner.model.Space;
import kitstow.planner.model.Surface;
import kitstow.planner.report.LimitReading;

/** What every drawer, slide, shelf and rack carries against its rating, where it is tightest. */
final class RatingsText {
  private RatingsText() {}

  static List<String> lines(
      List<LimitReading> tightest,
      Loading loading,
      Subjects subjects,
      StateNames states,
      Page page) {
    Table table =
        new Table()
            .rest("Part")
            .figures("Load kg")
            .figures("Rating")
            .figures("Left")
            .figures("Used")
            .figures("State")
            .rest("Whose rating");
    for (LimitReading reading : tightest) {
      Optional<String> origin = origin(reading, loading);
      if (origin.isPresent()) {
        table.row(
            subjects.limit(reading.rule(), reading.subjectId()),
            Figures.loadKg(reading.margin().loadKg()),
            Figures.near(reading.margin().limitKg(), 1),
            Figures.marginKg(reading.margin().marginKg()),
            Figures.usedPercent(reading.margin().usedRatio()),
            states.number(reading.state()),
            origin.get());
      }
    }
    return table.isEmpty() ? List.of() : table.lines(page);
  }

  /** Where a rating comes from; absent where the limit is not one of a part of the fit-out. */
  private static Optional<String> origin(LimitReading reading, Loading loading) {
    String id = reading.subjectId();
    FittedModule module = loading.rig().modules().get(id);
    if (reading.rule() == RuleId.SLIDE_RATING && module != null) {
      return module.module().slide().map(slide -> slide(slide, reading.state()));
    }
    if (reading.rule() == RuleId.MODULE_RATING && module != null) {
      return module.module().rating().map(ratings -> words(ratings, reading.state()));
    }
    Space space = loading.rig().spaces().get(id);
    if (reading.rule() == RuleId.SPACE_RATING
        && space != null
        && loading.rig().modules().containsKey(space.hostId())) {
      return space.ratings().map(ratings -> words(ratings, reading.state()));
    }
    return Optional.empty();
  }

  private static String slide(Slide slide, LoadState state) {
    return words(slide.ratings(), state)
        + (slide.contentsOnly() ? ", contents only" : ", with its moving part");
  }

  private static String words(Ratings ratings, LoadState state) {
    String when =
        state.kind() == LoadKind.PARKED
            ? "parked"
            : state.surface() == Surface.ROAD ? "on the road" : "off the road";
    if (!ratings.derived() || state.kind() == LoadKind.PARKED) {
      return "maker's, " + when;
    }
    return "derated " + when + " from " + Figures.near(ratings.staticG() / 1000.0, 1);
  }
}
