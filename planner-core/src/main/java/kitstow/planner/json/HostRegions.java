package kitstow.planner.json;

import java.util.List;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.SpaceSpec;

/**
 * Bays and spaces that a scenario adds to a ute, tray or canopy.
 *
 * @param bays added bays
 * @param spaces added spaces
 */
record HostRegions(List<BaySpec> bays, List<SpaceSpec> spaces) {
  static final HostRegions NONE = new HostRegions(List.of(), List.of());

  /** Reads them and makes them known, with those of the entry they are added to. */
  static HostRegions read(
      Fields host,
      Figures figures,
      RegionCheck check,
      Known known,
      List<BaySpec> entryBays,
      List<SpaceSpec> entrySpaces) {
    for (BaySpec bay : entryBays) {
      claim(bay.id(), host, known);
    }
    for (SpaceSpec space : entrySpaces) {
      claim(space.id(), host, known);
    }
    RegionReader reader = new RegionReader(figures, known.regions, check);
    HostRegions added = new HostRegions(reader.bays(host), reader.spaces(host));
    added.makeKnown(known);
    new HostRegions(entryBays, entrySpaces).makeKnown(known);
    return added;
  }

  private static void claim(String id, Fields host, Known known) {
    known.regions.claim(id, host.place("entry"), "brings the bay or space " + Shown.quoted(id));
  }

  private void makeKnown(Known known) {
    for (BaySpec bay : bays) {
      known.bays.add(bay.id());
      if (bay.spaceWhenEmpty()) {
        known.spaces.add(bay.id());
      }
    }
    for (SpaceSpec space : spaces) {
      known.spaces.add(space.id());
    }
  }
}
