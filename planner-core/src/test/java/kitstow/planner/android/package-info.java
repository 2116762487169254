/**
 * The promise that the library runs on Android, held by the build. The platform at API 26 is known
 * by its classes and members: {@link kitstow.planner.android.PlatformTypes} reads them, {@link
 * kitstow.planner.android.StubJar} makes them a library to compile and link against. {@link
 * kitstow.planner.android.Desugared} turns byte code into what a phone gets, {@link
 * kitstow.planner.android.PhoneLoader} runs it where all else of the desktop's platform is refused,
 * {@link kitstow.planner.android.Linker} looks up what the loaded classes refer to. Nothing here
 * runs on a phone. Start with {@link kitstow.planner.android.AndroidTest}.
 */
@NullMarked
package kitstow.planner.android;

import org.jspecify.annotations.NullMarked;
