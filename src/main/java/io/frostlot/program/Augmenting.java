package io.frostlot.program;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Feeds a dish of a {@link Trial} by passing food on: it takes that of another dish, which takes
 * that of a third, and so on to one that can be of what is left over, or that loses less where it
 * is not served. In matching these are augmenting paths (C. Berge, Proceedings of the National
 * Academy of Sciences 43, 1957). Fewest takings first; a food is given up by one dish of a path.
 */
record Augmenting(Trial trial, Refilling refilling, Chance chance) {
  private static final double LESS = 1e-6;

  /** Dishes that may give up theirs. */
  private static final int MOST_GIVERS = 60;

  private List<Menu.Dish> dishes() {
    return trial.menu().dishes();
  }

  /**
   * A dish is served in another way, of what the one before on a path gives up or is left over.
   *
   * @param way -1 where it is no longer served
   */
  private record Taking(int dish, int way) {}

  /** Serves an unserved dish where that weighs less; is it served? */
  boolean feed(int dish) {
    return !trial.isServed(dish)
        && new Looking(dish).path().filter(it -> refilling.isBetter(() -> take(it))).isPresent();
  }

  private void take(List<Taking> path) {
    path.forEach(taking -> trial.serve(taking.dish(), -1));
    path.forEach(taking -> trial.serve(taking.dish(), taking.way()));
    refilling.weigh();
    if (refilling.isPossible()) {
      path.forEach(taking -> refilling.serveSooner(taking.dish()));
    }
  }

  private Menu.Way way(Taking taking) {
    return dishes().get(taking.dish()).ways().get(taking.way());
  }

  /** Is there enough for a dish where another gives up its food? */
  private boolean isEnough(Taking taking, int giver) {
    ItemStock stock = trial.stock(way(taking).item());
    Menu.Way given = trial.way(giver);
    stock.eat(given.day(), -given.pieces());
    stock.eat(way(taking).day(), way(taking).pieces());
    boolean enough = trial.lackingOn(way(taking).item()) < 0;
    stock.eat(way(taking).day(), -way(taking).pieces());
    stock.eat(given.day(), given.pieces());
    return enough;
  }

  /** A search for a path from a dish, breadth first. */
  private final class Looking {
    private final double lost;
    private final Deque<Integer> next = new ArrayDeque<>();
    private final BitSet seen = new BitSet();
    private final Map<Integer, Taking> takenBy = new HashMap<>();

    Looking(int dish) {
      lost = dishes().get(dish).lost();
      next.add(dish);
      seen.set(dish);
    }

    /** The last taking first; empty where there is none. */
    Optional<List<Taking>> path() {
      Optional<Taking> last = Optional.empty();
      while (last.isEmpty() && !next.isEmpty()) {
        int dish = next.remove();
        Taking by = takenBy.get(dish);
        if (by == null || isEnough(by, dish)) {
          last = ofAny(dish);
        }
      }
      return last.map(this::backFrom);
    }

    /** Of what is left over, or of what a dish gives up that loses less; tried in any order. */
    private Optional<Taking> ofAny(int dish) {
      List<Menu.Way> ways = dishes().get(dish).ways();
      if (ways.isEmpty()) {
        return Optional.empty();
      }
      BitSet given = given(dish);
      int first = chance.below(ways.size());
      boolean may = refilling.outlook().maySpareAny(dish);
      for (int n = 0; may && n < ways.size(); n++) {
        int w = (first + n) % ways.size();
        if (!given.get(ways.get(w).item()) && refilling.outlook().maySpare(dish, ways.get(w))) {
          return Optional.of(new Taking(dish, w));
        }
      }
      for (int n = 0; n < ways.size() && takenBy.size() < MOST_GIVERS; n++) {
        int w = (first + n) % ways.size();
        Optional<Taking> of =
            given.get(ways.get(w).item()) ? Optional.empty() : ofAnother(new Taking(dish, w));
        if (of.isPresent()) {
          return of;
        }
      }
      return Optional.empty();
    }

    /** Items that somebody on the path to a dish gives up. */
    private BitSet given(int dish) {
      BitSet given = new BitSet();
      for (Taking by = takenBy.get(dish); by != null; by = takenBy.get(by.dish())) {
        given.set(way(by).item());
      }
      return given;
    }

    /** A dish that loses less gives up its food; others are remembered. */
    private Optional<Taking> ofAnother(Taking taking) {
      int lacking = refilling.outlook().lacking(way(taking));
      BitSet eaters = trial.servings().eaters(way(taking).item());
      for (int d = eaters.nextSetBit(0);
          d >= 0 && takenBy.size() < MOST_GIVERS;
          d = eaters.nextSetBit(d + 1)) {
        if (!seen.get(d) && trial.way(d).pieces() >= lacking) {
          seen.set(d);
          takenBy.put(d, taking);
          if (dishes().get(d).lost() < lost - LESS && isEnough(taking, d)) {
            return Optional.of(new Taking(d, -1));
          }
          next.add(d);
        }
      }
      return Optional.empty();
    }

    private List<Taking> backFrom(Taking last) {
      List<Taking> path = new ArrayList<>();
      for (Taking taking = last; taking != null; taking = takenBy.get(taking.dish())) {
        path.add(taking);
      }
      return path;
    }
  }
}
