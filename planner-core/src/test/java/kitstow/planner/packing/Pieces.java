package kitstow.planner.packing;

import static kitstow.planner.testkit.ItemBuilder.anItem;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;

/** The room of {@link OneSpace} cut into unlike boxes by planes right through what is cut. */
final class Pieces {
  private static final Turn[] ALL = EnumSet.allOf(Turn.class).toArray(new Turn[0]);

  /** Front part cut across, then each half upright; rear part lying, then each half across. */
  private static final List<SizeMm> SIZES =
      List.of(
          new SizeMm(510, 230, 410),
          new SizeMm(510, 230, 290),
          new SizeMm(270, 370, 700),
          new SizeMm(240, 370, 700),
          new SizeMm(690, 250, 330),
          new SizeMm(690, 350, 330),
          new SizeMm(310, 600, 370),
          new SizeMm(380, 600, 370));

  private Pieces() {}

  /** All of them, turned every way, each strong enough for what is above it. */
  static List<ItemBuilder> ofTheRoom() {
    List<ItemBuilder> pieces = new ArrayList<>();
    for (SizeMm size : SIZES) {
      pieces.add(
          anItem("piece-" + pieces.size())
              .size(size.lengthMm(), size.widthMm(), size.heightMm())
              .turns(ALL[0], ALL)
              .massG(Masses.kg(4))
              .bearsG(Masses.kg(60)));
    }
    return pieces;
  }
}
