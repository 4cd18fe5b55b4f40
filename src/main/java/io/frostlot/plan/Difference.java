package io.frostlot.plan;

import io.frostlot.units.Money;
import java.util.List;
import java.util.Set;

/**
 * What one answer has over another, meals first.
 *
 * @param before what it is compared with
 * @param after the answer looked at
 * @param found money that the plan found for {@code after} saves against the one found for {@code
 *     before}; negative where it costs more
 * @param saves where the saving lies with both at their best
 */
public record Difference(Side before, Side after, Money found, Interval saves) {

  /**
   * What answers are compared by before money, and meals that come late.
   *
   * @param gaveWay rules that fall short and by how much, not where
   */
  public record Side(Standing standing, int lateMeals, List<Shortfall> gaveWay) {
    public Side {
      gaveWay = gaveWay.stream().map(Shortfall::withoutParts).toList();
    }

    /** Of which no rule falls short. */
    public Side(Standing standing, int lateMeals) {
      this(standing, lateMeals, List.of());
    }

    public static Side of(Solved solved) {
      return of(solved.answer().plan(), solved.outcome());
    }

    public static Side of(Answer.Judged judged, Outcome outcome) {
      return new Side(judged.standing(), outcome.lateMeals(), judged.books().shortfalls());
    }

    /** Is all the same that comes before money, so that money may be compared? */
    public boolean sameMeals(Side other) {
      return standing.sameBeforeMoney(other.standing) && lateMeals == other.lateMeals;
    }

    private Side besides(Set<String> rules) {
      List<Shortfall> others =
          gaveWay.stream().filter(shortfall -> !rules.contains(shortfall.rule())).toList();
      long amount = others.stream().mapToLong(Shortfall::amount).sum();
      return new Side(standing.withShortfall(amount), lateMeals, others);
    }
  }

  public static Difference between(Solved before, Solved after) {
    return new Difference(
        Side.of(before),
        Side.of(after),
        before.standing().money().minus(after.standing().money()),
        Interval.saving(before, after));
  }

  /**
   * What the best of some of what may be done has over the plan in hand, which stays as it is.
   *
   * @param part the best found in the part
   */
  public static Difference ofPart(Solved inHand, Solved part) {
    return new Difference(
        Side.of(inHand),
        Side.of(part),
        inHand.standing().money().minus(part.standing().money()),
        Interval.dearer(part.answer(), inHand.answer()).negated());
  }

  /**
   * The same where some rules' own shortfall counts in neither: they are what is taken away, so
   * that by how much they fall short says nothing of what the meals are like without them.
   *
   * @param rules their ids
   */
  public static Difference besides(Set<String> rules, Solved before, Solved after) {
    Difference all = between(before, after);
    return new Difference(
        all.before().besides(rules), all.after().besides(rules), all.found, all.saves);
  }

  /** Are the meals, margins and days the same, so that money may be compared? */
  public boolean sameMeals() {
    return before.sameMeals(after);
  }

  /** Are the meals of {@code after} better in the first level that differs? */
  public boolean betterMeals() {
    return before.standing().worseBeforeMoney(after.standing());
  }

  /** The same, where it is known besides that the saving is at least and at most so much. */
  public Difference within(double least, double most) {
    return new Difference(before, after, found, saves.within(least, most));
  }
}
