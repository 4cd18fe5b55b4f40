package io.frostlot.program;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Feeds animals of a {@link Trial} otherwise from what there is, where that weighs less. */
final class Refilling {
  /** All items. */
  static final BitSet ANY = new BitSet();

  static final double BETTER = 1e-6;

  private final Trial trial;
  private final Outlook outlook;
  private final List<Menu.Dish> dishes;
  private final Chance chance;
  private final InOneGo inOneGo;
  private double weight;

  Refilling(Trial trial, Chance chance) {
    this.trial = trial;
    outlook = trial.outlook();
    this.chance = chance;
    dishes = trial.menu().dishes();
    weight = trial.weigh();
    inOneGo = new InOneGo(trial, this);
  }

  /** What the trial weighs. */
  double weight() {
    return weight;
  }

  boolean isPossible() {
    return weight < Double.POSITIVE_INFINITY;
  }

  /** After a change. */
  void weigh() {
    weight = trial.weigh();
  }

  void backTo(int mark, double before) {
    trial.backTo(mark);
    weight = before;
  }

  BitSet unserved() {
    return trial.servings().unserved();
  }

  /** Those that are unserved and could be of these items. */
  BitSet unserved(BitSet items) {
    BitSet some = trial.menu().eating(items);
    some.and(unserved());
    return some;
  }

  /** Some that are unserved are served as weighs least, if something can be spared for them. */
  void refill(BitSet some) {
    BitSet may = trial.menu().eating(outlook.sparing());
    may.and(some);
    refill(may.stream().boxed().toList());
  }

  /** Each of some dishes is served as weighs least, those that weigh most first. */
  void refill(Collection<Integer> some) {
    List<Integer> order = byLoss(some);
    if (!inOneGo.suits(order) || !inOneGo.serve(order)) {
      order.forEach(dish -> serveBest(dish, ANY));
    }
  }

  /** Those that lose most where they are not served first, those that lose as much in any order. */
  private List<Integer> byLoss(Collection<Integer> some) {
    List<Integer> order = chance.shuffled(some);
    order.sort(Comparator.comparingDouble(d -> -dishes.get(d).lost()));
    return order;
  }

  /** Those that lose most where they are not served, of those that lose as much any. */
  List<Integer> mostLost(BitSet some, int most) {
    List<Integer> found = new ArrayList<>();
    int first = some.isEmpty() ? 0 : chance.below(some.length());
    for (int d = some.nextSetBit(first); d >= 0; d = some.nextSetBit(d + 1)) {
      keep(d, found, most);
    }
    for (int d = some.nextSetBit(0); d >= 0 && d < first; d = some.nextSetBit(d + 1)) {
      keep(d, found, most);
    }
    return found;
  }

  /** Among the few that lose most, in order. */
  private void keep(int dish, List<Integer> found, int most) {
    int place = found.size();
    while (place > 0 && dishes.get(found.get(place - 1)).lost() < dishes.get(dish).lost()) {
      place--;
    }
    if (place < most) {
      found.add(place, dish);
    }
    if (found.size() > most) {
      found.remove(most);
    }
  }

  /**
   * Serves a dish as weighs least; is it served better than before?
   *
   * @param items of some items only; of any where none are named
   */
  boolean serveBest(int dish, BitSet items) {
    List<Menu.Way> ways = dishes.get(dish).ways();
    int best = -1;
    double least = weight - BETTER;
    int looks = outlook.maySpareAny(dish) ? ways.size() : 0;
    for (int w = 0; w < looks; w++) {
      Menu.Way way = ways.get(w);
      if (w == trial.served(dish)
          || !(items.isEmpty() || items.get(way.item()))
          || !outlook.maySpare(dish, way)
          || !outlook.mayBeBelow(least, weight, dish, w)) {
        continue;
      }
      int mark = trial.mark();
      trial.serve(dish, w);
      double other = trial.weigh();
      trial.backTo(mark);
      if (other < least) {
        least = other;
        best = w;
      }
    }
    if (best >= 0) {
      trial.serve(dish, best);
      weigh();
    }
    return best >= 0;
  }

  /** A late meal is eaten as weighs least. */
  void serveSooner(int dish) {
    if (trial.isServed(dish) && trial.way(dish).late() > 0) {
      serveBest(dish, ANY);
    }
  }

  /** Items of which a dish would fall less short, were they there. */
  BitSet better(int dish) {
    BitSet better = new BitSet();
    double now = trial.amounts().shortfall();
    for (int w = 0; w < dishes.get(dish).ways().size(); w++) {
      int mark = trial.mark();
      trial.serve(dish, w);
      if (trial.amounts().shortfall() < now - BETTER) {
        better.set(trial.way(dish).item());
      }
      trial.backTo(mark);
    }
    return better;
  }

  Outlook outlook() {
    return outlook;
  }

  /** Makes a change, and takes it back where it does not weigh less; was it kept? */
  boolean isBetter(Runnable change) {
    int mark = trial.mark();
    double before = weight;
    change.run();
    boolean better = weight < before - BETTER;
    if (!better) {
      backTo(mark, before);
    }
    return better;
  }

  /** Dishes that would be better served of these items take them. */
  void attract(BitSet items) {
    refill(unserved(items));
    Servings servings = trial.servings();
    List<Integer> wanting =
        servings.dishesOutside(servings.outside()).stream()
            .filter(dish -> dishes.get(dish).eats(items))
            .toList();
    chance.shuffled(wanting).forEach(dish -> serveBest(dish, items));
    refill(unserved(items));
  }
}
