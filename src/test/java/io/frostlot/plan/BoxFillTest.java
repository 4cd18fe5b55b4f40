package io.frostlot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoxFillTest {
  private final Order order = HandmadePlan.plan(HandmadeRoom.world()).orders().get(0);

  private static Boxing by(Boxing.Way way, int grams, String litres, int pieces) {
    return new Boxing(
        way, new Boxing.Limits(Grams.of(grams), Litres.of(new BigDecimal(litres)), pieces), 9);
  }

  @Test
  void a_box_of_whole_packs_is_as_full_as_its_tightest_limit() {
    // first box 0.775 kg of 1 (78 %), 1.72 l of 2 (86 %), 50 pieces of 60 (83 %)
    List<BoxFill> boxes = BoxFill.of(by(Boxing.Way.WHOLE_PACKS, 1000, "2", 60), order);
    assertThat(boxes).hasSize(2);
    assertThat(boxes.get(0).tightest().unit()).isEqualTo(BoxFill.Unit.LITRES);
    assertThat(boxes.get(0).tightest().share())
        .isCloseTo(0.861, org.assertj.core.data.Offset.offset(0.001));
    assertThat(boxes.get(1).tightest()).isEqualTo(new BoxFill.Fill(BoxFill.Unit.PIECES, 25, 60));
  }

  @Test
  void boxes_counted_by_totals_are_full_but_for_the_last() {
    // 25 x 21 g + 50 x 10 g = 1.025 kg in boxes of 0.6 kg
    Order total =
        new Order(order.slot(), order.lines(), order.promotions(), new Order.Boxes(2, List.of()));
    List<BoxFill> boxes = BoxFill.of(by(Boxing.Way.BY_TOTAL, 600, "9", Pack.UNLIMITED), total);
    assertThat(boxes).extracting(box -> box.tightest().unit()).containsOnly(BoxFill.Unit.KILOGRAMS);
    assertThat(boxes.get(0).tightest().share()).isEqualTo(1);
    assertThat(boxes.get(1).tightest().used())
        .isCloseTo(0.425, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void without_limits_nothing_is_full() {
    assertThat(BoxFill.of(Boxing.NONE, order))
        .extracting(box -> box.tightest().unit())
        .containsOnly(BoxFill.Unit.NONE);
  }
}
