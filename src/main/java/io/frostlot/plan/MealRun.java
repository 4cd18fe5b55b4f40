package io.frostlot.plan;

import io.frostlot.units.Grams;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Meals of one animal over which the grams fed to it are held to a band of its programme: some in a
 * row, those of some weeks, or all that it has. Meals that no prey would do for are none of them.
 *
 * <p>The band is the keeper's, widened to the nearest that the options can reach where they reach
 * nothing inside it (the heavier of two, found to a thousandth of the programme): from options
 * alone, not from price, stock or space. So its floor is at most what they can reach, and its
 * ceiling at least.
 *
 * @param meals by day, at least one
 * @param band of the grams where every meal is met; where some are, of their share of the programme
 */
public record MealRun(List<Demand> meals, Band band) {
  private static final int PARTS = 1000;

  public MealRun {
    meals = List.copyOf(meals);
  }

  /** What is fed over a run: grams and targets of the meals that are met. */
  public record Met(Grams grams, Grams target) {}

  /** Least and most grams. */
  public record Band(Grams least, Grams most) {
    boolean holds(long milligrams) {
      return milligrams >= least.milligrams() && milligrams <= most.milligrams();
    }

    /** Below the least or above the most, in milligrams. */
    long off(long milligrams) {
      return Math.max(least.milligrams() - milligrams, milligrams - most.milligrams());
    }
  }

  /**
   * A run with its band.
   *
   * @param wanted the keeper's band
   */
  static MealRun of(List<Demand> meals, Band wanted) {
    long nearest = evenly(meals);
    if (!wanted.holds(nearest)) {
      for (long sum : sums(meals)) {
        long nearer = wanted.off(nearest) - wanted.off(sum);
        nearest = nearer > 0 || (nearer == 0 && sum > nearest) ? sum : nearest;
      }
    }
    Band reachable =
        new Band(
            new Grams(Math.min(wanted.least().milligrams(), nearest)),
            new Grams(Math.max(wanted.most().milligrams(), nearest)));
    return new MealRun(meals, reachable);
  }

  /** The animal that eats them. */
  public String eater() {
    return meals.get(0).meal().eater();
  }

  /** What is intended for one meal. */
  public static Grams target(Demand demand) {
    return demand.meal().prey().window().target();
  }

  /** The programme of all its meals. */
  public Grams target() {
    return target(meals);
  }

  static Grams target(List<Demand> meals) {
    return meals.stream().map(MealRun::target).reduce(Grams.ZERO, Grams::plus);
  }

  /** What is fed of some meals. */
  static Met met(List<Demand> meals, Map<String, Feeding> feedings) {
    Grams grams = Grams.ZERO;
    Grams target = Grams.ZERO;
    for (Demand demand : meals) {
      Feeding feeding = feedings.get(demand.meal().id());
      if (feeding != null) {
        grams = grams.plus(feeding.option().grams());
        target = target.plus(target(demand));
      }
    }
    return new Met(grams, target);
  }

  /** Could its options break the band? */
  boolean canBreak() {
    long least = 0;
    long most = 0;
    for (Demand demand : meals) {
      least += grams(demand).min(Long::compare).orElse(0L);
      most += grams(demand).max(Long::compare).orElse(0L);
    }
    return !band.holds(least) || !band.holds(most);
  }

  /**
   * How far what is fed lies outside the band, in percent of the programme; 0 inside.
   *
   * @param feedings by meal
   */
  public BigDecimal percentOff(Map<String, Feeding> feedings) {
    Met met = met(meals, feedings);
    BigDecimal programme = BigDecimal.valueOf(target().milligrams());
    BigDecimal share =
        BigDecimal.valueOf(met.target().milligrams()).divide(programme, MathContext.DECIMAL128);
    BigDecimal fed = BigDecimal.valueOf(met.grams().milligrams());
    BigDecimal lacking =
        BigDecimal.valueOf(band.least().milligrams()).multiply(share).subtract(fed);
    BigDecimal beyond = fed.subtract(BigDecimal.valueOf(band.most().milligrams()).multiply(share));
    return lacking
        .max(beyond)
        .max(BigDecimal.ZERO)
        .movePointRight(2)
        .divide(programme, MathContext.DECIMAL64);
  }

  private static Stream<Long> grams(Demand demand) {
    return demand.options().stream().map(option -> option.grams().milligrams());
  }

  /** The sum when each meal takes what brings the sum so far nearest to the programme so far. */
  private static long evenly(List<Demand> meals) {
    long fed = 0;
    long due = 0;
    for (Demand demand : meals) {
      due += target(demand).milligrams();
      long lacking = due - fed;
      fed +=
          grams(demand)
              .min((a, b) -> Long.compare(Math.abs(a - lacking), Math.abs(b - lacking)))
              .orElse(0L);
    }
    return fed;
  }

  /** Sums that the options can reach, one for each thousandth of the programme. */
  private static Set<Long> sums(List<Demand> meals) {
    long part = Math.max(1, target(meals).milligrams() / PARTS);
    Set<Long> sums = Set.of(0L);
    for (Demand demand : meals) {
      Map<Long, Long> byPart = new HashMap<>();
      List<Long> steps = grams(demand).distinct().toList();
      for (long sum : sums) {
        steps.forEach(step -> byPart.merge((sum + step) / part, sum + step, Math::min));
      }
      sums = new HashSet<>(byPart.values());
    }
    return sums;
  }
}
