package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Published optima, each an ordinary scenario folder that the command plans. */
class PublishedOptimaTest {
  @TempDir Path folder;

  private ScenarioCopy published(String name) {
    return ScenarioCopy.of("published/" + name, folder);
  }

  /** Packs by order day, e.g. "2031-01-03 97". */
  private static List<String> packs(JsonNode plan) {
    List<String> packs = new ArrayList<>();
    for (JsonNode order : plan.get("orders")) {
      for (JsonNode line : order.get("packs")) {
        packs.add(order.get("orderBy").asText() + " " + line.get("packs").asInt());
      }
    }
    return packs;
  }

  /**
   * H. M. Wagner, T. M. Whitin, "Dynamic Version of the Economic Lot Size Model", Management
   * Science 5(1), 1958, 89-96: optimum 864, orders in periods 1, 3, 5, 8, 10 and 11.
   */
  @Test
  void wagner_and_whitin_1958() throws IOException {
    JsonNode plan = published("wagner-whitin-1958").plan();
    assertThat(plan.get("cost").asText()).isEqualTo("864.00");
    assertThat(packs(plan))
        .containsExactly(
            "2031-01-01 98", // 69 + 29
            "2031-01-03 97", // 36 + 61
            "2031-01-05 121", // 61 + 26 + 34
            "2031-01-08 112", // 67 + 45
            "2031-01-10 67",
            "2031-01-11 135"); // 79 + 56
  }

  /** The same demand where stock keeps one, two or three periods: derived, not published. */
  @ParameterizedTest(name = "{0} days, {1}")
  @CsvSource({"1, 1234.00", "2, 901.00", "3, 864.00"})
  void wagner_and_whitin_with_a_shelf_life(int days, String optimum) throws IOException {
    String freezers = "name,usable_litres,kind,life_days\nStore,100000,deep," + days + "\n";
    assertThat(published("wagner-whitin-1958").with("freezers.csv", freezers).cost())
        .isEqualTo(optimum);
  }

  /**
   * E. A. Silver, D. F. Pyke, R. Peterson, "Inventory Management and Production Planning and
   * Scheduling", chapter on time-varying demand: optimum 501.20, seven orders.
   */
  @Test
  void silver_pyke_and_peterson() throws IOException {
    JsonNode plan = published("silver-pyke-peterson").plan();
    assertThat(plan.get("cost").asText()).isEqualTo("501.20");
    assertThat(plan.get("orders")).hasSize(7);
  }

  /**
   * W. L. Winston, "Introduction to Probability Models", 2004, chapter 6, example 4: at most five a
   * period, at most four in store at a period's end; optimum 20 with 1, 5, 0, 4.
   */
  @Test
  void winston_2004() throws IOException {
    JsonNode plan = published("winston-2004").plan();
    assertThat(plan.get("cost").asText()).isEqualTo("20.00");
    assertThat(packs(plan)).containsExactly("2031-01-01 1", "2031-01-02 5", "2031-01-04 4");
  }

  /** The same source: the optimum by what is in store at the start. */
  @ParameterizedTest(name = "{0} in store, {1}")
  @CsvSource({"1, 16.00", "2, 15.50", "3, 15.00", "4, 13.50"})
  void winston_2004_with_stock(int pieces, String optimum) throws IOException {
    String stock =
        """
        lot,supplier,item,pieces,freezer,arrived,use_by
        start,source,Mouse,%d,Store,2030-12-31,2031-12-31
        """
            .formatted(pieces);
    assertThat(published("winston-2004").with("stock.csv", stock).cost()).isEqualTo(optimum);
  }

  /**
   * J. J. Sylvester's coin problem (1884; textbooks) for 6, 9 and 20: packs of so many, at 1.00 a
   * piece, make every number from 44 on, but not 43.
   */
  @Test
  void forty_three_pieces_cost_forty_four() throws IOException {
    assertThat(published("coin-problem").cost()).isEqualTo("44.00");
  }

  @ParameterizedTest
  @ValueSource(ints = {44, 45, 46, 47, 48, 49, 50, 51, 52, 53, 54, 55, 56, 57, 58, 59, 60})
  void every_larger_number_of_pieces_can_be_made(int pieces) throws IOException {
    String needs = "kind,least_g,most_g,pieces,date\nmouse,20,30," + pieces + ",2031-01-01\n";
    assertThat(published("coin-problem").with("needs.csv", needs).cost()).isEqualTo(pieces + ".00");
  }
}
