package io.frostlot.program;

import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * A plan in plain numbers that can be changed and weighed thousands of times a second: dishes and
 * how they are served, packs of each delivery and where they lie. What it comes to is what the
 * rules make of a plan, but for those that are asked only of the finished one.
 */
final class Trial {
  private final Menu menu;
  private final Deliveries deliveries;
  private final Stocks stocks;
  private final Baskets baskets;
  private final Undo undo;
  private final Weighing weighing;
  private final Servings servings;
  private final long[] beyond;
  private final BitSet itemsToWeigh = new BitSet();
  private final BitSet promisesToWeigh = new BitSet();
  private final BitSet ordersToWeigh = new BitSet();
  private Amounts amounts = Amounts.NOTHING;

  /**
   * Nobody eats, and nothing is ordered.
   *
   * @param undo of the stocks too
   */
  Trial(Menu menu, Deliveries deliveries, Stocks stocks, Undo undo, Weighing weighing) {
    this.menu = menu;
    this.deliveries = deliveries;
    this.stocks = stocks;
    this.undo = undo;
    this.weighing = weighing;
    servings = new Servings(menu, stocks.items(), stocks.days());
    beyond = new long[menu.promises()];
    baskets = new Baskets(deliveries);
    for (Menu.Dish dish : menu.dishes()) {
      amounts = with(dish, -1, amounts, 1);
    }
    itemsToWeigh.set(0, stocks.items());
  }

  private static Amounts with(Menu.Dish dish, int way, Amounts amounts, int times) {
    return way < 0
        ? amounts.plusUnmet(times * dish.unmet()).plusMoney(times * dish.bought())
        : amounts.plusMoney(times * dish.ways().get(way).late());
  }

  Menu menu() {
    return menu;
  }

  /** What changes of meals could come to. */
  Outlook outlook() {
    return new Outlook(menu, servings, stocks, beyond, weighing.ofShortfall());
  }

  /** Number of the way in which a dish is served; -1 where it is not. */
  int served(int dish) {
    return servings.of(dish);
  }

  boolean isServed(int dish) {
    return servings.isServed(dish);
  }

  Menu.Way way(int dish) {
    return servings.way(dish);
  }

  int packs(int delivery, int row) {
    return baskets.packs(delivery, row);
  }

  int[] packs(int delivery) {
    return baskets.packs(delivery);
  }

  /** Deliveries by which something comes, in order. */
  List<Integer> open() {
    return baskets.open().stream().boxed().toList();
  }

  boolean isOpen(int delivery) {
    return baskets.isOpen(delivery);
  }

  ItemStock stock(int item) {
    return stocks.of(item);
  }

  /** Pieces and piece-days that are lacking for safety. */
  int lacking() {
    return stocks.lacking();
  }

  /** The first day on which an item is lacking; -1 where there is enough. */
  int lackingOn(int item) {
    return stocks.lackingOn(item);
  }

  /** Items of which more pieces might be enough for safety. */
  BitSet lackingItems() {
    return stocks.lackingItems();
  }

  /** What it came to when it was weighed last, or when it was changed since. */
  Amounts amounts() {
    return amounts.plusShortfall((double) stocks.lacking() + baskets.overBudget());
  }

  boolean fits() {
    return stocks.tooMuch() == 0 && baskets.offPledged() == 0;
  }

  /** To come back to; only where nothing is left to weigh. */
  int mark() {
    return undo.mark();
  }

  /** Takes back all changes since a mark. */
  void backTo(int mark) {
    undo.backTo(mark);
    clear();
  }

  private void clear() {
    itemsToWeigh.stream().forEach(item -> stocks.of(item).asWalked());
    itemsToWeigh.clear();
    promisesToWeigh.clear();
    ordersToWeigh.clear();
  }

  void keep() {
    undo.forget();
  }

  /** Serves a dish in another way; -1 not at all. */
  void serve(int dish, int way) {
    int before = servings.of(dish);
    Amounts amountsBefore = amounts;
    Menu.Dish it = menu.dishes().get(dish);
    double further = take(dish, way);
    amounts = with(it, way, with(it, before, amounts, -1), 1).plusShortfall(further);
    undo.add(
        () -> {
          take(dish, before);
          amounts = amountsBefore;
        });
    it.promises().forEach(promisesToWeigh::set);
  }

  private double take(int dish, int way) {
    eat(dish, -1);
    double further = servings.serve(dish, way);
    eat(dish, 1);
    return further;
  }

  private void eat(int dish, int times) {
    if (isServed(dish)) {
      Menu.Way way = way(dish);
      stocks.of(way.item()).eat(way.day(), times * way.pieces());
      itemsToWeigh.set(way.item());
    }
  }

  Servings servings() {
    return servings;
  }

  /** Buys packs more, or fewer, without saying where they lie. */
  void buy(int delivery, int row, int count) {
    baskets.bring(delivery, row, count);
    ordersToWeigh.set(delivery);
    undo.add(() -> baskets.bring(delivery, row, -count));
  }

  /** Puts pieces of an item more, or fewer, into a batch. */
  void put(int item, int batch, int pieces) {
    stocks.of(item).put(batch, pieces);
    itemsToWeigh.set(item);
    undo.add(() -> stocks.of(item).put(batch, -pieces));
  }

  /**
   * What it all weighs, as one number.
   *
   * @return infinite where there are too few pieces of an item, or an order cannot be: to be taken
   *     back
   */
  double weigh() {
    Amounts before = amounts;
    undo.add(() -> amounts = before);
    boolean possible = each(ordersToWeigh, this::weighOrder) && each(itemsToWeigh, this::weighItem);
    each(promisesToWeigh, this::weighPromise);
    clear();
    return possible
        ? weighing.of(amounts(), stocks.tooMuch(), baskets.offPledged())
        : Double.POSITIVE_INFINITY;
  }

  /** One after the other, as long as they are possible. */
  private static boolean each(BitSet some, IntPredicate isPossible) {
    int one = some.nextSetBit(0);
    while (one >= 0 && isPossible.test(one)) {
      one = some.nextSetBit(one + 1);
    }
    return one < 0;
  }

  private boolean weighOrder(int delivery) {
    double before = baskets.cost(delivery);
    double cost = baskets.costNow(delivery);
    if (cost == Double.POSITIVE_INFINITY) {
      return false;
    }
    amounts = amounts.plusMoney(baskets.keepCost(delivery, cost));
    undo.add(() -> baskets.keepCost(delivery, before));
    if (cost > 0 != before > 0) {
      stocks.comes(deliveries.get(delivery).slot(), cost > 0);
      itemsToWeigh.set(0, stocks.items());
    }
    return true;
  }

  private boolean weighItem(int item) {
    double more = stocks.walk(item);
    amounts = amounts.plusMoney(more == Double.POSITIVE_INFINITY ? 0 : more);
    return more < Double.POSITIVE_INFINITY;
  }

  private boolean weighPromise(int promise) {
    long before = beyond[promise];
    beyond[promise] = servings.beyond(promise);
    amounts = amounts.plusShortfall((double) (beyond[promise] - before));
    undo.add(() -> beyond[promise] = before);
    return true;
  }
}
