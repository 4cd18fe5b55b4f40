package io.frostlot.oracle;

import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Chance, the same for the same seed. */
final class Dice {
  static final LocalDate FIRST = LocalDate.of(2031, 3, 3);
  private final SplittableRandom random;
  private final Set<Feature> features = EnumSet.noneOf(Feature.class);

  /**
   * Dice for one world; whether it has a feature does not depend on which others there are.
   *
   * @param allowed of these features about a third is on
   */
  Dice(long seed, Set<Feature> allowed) {
    random = new SplittableRandom(seed);
    for (Feature feature : allowed) {
      SplittableRandom own = new SplittableRandom(31 * seed + feature.name().hashCode());
      if (own.nextInt(3) == 0) {
        features.add(feature);
      }
    }
  }

  boolean has(Feature feature) {
    return features.contains(feature);
  }

  /** Is the planning as long as eight weeks, so that adequacy asks something of these too? */
  boolean isLong() {
    return has(Feature.EIGHT_WEEKS) && has(Feature.ADEQUACY);
  }

  Set<Feature> features() {
    return features;
  }

  /** Both ends included. */
  int between(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  @SafeVarargs
  final <T> T oneOf(T... all) {
    return all[random.nextInt(all.length)];
  }

  <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  <T> List<T> someOf(List<T> all) {
    List<T> some = all.stream().filter(one -> random.nextBoolean()).toList();
    return some.isEmpty() ? List.of(oneOf(all)) : some;
  }

  /** Hundredths between two numbers of hundredths. */
  Money cents(int least, int most) {
    return new Money(BigDecimal.valueOf(between(least, most), 2));
  }

  /** Up to a number of days, starting around the first days of the planning. */
  Period days(int most) {
    LocalDate from = FIRST.plusDays(between(-1, 2));
    return new Period(from, from.plusDays(between(0, most)));
  }
}
