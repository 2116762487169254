package kitstow.planner.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.PartState;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Ute;
import kitstow.planner.problem.Code;

/** Reads which ute a scenario drives, its own weighing and the state of its parts. */
final class UteChoiceReader {
  private record State(Fields fields, PartState state, Optional<String> stowedAs) {}

  private final Fields fields;
  private final Figures figures;
  private final Faults faults;
  private final Known known;
  private final Optional<Ute> entry;
  private final Map<String, State> states = new HashMap<>();
  private final boolean seatsKnown;
  private final boolean tanksKnown;
  private final boolean partsKnown;
  private final Optional<EmptyAxleLoads> weighed;
  private final HostRegions regions;

  UteChoiceReader(Fields scenario, Figures figures, Faults faults, Shelves shelves, Known known) {
    this.fields = scenario.object("ute", "name the ute, e.g. {\"entry\": \"my-ute\"}");
    this.figures = figures;
    this.faults = faults;
    this.known = known;
    this.entry = shelves.utes().named(fields);
    entry.ifPresent(this::makeKnown);
    this.seatsKnown = shelves.utes().idsKnown(fields, "seats");
    this.tanksKnown = shelves.utes().idsKnown(fields, "fuelTanks");
    this.partsKnown = shelves.utes().idsKnown(fields, "parts");
    noteIncomplete(shelves.utes().idsKnown(fields, "bays", "spaces"));
    this.weighed = fields.objectIfGiven("weighed").map(this::weighed);
    readParts();
    this.regions =
        HostRegions.read(
            fields,
            figures,
            RegionCheck.NONE,
            known,
            entry.map(ute -> new HostRegions(ute.bays(), ute.spaces())).orElse(HostRegions.NONE));
    fields.doneBesideEntry("utes");
  }

  private void makeKnown(Ute ute) {
    Place place = fields.place("entry");
    Set<String> claimed = new HashSet<>();
    for (RemovablePart part : ute.parts()) {
      if (claimed.add(part.id())) {
        known.keys.claimOf("part", part.id(), place);
      }
    }
    for (Tank tank : ute.fuelTanks()) {
      if (claimed.add(tank.id())) {
        known.keys.claimOf("tank", tank.id(), place);
        known.keys.claimLiquid(tank.id(), place);
      }
      known.tanks.add(tank.id());
      known.tankById.put(tank.id(), tank);
    }
    for (Seat seat : ute.seats()) {
      known.seats.add(seat.id());
    }
  }

  private void noteIncomplete(boolean regionsKnown) {
    if (!regionsKnown) {
      known.regionsIncomplete();
    }
    if (!tanksKnown) {
      known.tanks.incomplete();
    }
    if (!seatsKnown) {
      known.seats.incomplete();
    }
  }

  private EmptyAxleLoads weighed(Fields weighing) {
    Names tankIds = new Names(faults, "tanks of the ute");
    Names seatIds = new Names(faults, "seats of the ute");
    if (!tanksKnown) {
      tankIds.incomplete();
    }
    if (!seatsKnown) {
      seatIds.incomplete();
    }
    List<Tank> tanks = entry.map(Ute::fuelTanks).orElse(List.of());
    tanks.forEach(tank -> tankIds.add(tank.id()));
    entry.ifPresent(ute -> ute.seats().forEach(seat -> seatIds.add(seat.id())));
    return new EmptyReader(figures, faults).read(weighing, tanks, tankIds, seatIds);
  }

  private void readParts() {
    Names partIds = new Names(faults, "parts of the ute");
    Names listed = new Names(faults, "parts listed here");
    if (!partsKnown) {
      partIds.incomplete();
    }
    entry.ifPresent(ute -> ute.parts().forEach(part -> partIds.add(part.id())));
    for (Fields part : fields.objectsIfGiven("parts")) {
      String id = part.name("id", "name a part of the ute");
      if (part.good("id") && partIds.check(id, part.place("id"))) {
        listed.claim(id, part.place("id"));
      }
      PartState state = part.word("state", Words.PART_STATE);
      Optional<String> stowedAs = part.textIfGiven("stowedAs");
      part.done();
      checkStowed(part, state);
      states.put(id, new State(part, state, stowedAs));
    }
  }

  private static void checkStowed(Fields part, PartState state) {
    boolean stowed = state == PartState.STOWED;
    if (!part.good("state") || stowed == part.has("stowedAs")) {
      return;
    }
    part.error(
        Code.STOWED_PART,
        "stowedAs",
        stowed
            ? "is missing for a part that is stowed"
            : "is given for a part that is " + Words.of(state),
        stowed
            ? "name the item of gear that stands for the part"
            : "write \"state\": \"stowed\", or take stowedAs out");
  }

  /** Bays and spaces added to the ute. */
  HostRegions regions() {
    return regions;
  }

  /** The ute that is named, if it is known. */
  Optional<Ute> entry() {
    return entry;
  }

  /** Holds what was fitted and what parts are stowed as against the rest of the scenario. */
  void checkReferences(List<Accessory> accessories, boolean trayNamed, boolean canopyNamed) {
    for (State state : states.values()) {
      if (state.stowedAs().isPresent() && state.fields().good("stowedAs")) {
        known.items.check(state.stowedAs().get(), state.fields().place("stowedAs"));
      }
    }
    if (!entry.isPresent() || !partsKnown) {
      return;
    }
    Names fitted = new Names(faults, "parts of the ute and things fitted to it here");
    entry.get().parts().forEach(part -> fitted.add(part.id()));
    accessories.forEach(accessory -> fitted.add(accessory.id()));
    if (trayNamed) {
      fitted.add(Rig.TRAY);
    }
    if (canopyNamed) {
      fitted.add(Rig.CANOPY);
    }
    if (weighed.isPresent()) {
      for (Reread weighing : fields.again().object("weighed")) {
        weighing.texts("fitted").forEach(name -> fitted.check(name.text(), name.place()));
      }
      return;
    }
    for (String name : sorted(entry.get().empty().fitted())) {
      if (!fitted.has(name)) {
        fitted.noteUnknown(
            name,
            fields.place("entry"),
            "names an entry whose empty axle loads were taken with " + Shown.quoted(name));
      }
    }
  }

  private static List<String> sorted(Set<String> names) {
    List<String> sorted = new ArrayList<>(names);
    sorted.sort(null);
    return sorted;
  }

  /** The ute with its own weighing, the states of its parts and what its tanks start with. */
  Optional<Ute> ute(Map<String, Long> startMl) {
    return entry.map(
        ute ->
            new Ute(
                ute.id(),
                ute.title(),
                ute.source(),
                ute.wheelbaseMm(),
                ute.frontTrackMm(),
                ute.rearTrackMm(),
                weighed.orElse(ute.empty()),
                ute.emptyHeightMm(),
                ute.emptyHeightSource(),
                ute.limits(),
                ute.frontTyres(),
                ute.rearTyres(),
                ute.seats(),
                TankStarts.apply(ute.fuelTanks(), startMl),
                ute.ball(),
                parts(ute),
                ute.springHangers(),
                ute.foremostXMm(),
                ute.rearmostXMm(),
                ute.cabRoofZMm(),
                ute.bays(),
                ute.spaces()));
  }

  private List<RemovablePart> parts(Ute ute) {
    List<RemovablePart> parts = new ArrayList<>();
    for (RemovablePart part : ute.parts()) {
      State state = states.get(part.id());
      parts.add(
          state == null
              ? part
              : new RemovablePart(
                  part.id(),
                  part.title(),
                  part.mass(),
                  part.box(),
                  state.state(),
                  state.stowedAs()));
    }
    return parts;
  }
}
