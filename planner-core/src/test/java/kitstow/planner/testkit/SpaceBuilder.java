package kitstow.planner.testkit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Environment;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Zone;

/** A space of a host: at first in the canopy, filled from above, without doors, ratings or bars. */
public final class SpaceBuilder {
  private final String id;
  private final LocalBoxMm box;
  private final List<RoofBars.Bar> bars = new ArrayList<>();
  private Optional<Ratings> ratings = Optional.empty();
  private AccessAxis access = AccessAxis.ABOVE;
  private List<String> doorIds = List.of();
  private boolean moves;
  private Zone zone = Zone.CANOPY;
  private Set<Environment> environment = EnumSet.noneOf(Environment.class);
  private boolean ownAir;
  private boolean platformFloor;
  private int projectionEndsMm;
  private int projectionSideMm;

  private SpaceBuilder(String id, LocalBoxMm box) {
    this.id = id;
    this.box = box;
  }

  /** Starts a space with its lowest corner at a point of the host's frame. */
  public static SpaceBuilder aSpace(String id, int aMm, int bMm, int cMm, SizeMm size) {
    return new SpaceBuilder(id, new LocalBoxMm(aMm, bMm, cMm, size));
  }

  /** What it may hold. */
  public SpaceBuilder ratings(Ratings value) {
    ratings = Optional.of(value);
    return this;
  }

  /** From where, and through which doors, it is filled. */
  public SpaceBuilder access(AccessAxis value, String... doors) {
    access = value;
    doorIds = List.of(doors);
    return this;
  }

  /** Rides on the moving part of its module. */
  public SpaceBuilder moves() {
    moves = true;
    return this;
  }

  /** Part of the vehicle. */
  public SpaceBuilder zone(Zone value) {
    zone = value;
    return this;
  }

  /** Air and walls. */
  public SpaceBuilder environment(Environment... values) {
    environment = Set.of(values);
    return this;
  }

  /** Has sealed air of its own. */
  public SpaceBuilder ownAir() {
    ownAir = true;
    return this;
  }

  /** A bar beneath it. */
  public SpaceBuilder bar(String barId, int fromFrontMm, Ratings rating) {
    bars.add(new RoofBars.Bar(barId, fromFrontMm, rating));
    return this;
  }

  /** A floor lies on the bars. */
  public SpaceBuilder platformFloor() {
    platformFloor = true;
    return this;
  }

  /** How far items may reach beyond its ends and its sides. */
  public SpaceBuilder projection(int endsMm, int sideMm) {
    projectionEndsMm = endsMm;
    projectionSideMm = sideMm;
    return this;
  }

  /** The space. */
  public SpaceSpec build() {
    Optional<RoofBars> roofBars =
        bars.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new RoofBars(
                    bars, platformFloor, projectionEndsMm, projectionEndsMm, projectionSideMm));
    return new SpaceSpec(
        id, id, box, ratings, access, doorIds, moves, zone, environment, ownAir, roofBars);
  }
}
