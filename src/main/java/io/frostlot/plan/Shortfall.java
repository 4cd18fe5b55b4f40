package io.frostlot.plan;

import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.util.List;

/**
 * By how much a rule that gives way falls short.
 *
 * @param rule its id
 * @param amount what answers are compared by: the sum of its parts, rounded up
 * @param parts where it falls short, in the rule's own order
 */
public record Shortfall(String rule, Unit unit, long amount, List<Part> parts) {
  public Shortfall {
    parts = List.copyOf(parts);
  }

  /** What an amount counts. */
  public enum Unit {
    PIECES,
    PIECE_DAYS,
    PERCENT,
    MEALS,
    MEALS_OR_DAYS,
    CHANGES
  }

  /**
   * A part of it.
   *
   * @param of whom or what it is about: an animal, the id of an item or supplier, a size of prey, a
   *     freezer; empty where it is about the days alone
   * @param days that were looked at
   * @param amount above zero
   */
  public record Part(String of, Period days, BigDecimal amount) {
    /** A part in whole units. */
    public Part(String of, Period days, long amount) {
      this(of, days, BigDecimal.valueOf(amount));
    }

    /** Both together, over the days of both. */
    public Part and(Part other) {
      Period all = days.and(other.days);
      return new Part(of, all, amount.add(other.amount));
    }
  }

  /** How much, not where. */
  Shortfall withoutParts() {
    return new Shortfall(rule, unit, amount, List.of());
  }

  /** Parts in whole units. */
  public static Shortfall counted(String rule, Unit unit, List<Part> parts) {
    return new Shortfall(
        rule, unit, parts.stream().mapToLong(part -> part.amount().longValueExact()).sum(), parts);
  }
}
