package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two pieces from day 1 to day 9, three from day 3 to day 5, four from day 2 to day 9. */
class ByUseByTest {
  private final ByUseBy<String> stock = new ByUseBy<>();

  @BeforeEach
  void fill() {
    stock.add("long", new ByUseBy.Days(1, 9), 2);
    stock.add("short", new ByUseBy.Days(3, 5), 3);
    stock.add("later", new ByUseBy.Days(2, 9), 4);
  }

  private Map<String, Integer> take(int pieces, int day) {
    Map<String, Integer> taken = new LinkedHashMap<>();
    stock.take(pieces, day, taken::put);
    return taken;
  }

  @Test
  void what_goes_first_is_taken_first_and_of_what_goes_together_what_came_first() {
    assertThat(take(6, 4)).isEqualTo(Map.of("short", 3, "long", 2, "later", 1));
    assertThat(take(9, 4)).isEqualTo(Map.of("later", 3));
    assertThat(stock.batches()).isEmpty();
  }

  @Test
  void nothing_is_there_before_it_came_nor_after_its_use_by() {
    assertThat(stock.there(1)).isEqualTo(2);
    assertThat(stock.there(2)).isEqualTo(6);
    assertThat(stock.there(5)).isEqualTo(9);
    assertThat(stock.there(6)).isEqualTo(6);
    assertThat(stock.there(10)).isZero();
    assertThat(take(5, 1)).isEqualTo(Map.of("long", 2));
  }

  @Test
  void what_is_on_its_way_counts_as_lasting() {
    assertThat(stock.lasting(0)).isEqualTo(9);
    assertThat(stock.lasting(6)).isEqualTo(6);
    assertThat(stock.lasting(10)).isZero();
  }

  @Test
  void what_is_past_its_use_by_leaves() {
    Map<String, Integer> gone = new LinkedHashMap<>();
    stock.begin(5, gone::put);
    assertThat(gone).isEmpty();
    stock.begin(6, gone::put);
    assertThat(gone).isEqualTo(Map.of("short", 3));
    assertThat(stock.batches()).extracting(ByUseBy.Batch::as).containsExactly("long", "later");
  }
}
