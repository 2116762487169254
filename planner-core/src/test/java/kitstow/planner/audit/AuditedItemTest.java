package kitstow.planner.audit;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AuditedItemTest {
  @ParameterizedTest
  @CsvSource({
    "LWH, 400, 300, 200",
    "WLH, 300, 400, 200",
    "LHW, 400, 200, 300",
    "HLW, 200, 400, 300",
    "WHL, 300, 200, 400",
    "HWL, 200, 300, 400"
  })
  void anItemIsTurnedByTheNameOfItsTurn(Turn turn, int xMm, int yMm, int zMm) {
    PlacedItem placed = placed(turn);
    Block block = AuditedItem.of(placed, 0).block();
    assertThat(block.x().lengthMm()).isEqualTo(xMm);
    assertThat(block.y().lengthMm()).isEqualTo(yMm);
    assertThat(block.z().lengthMm()).isEqualTo(zMm);
    assertThat(block).isEqualTo(Block.of(placed.box()));
  }

  @Test
  void aBoxThatIsNotWhereItsPlacementSaysIsRefused() {
    PlacedItem placed = placed(Turn.LWH);
    BoxMm box = placed.box();
    BoxMm shifted =
        new BoxMm(
            box.minXMm() + 1,
            box.minYMm(),
            box.minZMm(),
            box.maxXMm() + 1,
            box.maxYMm(),
            box.maxZMm());
    PlacedItem wrong =
        new PlacedItem(
            placed.item(),
            placed.unit(),
            placed.key(),
            placed.space(),
            placed.placement(),
            shifted);
    assertThatThrownBy(() -> AuditedItem.of(wrong, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("bag");
  }

  private static PlacedItem placed(Turn turn) {
    Loading loading = aDualCab().items(anItem("bag")).put("bag", BOX, turn, 10, 20, 30).load();
    return loading.in(BOX).get(0);
  }
}
