package kitstow.planner.solver;

import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.SiteMap;
import kitstow.planner.packing.Wanted;

/**
 * What a thing takes of a section for itself: all its height where no other of the things to be
 * placed is low enough to go above or below it, all its width where none is narrow enough to go
 * beside it; proved where the floor is explained.
 */
final class FloorSections {
  /**
   * Like things that are placed.
   *
   * @param wanted one of them
   * @param count how many there are
   */
  record Group(Wanted wanted, int count) {}

  private final SiteMap sites;
  private final int[][] leastHeightMm;
  private final int[][] leastWidthMm;
  private final List<Group> groups;

  FloorSections(SiteMap sites, Decoder decoder, List<Group> groups) {
    this.sites = sites;
    this.groups = List.copyOf(groups);
    this.leastHeightMm = new int[groups.size()][sites.size()];
    this.leastWidthMm = new int[groups.size()][sites.size()];
    for (int group = 0; group < groups.size(); group++) {
      Wanted wanted = groups.get(group).wanted();
      for (int site = 0; site < sites.size(); site++) {
        leastHeightMm[group][site] = Integer.MAX_VALUE;
        leastWidthMm[group][site] = Integer.MAX_VALUE;
        for (int pose : decoder.posesIn(wanted, site)) {
          SizeMm size = wanted.poses().get(pose).size();
          leastHeightMm[group][site] = Math.min(leastHeightMm[group][site], size.heightMm());
          leastWidthMm[group][site] = Math.min(leastWidthMm[group][site], size.widthMm());
        }
      }
    }
  }

  /** What one of a group takes in a space when it stands there in some size. */
  SizeMm taken(int group, int site, SizeMm size, FloorSpace space) {
    int aboveMm = space.heightMm() - size.heightMm();
    int besideMm = space.widthMm() - size.widthMm();
    boolean high = sites.isBareBars(site) || leastOfOthers(leastHeightMm, group, site) > aboveMm;
    boolean wide = leastOfOthers(leastWidthMm, group, site) > besideMm;
    return new SizeMm(
        size.lengthMm(),
        wide ? space.widthMm() : size.widthMm(),
        high ? space.heightMm() : size.heightMm());
  }

  private int leastOfOthers(int[][] leastMm, int group, int site) {
    int least = groups.get(group).count() > 1 ? leastMm[group][site] : Integer.MAX_VALUE;
    for (int other = 0; other < leastMm.length; other++) {
      least = other == group ? least : Math.min(least, leastMm[other][site]);
    }
    return least;
  }
}
