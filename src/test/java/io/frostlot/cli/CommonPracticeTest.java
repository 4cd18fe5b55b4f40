package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What keepers see on invoices, as scenario folders that the command plans: common practice. */
class CommonPracticeTest {
  @TempDir Path folder;

  /**
   * Common practice: about 29 for a box, however full it is; this one takes 100 pieces, in packs of
   * 25. Twice the pieces in a box halve the charge for each; one pack too many doubles the charge.
   */
  @ParameterizedTest(name = "{0} pieces")
  @CsvSource({"25, 1, 1.160", "50, 1, 0.580", "100, 1, 0.290", "125, 2, 0.464"})
  void a_fuller_box_costs_less_a_piece(int pieces, int boxes, String perPiece) throws IOException {
    String needs = "kind,least_g,most_g,pieces,date\nmouse,20,30," + pieces + ",2031-01-10\n";
    JsonNode orders =
        ScenarioCopy.of("practice/charge-per-box", folder)
            .with("needs.csv", needs)
            .plan()
            .get("orders");

    assertThat(orders).hasSize(1);
    assertThat(orders.get(0).get("boxes")).hasSize(boxes);
    assertThat(chargePerPiece(orders.get(0))).isEqualTo(perPiece);
  }

  private static BigDecimal chargePerPiece(JsonNode order) {
    int pieces = 0;
    for (JsonNode line : order.get("packs")) {
      pieces += line.get("packCount").asInt() * line.get("packs").asInt();
    }
    return new BigDecimal(order.get("shipping").asText())
        .divide(BigDecimal.valueOf(pieces), 3, RoundingMode.HALF_UP);
  }

  /**
   * Common practice: about 29 near the supplier, about 99 far away. Two packs are 40.00 from the
   * north and 48.00 from the south; at either end of the country the near one is chosen: 40 + 29 is
   * less than 48 + 99, and 48 + 29 is less than 40 + 99.
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"XF-01, north, 69.00", "XF-02, south, 77.00"})
  void the_place_decides_which_supplier_is_chosen(String place, String supplier, String cost)
      throws IOException {
    JsonNode plan = zones(place);
    JsonNode order = plan.get("orders").get(0);

    assertThat(plan.get("orders")).hasSize(1);
    assertThat(order.get("supplier").asText()).isEqualTo(supplier);
    assertThat(order.get("shipping").asText()).isEqualTo("29.00");
    assertThat(plan.get("cost").asText()).isEqualTo(cost);
  }

  /** Far from both the lower price decides: 40 + 99. */
  @Test
  void far_from_both_the_price_decides() throws IOException {
    JsonNode plan = zones("XF-03");
    assertThat(plan.get("orders").get(0).get("supplier").asText()).isEqualTo("north");
    assertThat(plan.get("cost").asText()).isEqualTo("139.00");
  }

  private JsonNode zones(String place) throws IOException {
    return ScenarioCopy.of("practice/zones", folder)
        .replacing("scenario.json", "XF-01", place)
        .plan();
  }
}
