package kitstow.planner.solver;

/**
 * Remembers a number for a fingerprint in a table of fixed size; the newer of two that want one
 * place pushes the older out. What is forgotten is worked out again, so it changes no result.
 */
final class LongMemory {
  /** Stands for "not remembered". */
  static final long UNKNOWN = Long.MIN_VALUE;

  private final long[] keys;
  private final long[] values;
  private final int mask;

  /**
   * An empty memory.
   *
   * @param bits number of places as a power of two
   */
  LongMemory(int bits) {
    this.keys = new long[1 << bits];
    this.values = new long[1 << bits];
    this.mask = (1 << bits) - 1;
  }

  long get(long key) {
    int at = (int) key & mask;
    return keys[at] == key ? values[at] : UNKNOWN;
  }

  void put(long key, long value) {
    int at = (int) key & mask;
    keys[at] = key;
    values[at] = value;
  }
}
