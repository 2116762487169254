package kitstow.planner.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Slide;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tank;

/** A fit-out module in its own frame (depth, across, height): at first 20 kg without anything. */
public final class ModuleBuilder {
  private final String id;
  private final SizeMm size;
  private String entryId;
  private long toleranceG;
  private final List<SpaceSpec> spaces = new ArrayList<>();
  private final List<BaySpec> bays = new ArrayList<>();
  private final List<Tank> tanks = new ArrayList<>();
  private long fixedG = Masses.kg(20);
  private long movingG;
  private Optional<Slide> slide = Optional.empty();
  private Optional<Ratings> rating = Optional.empty();

  private ModuleBuilder(String id, SizeMm size) {
    this.id = id;
    this.size = size;
    this.entryId = id;
  }

  /** Starts a module. */
  public static ModuleBuilder aModule(String id, int depthMm, int acrossMm, int heightMm) {
    return new ModuleBuilder(id, new SizeMm(depthMm, acrossMm, heightMm));
  }

  /**
   * A slide 700 deep, 700 across and 100 high that comes out by 700: 15 kg and 10 kg moving. Its
   * space {@code top} is open to the top of the bay.
   */
  public static ModuleBuilder aSlide(String id) {
    return aModule(id, 700, 700, 100)
        .massG(Masses.kg(15), Masses.kg(10))
        .slide(700, Masses.always(Masses.kg(100)))
        .space(SpaceBuilder.aSpace("top", 0, 0, 100, new SizeMm(700, 700, 2000)).moves());
  }

  /**
   * A drawer 700 deep, 700 across and 300 high that comes out by 600: 30 kg and 20 kg moving. Its
   * space {@code drawer} is 660 x 660 x 200 mm; on top it has the fixed bay {@code deck} of 700 x
   * 700 x 500 mm, which is a space when empty.
   */
  public static ModuleBuilder aDrawer(String id) {
    return aModule(id, 700, 700, 300)
        .massG(Masses.kg(30), Masses.kg(20))
        .slide(600, Masses.always(Masses.kg(100)))
        .space(SpaceBuilder.aSpace("drawer", 20, 20, 50, new SizeMm(660, 660, 200)).moves())
        .bay(BayBuilder.aBay("deck", 0, 0, 300, new SizeMm(700, 700, 500)).spaceWhenEmpty());
  }

  /** The catalogue entry it is of. */
  public ModuleBuilder entry(String value) {
    entryId = value;
    return this;
  }

  /** By how much each of its two masses may be off. */
  public ModuleBuilder toleranceG(long value) {
    toleranceG = value;
    return this;
  }

  /** Mass of the part that stays and of the part that comes out. */
  public ModuleBuilder massG(long fixed, long moving) {
    fixedG = fixed;
    movingG = moving;
    return this;
  }

  /** Comes out on runners whose ratings count its moving part. */
  public ModuleBuilder slide(int extensionMm, Ratings ratings) {
    return slide(extensionMm, ratings, /* contentsOnly= */ false);
  }

  /** Comes out on runners. */
  public ModuleBuilder slide(int extensionMm, Ratings ratings, boolean contentsOnly) {
    slide =
        Optional.of(
            new Slide(extensionMm, ratings, contentsOnly, /* lockIn= */ true, /* lockOut= */ true));
    return this;
  }

  /** What its fixed part may carry. */
  public ModuleBuilder rating(Ratings value) {
    rating = Optional.of(value);
    return this;
  }

  /** A space in or on it. */
  public ModuleBuilder space(SpaceBuilder value) {
    spaces.add(value.build());
    return this;
  }

  /** A bay on it. */
  public ModuleBuilder bay(BayBuilder value) {
    bays.add(value.build());
    return this;
  }

  /** A tank in it. */
  public ModuleBuilder tank(Tank value) {
    tanks.add(value);
    return this;
  }

  /** The module. */
  public FitOutModule build() {
    return new FitOutModule(
        id,
        id,
        entryId,
        /* source= */ "test",
        size,
        Masses.weighed(fixedG, toleranceG),
        Masses.weighed(movingG, toleranceG),
        slide,
        rating,
        spaces,
        bays,
        tanks);
  }
}
