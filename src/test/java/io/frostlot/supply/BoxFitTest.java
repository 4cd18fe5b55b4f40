package io.frostlot.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Fewest boxes for whole packs. */
class BoxFitTest {
  private static final Boxing.Limits TEN_KG =
      new Boxing.Limits(Grams.of(10_000.0), Litres.UNLIMITED, Pack.UNLIMITED);

  /** Three packs of 6 kg: 18 kg would be two boxes by total, whole packs need three. */
  @Test
  void large_packs_do_not_share() {
    assertThat(BoxFit.pack(Map.of(pack("six", 6000, 1, 1), 3), TEN_KG)).hasSize(3);
  }

  /**
   * 5, 5, 4, 4, 3, 3, 3, 3 kg: first fit by falling size takes 5+5, 4+4, 3+3+3, 3; two boxes would
   * do for the total of 30 only if three were full: 5+5, 4+3+3, 4+3+3.
   */
  @Test
  void finds_what_first_fit_misses() {
    Map<Pack, Integer> packs = new LinkedHashMap<>();
    packs.put(pack("five", 5000, 1, 1), 2);
    packs.put(pack("four", 4000, 1, 1), 2);
    packs.put(pack("three", 3000, 1, 1), 4);
    assertThat(BoxFit.pack(packs, TEN_KG)).hasSize(3);
  }

  @Test
  void a_pack_at_the_limit_fits_and_a_gram_more_does_not() {
    assertThat(BoxFit.fits(pack("all", 10_000, 1, 1), TEN_KG)).isTrue();
    assertThat(BoxFit.fits(pack("more", 10_001, 1, 1), TEN_KG)).isFalse();
    assertThatThrownBy(() -> BoxFit.pack(Map.of(pack("more", 10_001, 1, 1), 1), TEN_KG))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fits into no box");
  }

  /** Three limits at once, against trying every assignment of packs to boxes. */
  @Property(tries = 300)
  void equals_exhaustive_packing(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 999) Integer> seeds) {
    Boxing.Limits limits = new Boxing.Limits(Grams.of(10.0), Litres.of(new BigDecimal("10")), 10);
    Map<Pack, Integer> packs = new LinkedHashMap<>();
    for (int i = 0; i < seeds.size(); i++) {
      int seed = seeds.get(i);
      packs.put(pack("p" + i, 1 + seed % 9, 1 + seed / 9 % 9, 1 + seed / 81 % 9), 1);
    }
    List<Map<Pack, Integer>> boxes = BoxFit.pack(packs, limits);
    assertThat(boxes).hasSize(fewest(List.copyOf(packs.keySet()), limits));
    assertThat(boxes.stream().mapToInt(Map::size).sum()).isEqualTo(packs.size());
  }

  /** Every assignment, by counting in base n. */
  private static int fewest(List<Pack> packs, Boxing.Limits limits) {
    int n = packs.size();
    int best = n;
    for (int code = 0; code < Math.pow(n, n); code++) {
      long[][] used = new long[n][3];
      int rest = code;
      int boxes = 0;
      boolean fits = true;
      for (Pack pack : packs) {
        int box = rest % n;
        rest /= n;
        boxes += used[box][0] == 0 ? 1 : 0;
        for (int d = 0; d < 3; d++) {
          used[box][d] += BoxFit.sizes(pack)[d];
          fits &= used[box][d] <= BoxFit.sizes(limits)[d];
        }
      }
      best = fits ? Math.min(best, boxes) : best;
    }
    return best;
  }

  private static Pack pack(String name, double grams, int litres, int pieces) {
    Item item =
        new Item("s/" + name, name, "mouse", "", Item.Spread.exactly(Grams.of(1.0)), Litres.ZERO);
    return new Pack(
        item,
        pieces,
        Money.of(1),
        Pack.Availability.ANY,
        new Pack.Packed(Grams.of(grams), Litres.of(BigDecimal.valueOf(litres))));
  }
}
