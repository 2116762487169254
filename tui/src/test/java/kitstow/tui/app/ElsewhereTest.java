package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import kitstow.tui.Shipped;
import org.junit.jupiter.api.Test;

class ElsewhereTest {
  private final Desk desk = new Desk(Shipped.REMOTE);

  @Test
  void aKeyOfOtherPagesSaysWhichAndWhatItIsFor() {
    desk.type("1l");
    assertThat(desk.state().note())
        .isEqualTo(
            "l is for 4 Home, 5 Room, 6 Findings, 7 Compare:"
                + " carry out the first lever on the tightest limit.");
  }

  @Test
  void aKeyThatIsNoneSaysWhereAllAreTold() {
    desk.type("1z");
    assertThat(desk.state().note()).isEqualTo("z does nothing; ? tells all keys.");
  }
}
