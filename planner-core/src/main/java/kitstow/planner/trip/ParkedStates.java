package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Surface;

/**
 * Writes the parked states: camps with the sleepers on their roofs, and slides pulled out with
 * nobody aboard. The trailer is off the ball in all of them.
 */
final class ParkedStates {
  private static final int[] NOBODY = {};

  private final Loading loading;
  private final Masses masses;
  private final StateIds ids;
  private final Sleepers sleepers;
  private final List<LoadState> states = new ArrayList<>();
  private final Map<String, int[]> riders = new LinkedHashMap<>();
  private final Map<String, Long> ridingAtDeparture = new LinkedHashMap<>();
  private long[] lastCampG = {};
  private long[] lastOutG = {};

  ParkedStates(Loading loading, Masses masses, StateIds ids) {
    this.loading = loading;
    this.masses = masses;
    this.ids = ids;
    this.sleepers = Sleepers.of(loading);
    for (FittedModule fitted : loading.rig().modules().values()) {
      if (fitted.module().slide().isPresent()) {
        riders.put(fitted.module().id(), ridersOf(fitted.module().id()));
        ridingAtDeparture.put(fitted.module().id(), 0L);
      }
    }
  }

  List<LoadState> states() {
    return states;
  }

  /** Fully loaded before the first leg: the camp, each slide out alone, all out as a note. */
  void departure() {
    String title = "Before the first leg";
    camp("departure-camp", title + ", camp", Optional.empty());
    long[] massG = nobodyAboardG();
    lastOutG = massG;
    for (Map.Entry<String, Long> slide : ridingAtDeparture.entrySet()) {
      slide.setValue(ridingG(slide.getKey(), massG));
      slideOut("departure", title, slide.getKey(), massG, Optional.empty());
    }
    if (ridingAtDeparture.size() > 1) {
      add(
          "departure-all-out",
          title + ", all slides out",
          Optional.empty(),
          ridingAtDeparture.keySet(),
          /* noteOnly= */ true,
          massG,
          pulledOut(ridingAtDeparture.keySet()));
    }
  }

  /** The end of a leg: a camp if it took any time, and slides that have become heavier. */
  void legEnd(Leg leg) {
    if (leg.days() > 0.0) {
      camp(leg.id() + "-camp", leg.title() + ", camp", Optional.of(leg.id()));
    }
    heavierSlides(leg.id() + "-end", leg.title() + ", end", leg);
  }

  /**
   * The start of a leg, where something weighs more than when the ute stood last: it was filled up
   * or has become wet. A leg that takes time has a camp then, before anything is used.
   */
  void legStart(Leg leg) {
    long[] massG = nobodyAboardG();
    if (leg.days() > 0.0 && anyHeavier(massG, lastCampG)) {
      camp(leg.id() + "-start-camp", leg.title() + ", start, camp", Optional.of(leg.id()));
    }
    if (anyHeavier(massG, lastOutG)) {
      heavierSlides(leg.id() + "-start", leg.title() + ", start", leg);
    }
  }

  private static boolean anyHeavier(long[] massG, long[] thanG) {
    for (int i = 0; i < massG.length; i++) {
      if (massG[i] > thanG[i]) {
        return true;
      }
    }
    return false;
  }

  private void heavierSlides(String id, String title, Leg leg) {
    long[] massG = nobodyAboardG();
    lastOutG = massG;
    for (Map.Entry<String, Long> slide : ridingAtDeparture.entrySet()) {
      if (ridingG(slide.getKey(), massG) > slide.getValue()) {
        slideOut(id, title, slide.getKey(), massG, Optional.of(leg.id()));
      }
    }
  }

  private void slideOut(
      String id, String title, String slide, long[] massG, Optional<String> legId) {
    add(
        id + "-" + slide + "-out",
        title + ", " + titleOf(slide) + " pulled out",
        legId,
        Set.of(slide),
        /* noteOnly= */ false,
        massG,
        pulledOut(Set.of(slide)));
  }

  private String titleOf(String moduleId) {
    FittedModule fitted = loading.rig().modules().get(moduleId);
    return fitted == null ? moduleId : fitted.module().title();
  }

  private void camp(String id, String title, Optional<String> legId) {
    long[] massG = nobodyAboardG();
    lastCampG = massG.clone();
    ShiftMm[] shift = masses.shifts();
    sleepers.putUp(massG, shift);
    add(id, title, legId, Set.of(), /* noteOnly= */ false, massG, shift);
  }

  private long[] nobodyAboardG() {
    long[] massG = masses.nowG();
    List<Body> bodies = loading.bodies();
    for (int i = 0; i < massG.length; i++) {
      if (bodies.get(i).kind() == BodyKind.PERSON) {
        massG[i] = 0L;
      }
    }
    return massG;
  }

  private int[] ridersOf(String slide) {
    List<Body> bodies = loading.bodies();
    return IntStream.range(0, bodies.size())
        .filter(i -> bodies.get(i).movesWith().contains(slide))
        .toArray();
  }

  private int[] riders(String slide) {
    return riders.getOrDefault(slide, NOBODY);
  }

  /** Mass that rides on a slide, all that it carries included. */
  private long ridingG(String slide, long[] massG) {
    long sum = 0L;
    for (int rider : riders(slide)) {
      sum += massG[rider];
    }
    return sum;
  }

  private ShiftMm[] pulledOut(Set<String> slides) {
    ShiftMm[] shift = masses.shifts();
    for (FittedModule fitted : loading.rig().modules().values()) {
      if (slides.contains(fitted.module().id())) {
        PointMm out = fitted.pullOut();
        for (int rider : riders(fitted.module().id())) {
          ShiftMm was = shift[rider];
          shift[rider] =
              new ShiftMm(was.xMm() + out.xMm(), was.yMm() + out.yMm(), was.zMm() + out.zMm());
        }
      }
    }
    return shift;
  }

  private void add(
      String id,
      String title,
      Optional<String> legId,
      Set<String> slidesOut,
      boolean noteOnly,
      long[] massG,
      ShiftMm[] shift) {
    states.add(
        new LoadState(
            ids.unique(id),
            title,
            LoadKind.PARKED,
            Surface.ROAD,
            /* trailerId= */ Optional.empty(),
            legId,
            slidesOut,
            noteOnly,
            massG,
            Arrays.asList(shift)));
  }
}
