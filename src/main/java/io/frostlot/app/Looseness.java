package io.frostlot.app;

import io.frostlot.plan.Difference;
import io.frostlot.plan.Solved;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which questions, by number, allow all that others do, at no more money: larger freezers, more
 * suppliers, a rule away, a sale. What is looser is never worse at its best, so that its bounds
 * hold for what is stricter, plans of what is stricter can be followed in it, and a saving has a
 * sign.
 */
final class Looseness {
  private final Map<Integer, Set<Integer>> looser = new LinkedHashMap<>();
  private final Map<Integer, Set<Integer>> stricter = new LinkedHashMap<>();

  /** One allows all that the other does. */
  void state(int one, int other) {
    if (one != other) {
      looser.computeIfAbsent(other, id -> new LinkedHashSet<>()).add(one);
      stricter.computeIfAbsent(one, id -> new LinkedHashSet<>()).add(other);
    }
  }

  /** Does one allow all that the other does, as far as was stated? */
  boolean isLooser(int one, int other) {
    return looserThan(other).contains(one);
  }

  /** Is it certain that neither can be better before money, so that a saving can have a sign? */
  static boolean isSigned(Difference difference, Solved before, Solved after) {
    return difference.before().standing().sameBeforeMoney(difference.after().standing())
        && (before.standing().lacksNothing()
            || (before.answer().bound().isPresent() && after.answer().bound().isPresent()));
  }

  /**
   * The same where it is known that the question which allows more is not dearer.
   *
   * @param difference from one to the other, with the same meals
   */
  Difference signed(Difference difference, int one, int other) {
    if (isLooser(other, one)) {
      return difference.within(0, Double.POSITIVE_INFINITY);
    }
    return isLooser(one, other) ? difference.within(Double.NEGATIVE_INFINITY, 0) : difference;
  }

  /** All that allow what this one does. */
  Set<Integer> looserThan(int one) {
    return from(one, looser);
  }

  /** All that allow no more than this one does. */
  Set<Integer> stricterThan(int one) {
    return from(one, stricter);
  }

  private static Set<Integer> from(int one, Map<Integer, Set<Integer>> steps) {
    Set<Integer> reached = new LinkedHashSet<>();
    Deque<Integer> open = new ArrayDeque<>(Set.of(one));
    while (!open.isEmpty()) {
      for (int next : steps.getOrDefault(open.poll(), Set.of())) {
        if (next != one && reached.add(next)) {
          open.add(next);
        }
      }
    }
    return reached;
  }
}
