package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.RACK;
import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class ColumnAuditTest {
  @Test
  void theColumnAboveAnItemThatBearsNothingStaysClear() {
    assertThat(broken(boardOverPostAt(400))).isEmpty();
    assertThat(broken(boardOverPostAt(399))).containsExactly("CLEAR_COLUMN weak board");
  }

  @Test
  void whatAnItemBearsIsNotAskedHere() {
    RigBuilder rig =
        aDualCab()
            .items(anItem("lower").bearsG(1), anItem("upper").massG(1))
            .put("lower", BOX, 0, 0, 0)
            .put("upper", BOX, 0, 0, 200);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void nothingIsStackedOnBareBars() {
    RigBuilder rig =
        aDualCab()
            .items(anItem("lower").size(700, 300, 100), anItem("upper").size(700, 300, 100))
            .put("lower", RACK, 100, 0, 0)
            .put("upper", RACK, 100, 299, 100);
    assertThat(broken(rig)).containsExactly("CLEAR_COLUMN lower upper", "TWO_BARS upper");
  }

  /** A post beside the weak item carries a board, well above it. */
  private static RigBuilder boardOverPostAt(int xMm) {
    return aDualCab()
        .items(
            anItem("weak").bearsG(0),
            anItem("post").size(400, 300, 500),
            anItem("board").size(400, 300, 50))
        .put("weak", BOX, 0, 0, 0)
        .put("post", BOX, 400, 0, 0)
        .put("board", BOX, xMm, 0, 500);
  }
}
