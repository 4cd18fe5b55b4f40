package io.frostlot.program;

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

  List<Integer> unserved() {
    return trial.servings().unserved().stream().boxed().toList();
  }

  /** Those that are unserved and could be of these items. */
  List<Integer> unserved(BitSet items) {
    BitSet some = trial.menu().eating(items);
    some.and(trial.servings().unserved());
    return some.stream().boxed().toList();
  }

  /** Those that are served of an item on a day. */
  List<Integer> servedOf(int item, int day) {
    return trial.servings().eaters(item).stream()
        .filter(dish -> trial.way(dish).day() == day)
        .boxed()
        .toList();
  }

  /** Each of some dishes is served as weighs least, those that weigh most first. */
  void refill(Collection<Integer> some) {
    List<Integer> order = byLoss(some);
    if (!inOneGo.suits(order) || !inOneGo.serve(order)) {
      order.forEach(dish -> serveBest(dish, ANY));
    }
  }

  /** Those that lose most where they are not served first, those that lose as much in any order. */
  List<Integer> byLoss(Collection<Integer> some) {
    List<Integer> order = chance.shuffled(some);
    order.sort(Comparator.comparingDouble(d -> -dishes.get(d).lost()));
    return order;
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
    for (int w = 0; w < ways.size() && outlook.maySpareAny(dish); w++) {
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
