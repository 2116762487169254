package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Contacts;
import kitstow.planner.packing.WayOut;
import kitstow.planner.rules.Situation;

/**
 * Everything aboard in the order in which it goes in, by the place where one stands to put it in.
 *
 * @param stops places round the ute, the kerb side first
 */
public record PackList(List<Stop> stops) {
  /** Copies its collections. */
  public PackList {
    stops = List.copyOf(stops);
  }

  /**
   * A place where one stands.
   *
   * @param entrance door or side
   * @param spaces spaces filled from here, the lowest and deepest first
   */
  public record Stop(Entrance entrance, List<Filled> spaces) {
    /** Copies its collections. */
    public Stop {
      spaces = List.copyOf(spaces);
    }
  }

  /**
   * A space with what goes into it.
   *
   * @param space space
   * @param steps its things, in the order in which they go in
   */
  public record Filled(Space space, List<Step> steps) {
    /** Copies its collections. */
    public Filled {
      steps = List.copyOf(steps);
    }
  }

  /**
   * One thing to put in.
   *
   * @param item thing and place
   * @param onFloor whether any of it stands on the floor of the space
   * @param onBars whether it lies on bars
   * @param standsOn things it stands on
   * @param toMove things to move before it comes out again
   * @param squeezed whether it only gets to its place past others
   */
  public record Step(
      PlacedItem item,
      boolean onFloor,
      boolean onBars,
      List<PlacedItem> standsOn,
      List<PlacedItem> toMove,
      boolean squeezed) {
    /** Copies its collections. */
    public Step {
      standsOn = List.copyOf(standsOn);
      toMove = List.copyOf(toMove);
    }
  }

  /** The list of a loading; spaces without gear are left out. */
  public static PackList of(Situation situation) {
    Loading loading = situation.loading();
    Map<Entrance, List<Filled>> byEntrance = new LinkedHashMap<>();
    for (Space space : loading.rig().spaces().values()) {
      if (!loading.in(space.id()).isEmpty()) {
        byEntrance
            .computeIfAbsent(Entrance.of(loading.rig(), space), entrance -> new ArrayList<>())
            .add(new Filled(space, steps(situation, space)));
      }
    }
    List<Stop> stops = new ArrayList<>();
    byEntrance.forEach(
        (entrance, spaces) -> {
          spaces.sort(
              Comparator.comparingInt((Filled filled) -> filled.space().box().minXMm())
                  .thenComparingInt(filled -> filled.space().box().minZMm()));
          stops.add(new Stop(entrance, spaces));
        });
    stops.sort(
        Comparator.comparingInt(stop -> stop.entrance().rank(situation.settings().kerbSide())));
    return new PackList(stops);
  }

  private static List<Step> steps(Situation situation, Space space) {
    List<PlacedItem> inSpace = situation.loading().in(space.id());
    LoadingOrder.Ordered ordered = LoadingOrder.of(space, inSpace);
    List<Step> steps = new ArrayList<>();
    for (PlacedItem item : ordered.items()) {
      Optional<Contacts> contacts = situation.contactsOf(item);
      List<PlacedItem> below = new ArrayList<>();
      for (Contacts.Contact contact : contacts.map(Contacts::items).orElse(List.of())) {
        below.add(contact.below());
      }
      steps.add(
          new Step(
              item,
              contacts.map(all -> all.floorMm2() > 0L).orElse(false),
              !contacts.isPresent(),
              below,
              WayOut.toMoveFirst(item, inSpace),
              ordered.squeezed().contains(item.key())));
    }
    return steps;
  }
}
