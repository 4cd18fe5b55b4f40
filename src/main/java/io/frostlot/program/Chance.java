package io.frostlot.program;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** What a local search leaves to chance. */
record Chance(Random random) {
  /** The same choices for the same seed. */
  static Chance of(long seed) {
    return new Chance(new Random(seed));
  }

  /** From 0 on. */
  int below(int end) {
    return random.nextInt(end);
  }

  /** More than 0, at most 1. */
  double share() {
    return 1 - random.nextDouble();
  }

  <T> T oneOf(List<T> some) {
    return some.get(below(some.size()));
  }

  <T> List<T> shuffled(Collection<T> some) {
    List<T> shuffled = new ArrayList<>(some);
    Collections.shuffle(shuffled, random);
    return shuffled;
  }

  /** At most so many of them, in any order. */
  <T> List<T> some(int most, Collection<T> all) {
    return shuffled(all).subList(0, Math.min(most, all.size()));
  }
}
