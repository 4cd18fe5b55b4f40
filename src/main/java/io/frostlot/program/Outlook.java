package io.frostlot.program;

import java.util.BitSet;

/** What a change of meals in a {@link Trial} could come to at best, told without making it. */
final class Outlook {
  private final Menu menu;
  private final Servings servings;
  private final Stocks stocks;
  private final long[] beyond;
  private final double ofShortfall;

  /**
   * Of a trial.
   *
   * @param beyond by how much promises are broken now
   * @param ofShortfall money that a unit of shortfall weighs as much as
   */
  Outlook(Menu menu, Servings servings, Stocks stocks, long[] beyond, double ofShortfall) {
    this.menu = menu;
    this.servings = servings;
    this.stocks = stocks;
    this.beyond = beyond;
    this.ofShortfall = ofShortfall;
  }

  /** Items of which pieces may be eaten more on some day. */
  BitSet sparing() {
    return stocks.sparing();
  }

  /** May a dish be served otherwise, as far as can be told at once? */
  boolean maySpareAny(int dish) {
    return servings.isServed(dish) || menu.dishes().get(dish).eats(stocks.sparing());
  }

  /** May a dish be served so, as far as can be told at once? */
  boolean maySpare(int dish, Menu.Way other) {
    boolean same = servings.isServed(dish) && servings.way(dish).item() == other.item();
    return isEnough(other, same ? servings.way(dish).pieces() : 0);
  }

  /** Pieces that another must give up at least to serve a dish so. */
  int lacking(Menu.Way other) {
    return other.pieces() - stocks.spare(other.item(), other.day());
  }

  /** May it be served so for certain, whatever else was eaten since all was weighed? */
  boolean surelySpares(Menu.Way way) {
    int since = stocks.of(way.item()).eatenSince();
    return stocks.spare(way.item(), way.day()) - since >= way.pieces();
  }

  private boolean isEnough(Menu.Way way, int more) {
    return stocks.spare(way.item(), way.day()) + more >= way.pieces();
  }

  /**
   * Could it come below a weight, were a dish served in another way?
   *
   * @param now what it weighs
   */
  boolean mayBeBelow(double least, double now, int dish, int way) {
    return stocks.tooMuch() > 0 || now + relief() + more(dish, way) < least;
  }

  /** The same of two dishes. */
  boolean mayBeBelow(double least, double now, int a, int wayA, int b, int wayB) {
    return stocks.tooMuch() > 0
        || now + relief() + more(a, wayA) + more(b, wayB) < least
        || menu.dishes().get(a).isOfSameEater(menu.dishes().get(b));
  }

  private double relief() {
    return -ofShortfall * stocks.lacking();
  }

  /** What it would weigh more at least, but for what stocks lack. */
  double more(int dish, int way) {
    Menu.Dish it = menu.dishes().get(dish);
    Menu.Way other = it.ways().get(way);
    boolean served = servings.isServed(dish);
    double money = other.late() - (served ? servings.way(dish).late() : it.bought());
    double spared = stocks.spared(other.item(), other.pieces(), other.day());
    double shorter = servings.further(dish, way) - (served ? 0 : Weighing.OF_A_MEAL * it.unmet());
    for (int promise : it.promises()) {
      shorter -= beyond[promise];
    }
    return money - spared + ofShortfall * shorter;
  }
}
