package kitstow.planner.android;

import java.nio.charset.StandardCharsets;

/** Reads the fields of one message in the wire format of protocol buffers. */
final class WireReader {
  private static final int VARINT = 0;
  private static final int FIXED_64 = 1;
  private static final int LENGTH_DELIMITED = 2;
  private static final int FIXED_32 = 5;

  private final byte[] bytes;
  private final int end;
  private int at;
  private int tag;

  WireReader(byte[] bytes) {
    this(bytes, 0, bytes.length);
  }

  private WireReader(byte[] bytes, int start, int end) {
    this.bytes = bytes;
    this.at = start;
    this.end = end;
  }

  /** Goes to the next field; false at the end of the message. */
  boolean next() {
    if (at >= end) {
      return false;
    }
    tag = number();
    return true;
  }

  /** Number of the field the reader stands at. */
  int field() {
    return tag >>> 3;
  }

  /** The field as a whole number. */
  int number() {
    long value = 0L;
    int shift = 0;
    byte part;
    do {
      part = bytes[at++];
      value |= (long) (part & 0x7f) << shift;
      shift += 7;
    } while (part < 0);
    return (int) value;
  }

  /** The field as a message of its own. */
  WireReader message() {
    int length = number();
    WireReader inner = new WireReader(bytes, at, at + length);
    at += length;
    return inner;
  }

  /** The field as text. */
  String text() {
    int length = number();
    String text = new String(bytes, at, length, StandardCharsets.UTF_8);
    at += length;
    return text;
  }

  /** Leaves the field unread. */
  void skip() {
    switch (tag & 7) {
      case VARINT -> number();
      case FIXED_64 -> at += 8;
      case LENGTH_DELIMITED -> message();
      case FIXED_32 -> at += 4;
      default -> throw new IllegalStateException("unknown wire type: " + (tag & 7));
    }
  }
}
