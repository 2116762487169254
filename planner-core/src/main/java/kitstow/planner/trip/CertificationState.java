package kitstow.planner.trip;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Body;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Surface;

/** The fit-out as built: full tanks, every seat at the allowance of the regime, no trip gear. */
final class CertificationState {
  private CertificationState() {}

  static LoadState of(Loading loading, StateIds ids) {
    EmptyUte empty = EmptyUte.of(loading.scenario());
    long seatG = loading.scenario().settings().seatAllowanceG();
    List<Body> bodies = loading.bodies();
    long[] massG = new long[bodies.size()];
    for (int i = 0; i < massG.length; i++) {
      Body body = bodies.get(i);
      massG[i] =
          switch (body.kind()) {
            case UTE -> body.key().equals(Loading.UTE_FRONT) ? empty.frontG() : empty.rearG();
            case PART, ACCESSORY, TRAY, CANOPY, MODULE, TANK, LIQUID -> body.nominalG();
            case PERSON -> seatG;
            case ITEM, BALL -> 0L;
          };
    }
    return new LoadState(
        ids.unique("certification"),
        "Certification: as built, full tanks, every seat taken",
        LoadKind.CERTIFICATION,
        Surface.ROAD,
        /* trailerId= */ Optional.empty(),
        /* legId= */ Optional.empty(),
        Set.of(),
        /* noteOnly= */ false,
        massG,
        Collections.nCopies(massG.length, ShiftMm.NONE));
  }
}
