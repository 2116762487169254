package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;

/** Writes the moving states of a trip in their order, and the segments between them. */
final class MovingStates {
  private final Masses masses;
  private final StateIds ids;
  private final List<LoadState> states = new ArrayList<>();
  private final List<Segment> segments = new ArrayList<>();

  MovingStates(Masses masses, StateIds ids) {
    this.masses = masses;
    this.ids = ids;
  }

  List<LoadState> states() {
    return states;
  }

  List<Segment> segments() {
    return segments;
  }

  /** The states of one leg, from its start; {@code at} runs from 0 to 1 along it. */
  final class OnLeg {
    private final Leg leg;
    private final Moment begun;
    private double lastAt;
    private int number;

    OnLeg(Leg leg, Moment begun) {
      this.leg = leg;
      this.begun = begun;
      add("-start", leg.title() + ", start");
    }

    void end() {
      write(1.0, "-end", leg.title() + ", end");
    }

    /** A breakpoint inside the leg. */
    void breakpoint(double at, String what, String text) {
      write(at, numbered() + what, titleAt(at) + text);
    }

    /** Empties a can into a tank, with a state on either side. */
    void decant(double at, Decanting.Transfer transfer) {
      String what = numbered() + transfer.can().key() + "-decanted";
      String into = " emptied into " + transfer.tank().title();
      if (at > lastAt) {
        write(
            at, what + "-before", titleAt(at) + "before " + transfer.can().title() + " is" + into);
      }
      transfer.carryOut();
      add(what + "-after", titleAt(at) + transfer.can().title() + into);
    }

    Moment moment(double at) {
      return begun.plus(at * leg.distanceKm(), at * leg.days());
    }

    private String numbered() {
      number++;
      return (number < 10 ? "-0" : "-") + number + "-";
    }

    private String titleAt(double at) {
      if (at <= 0.0) {
        return leg.title() + ", start: ";
      }
      if (leg.distanceKm() > 0.0) {
        return leg.title() + ", after " + Math.round(at * leg.distanceKm()) + " km: ";
      }
      return String.format(Locale.ROOT, "%s, after %.1f days: ", leg.title(), at * leg.days());
    }

    private void write(double at, String what, String title) {
      add(what, title);
      if (at > lastAt) {
        int to = states.size() - 1;
        segments.add(
            new Segment(
                to - 1, to, states.get(to - 1), states.get(to), moment(lastAt), moment(at)));
        lastAt = at;
      }
    }

    private void add(String what, String title) {
      states.add(
          new LoadState(
              ids.unique(leg.id() + what),
              title,
              LoadKind.MOVING,
              leg.surface(),
              leg.trailerId(),
              Optional.of(leg.id()),
              Set.of(),
              /* noteOnly= */ false,
              masses.drivingG(leg),
              Arrays.asList(masses.shifts())));
    }
  }
}
