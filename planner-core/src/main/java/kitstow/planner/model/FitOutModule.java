package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitstow.planner.geometry.SizeMm;

/**
 * A fit-out module in its own frame: a = depth from back to face, b = across the opening, c = up.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param entryId catalogue entry; modules of one entry share their error
 * @param source where its figures come from
 * @param size outside depth x across x height
 * @param fixed mass that stays in the bay
 * @param moving mass that comes out with the slide
 * @param slide how it pulls out, if it does
 * @param rating what a module that does not pull out may carry
 * @param spaces inside spaces
 * @param bays bays it offers (a drawer deck)
 * @param tanks tanks in it
 */
public record FitOutModule(
    String id,
    String title,
    String entryId,
    String source,
    SizeMm size,
    KnownMass fixed,
    KnownMass moving,
    Optional<Slide> slide,
    Optional<Ratings> rating,
    List<SpaceSpec> spaces,
    List<BaySpec> bays,
    List<Tank> tanks) {
  /** Copies its collections. */
  public FitOutModule {
    spaces = List.copyOf(spaces);
    bays = List.copyOf(bays);
    tanks = List.copyOf(tanks);
  }

  /** The same module with other tanks. */
  public FitOutModule withTanks(List<Tank> others) {
    return with(id, title, others);
  }

  /** The same module with one of its tanks, if it has it, starting with so much. */
  public FitOutModule startingWith(String tankId, long ml) {
    return withTanks(
        tanks.stream()
            .map(tank -> tank.id().equals(tankId) ? tank.startingWith(ml) : tank)
            .collect(Collectors.toList()));
  }

  /** The same module under another id and title. */
  public FitOutModule renamed(String otherId, String otherTitle) {
    return with(otherId, otherTitle, tanks);
  }

  private FitOutModule with(String otherId, String otherTitle, List<Tank> others) {
    return new FitOutModule(
        otherId,
        otherTitle,
        entryId,
        source,
        size,
        fixed,
        moving,
        slide,
        rating,
        spaces,
        bays,
        others);
  }
}
