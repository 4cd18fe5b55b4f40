package io.frostlot.bench;

import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;

/** Chance, the same for the same seed. */
final class Chance {
  private final SplittableRandom random;

  Chance(RoomSize size, long seed) {
    random = new SplittableRandom(seed * 1_000_003 + size.name().hashCode());
  }

  /** Both ends included. */
  int between(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  double between(double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  boolean in(double share) {
    return random.nextDouble() < share;
  }

  <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  /** In minor units of a hundredth. */
  static Money money(double amount) {
    return new Money(BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP));
  }
}
