package kitstow.planner.json;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
      Fields host, Figures figures, RegionCheck check, Known known, HostRegions ofEntry) {
    Set<String> ids = new LinkedHashSet<>();
    ofEntry.bays().forEach(bay -> ids.add(bay.id()));
    ofEntry.spaces().forEach(space -> ids.add(space.id()));
    for (String id : ids) {
      known.regions.claim(id, host.place("entry"), "brings the bay or space " + Shown.quoted(id));
    }
    RegionReader reader = new RegionReader(figures, known.regions, check);
    HostRegions added = new HostRegions(reader.bays(host), reader.spaces(host));
    added.makeKnown(known);
    ofEntry.makeKnown(known);
    if (!host.idsKnown("bays", "spaces")) {
      known.regionsIncomplete();
    }
    return added;
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
