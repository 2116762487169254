package kitstow.planner.catalogue;

import java.util.LinkedHashMap;
import java.util.Map;

/** The ranges of one catalogue entry by figure name. */
class EntryRanges {
  private final String id;
  private final Map<String, Range> byName = new LinkedHashMap<>();

  EntryRanges(String id) {
    this.id = id;
  }

  final EntryRanges with(String name, double min, double max, String basis) {
    return with(name, new Range(min, max, basis));
  }

  final EntryRanges exactly(String name, double value, String basis) {
    return with(name, Range.exactly(value, basis));
  }

  /** Length, width, height; or depth, across, height. */
  final EntryRanges size(String prefix, double first, double second, double height, String basis) {
    return exactly(prefix + "LengthMm", first, basis)
        .exactly(prefix + "WidthMm", second, basis)
        .exactly(prefix + "HeightMm", height, basis);
  }

  private EntryRanges with(String name, Range range) {
    if (byName.put(name, range) != null) {
      throw new IllegalStateException(id + " has " + name + " twice");
    }
    return this;
  }

  final String id() {
    return id;
  }

  final Map<String, Range> byName() {
    return byName;
  }
}
