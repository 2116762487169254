package kitstow.planner.json;

import java.util.List;
import kitstow.planner.model.Body;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.StateFigures;
import kitstow.planner.rules.StateCheck;

/** Writes the figures of one state. */
final class StateWriter {
  private final Loading loading;
  private final Output out;

  StateWriter(Loading loading, Output out) {
    this.loading = loading;
    this.out = out;
  }

  void write(StateFigures figures) {
    LoadState state = figures.state();
    out.text("id", state.id());
    out.text("title", state.title());
    out.word("kind", state.kind());
    out.word("surface", state.surface());
    masses(state);
    shifts(state);
    out.milli("totalKg", figures.axles().totalG());
    if (figures.gcmKg().isPresent()) {
      out.up("gcmKg", figures.gcmKg().getAsDouble(), 3);
    } else {
      out.nothing("gcmKg");
    }
    out.near("frontAxleKg", figures.axles().frontKg(), 3);
    out.near("rearAxleKg", figures.axles().rearKg(), 3);
    out.near("overhangMomentNm", figures.moment().newtonMetres(), 2);
    out.object(
        "centreOfMassMm",
        centre -> {
          centre.near("x", figures.centre().xMm(), 1);
          centre.near("y", figures.centre().yMm(), 1);
          centre.near("z", figures.centre().zMm(), 1);
        });
    out.listAlways("limits", figures.limits(), this::limit);
    out.listAlways("checks", figures.checks(), this::check);
  }

  private void masses(LoadState state) {
    List<Body> bodies = loading.bodies();
    out.object(
        "massKg",
        masses -> {
          for (int i = 0; i < state.size(); i++) {
            masses.milli(bodies.get(i).key(), state.massG(i));
          }
        });
  }

  private void shifts(LoadState state) {
    List<Body> bodies = loading.bodies();
    out.object(
        "shiftMm",
        shifts -> {
          for (int i = 0; i < state.size(); i++) {
            ShiftMm shift = state.shift(i);
            if (shift.xMm() != 0 || shift.yMm() != 0 || shift.zMm() != 0.0) {
              shifts.object(bodies.get(i).key(), one -> shift(shift, one));
            }
          }
        });
  }

  private static void shift(ShiftMm shift, Output out) {
    out.whole("x", shift.xMm());
    out.whole("y", shift.yMm());
    out.near("z", shift.zMm(), 3);
  }

  private void limit(LimitReading reading) {
    out.text("rule", reading.rule().name());
    out.text("subjectId", reading.subjectId());
    out.up("loadKg", reading.margin().loadKg(), 3);
    out.near("limitKg", reading.margin().limitKg(), 3);
    out.down("marginKg", reading.margin().marginKg(), 3);
    out.up("marginRssKg", reading.margin().rssKg(), 3);
    out.up("marginWorstKg", reading.margin().worstKg(), 3);
  }

  private void check(StateCheck check) {
    out.text("rule", check.rule().name());
    out.text("subjectId", check.subjectId());
    out.text("unit", check.unit());
    out.near("value", check.value(), 6);
    out.near("limit", check.limit(), 6);
    out.near("margin", check.margin(), 6);
  }
}
