package io.frostlot.sharing;

import io.frostlot.plan.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/** Games to test with. */
final class Games {
  private Games() {}

  static Game exactly(int members, ToDoubleFunction<Subgroup> cost) {
    return Game.of(names(members), some -> Range.exactly(cost.applyAsDouble(some)));
  }

  static List<String> names(int members) {
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= members; i++) {
      names.add("member " + i);
    }
    return names;
  }

  /** What a group of so many might pay, in whole units; subgroups may split. */
  static Game random(int members, Random random) {
    return exactly(members, some -> random.nextInt(10 + 20 * some.size())).splitting();
  }

  /** The bits with those of the first two members exchanged. */
  static Subgroup exchanged(Subgroup some) {
    int first = some.bits() & 1;
    int second = some.bits() >> 1 & 1;
    return new Subgroup((some.bits() & ~3) | (first << 1) | second);
  }
}
