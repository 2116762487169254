/**
 * What an app writes to plan on a phone, in Java 8's language. A test compiles it against the
 * platform's stubs and runs it; the guide in DEVELOPERS.md tells about it.
 */
@NullMarked
package kitstow.planner.android.example;

import org.jspecify.annotations.NullMarked;
