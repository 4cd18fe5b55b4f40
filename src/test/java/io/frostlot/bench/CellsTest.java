package io.frostlot.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CellsTest {
  private static Standing standing(int unmet, int shortfall) {
    return new Standing(0, unmet, shortfall, new Money(new BigDecimal("12.5")));
  }

  @Test
  void a_plan_is_said_in_words() {
    assertThat(Cells.says(standing(0, 0), OptionalDouble.of(11)))
        .isEqualTo("cost 12.50, bound 11.00");
    assertThat(Cells.says(standing(2, 4), OptionalDouble.empty()))
        .isEqualTo("cost 12.50, meals unmet 2, soft rules short by 4, no bound");
  }
}
