package io.frostlot.program;

import io.frostlot.plan.Lot;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import java.util.ArrayList;
import java.util.List;

/**
 * One item in one freezer over time, in pieces, or a part of it.
 *
 * <p>With k an interval of the item: {@code stock[k]} is what is there and kept after the arrivals
 * on its first day, before the meals; {@code thrown[k]} is there that day too and thrown away at
 * the start of the next (nothing where days are taken together); {@code eaten[s]} is what the meals
 * of segment s take.
 *
 * <p>What comes first is past its use-by first: pieces that would break that order are a flow of
 * their own. So the oldest can always be the first to go, and numbers of pieces say enough.
 */
final class Flow {
  private final Item item;
  private final Freezer freezer;
  private final ItemDays days;
  private final boolean coarse;
  private final boolean forSafety;
  private final List<Part> parts = new ArrayList<>();
  private final Var[] stock;
  private final Linear[] thrown;
  private final Linear[] eaten;

  /**
   * Pieces that come together.
   *
   * @param arrives the same as {@code earliest}, as a day, where days are taken together too
   * @param earliest takes room from this day
   * @param latest can be eaten from this day
   * @param useBy last usable day
   * @param origin where they come from
   */
  record Part(int arrives, int earliest, int latest, int useBy, Lot.Origin origin, Linear pieces) {
    /** There before the first day, so never a delivery. */
    boolean inHand() {
      return origin instanceof Lot.InHand;
    }

    /** First day at whose start they may be thrown away, a delivery not on its own day. */
    int throwableFrom() {
      return inHand() ? latest : latest + 1;
    }

    /** Usable on every day of a span. */
    boolean coversDays(int from, int to) {
      return latest <= from && useBy >= to;
    }
  }

  Flow(Item item, Freezer freezer, Timeline timeline, Model model) {
    ItemDays days = timeline.of(item);
    this.item = item;
    this.freezer = freezer;
    this.days = days;
    coarse = timeline.takesDaysTogether();
    forSafety = timeline.keepsForSafety();
    stock = new Var[days.intervals().length];
    thrown = new Linear[days.intervals().length];
    eaten = new Linear[days.segments().length];
    for (int k = 0; k < stock.length; k++) {
      stock[k] = level(model);
      thrown[k] = new Linear();
    }
    for (int s = 0; s < eaten.length; s++) {
      eaten[s] = new Linear();
    }
  }

  /** Do pieces come, and go past their use-by, in the same order as all others? */
  boolean keepsOrder(Part added) {
    return parts.stream()
        .allMatch(
            part ->
                Integer.compare(part.throwableFrom(), added.throwableFrom())
                        * Integer.compare(part.useBy(), added.useBy())
                    >= 0);
  }

  /**
   * Adds pieces that come; on their day some of them, or others, may be marked for throwing away.
   */
  void add(Part part, Model model) {
    parts.add(part);
    int k = days.interval(part.latest());
    if (!coarse && !part.inHand() && part.latest() <= days.last() && thrown[k].hasNoTerms()) {
      thrown[k].plus(1, level(model));
    }
  }

  /** Whole by itself where what is eaten is whole, but not where safety and room are weighed. */
  private Var level(Model model) {
    return forSafety ? model.follows(0, Model.INFINITY) : model.real(0, Model.INFINITY);
  }

  Item item() {
    return item;
  }

  Freezer freezer() {
    return freezer;
  }

  ItemDays days() {
    return days;
  }

  List<Part> parts() {
    return parts;
  }

  Var stock(int interval) {
    return stock[interval];
  }

  Linear thrown(int interval) {
    return thrown[interval];
  }

  Linear eaten(int segment) {
    return eaten[segment];
  }

  int intervals() {
    return stock.length;
  }

  /** Pieces that can be eaten from the first day of an interval on. */
  Linear arriving(int interval) {
    Linear sum = new Linear();
    int from = days.intervals()[interval];
    for (Part part : parts) {
      if (part.latest() == from) {
        sum.plus(part.pieces());
      }
    }
    return sum;
  }

  /** What the meals of an interval take, up to and without a day. */
  Linear eatenBefore(int interval, int day) {
    Linear sum = new Linear();
    for (int s = days.segment(days.intervals()[interval]);
        s < eaten.length
            && days.segments()[s] < day
            && days.segmentEnd(s) <= days.intervalEnd(interval);
        s++) {
      sum.plus(eaten[s]);
    }
    return sum;
  }

  Linear eatenIn(int interval) {
    return eatenBefore(interval, days.intervalEnd(interval) + 1);
  }

  /**
   * Pieces that could have been eaten on a night and are left; those in transit do not count.
   *
   * @param night a day
   * @param until the meals up to this day, of the same interval, are taken off
   */
  Linear left(int night, int until) {
    int k = days.interval(night);
    Linear left = Linear.of(stock[k]).minus(eatenBefore(k, until + 1));
    return night == days.intervals()[k] ? left.plus(thrown[k]) : left;
  }

  /** What meals take from one first day of a segment to another, that one left out. */
  Linear eatenBetween(int from, int before) {
    Linear sum = new Linear();
    for (int s = days.segment(from); s < eaten.length && days.segments()[s] < before; s++) {
      sum.plus(eaten[s]);
    }
    return sum;
  }

  /** Pieces that take room on a day before its meals; after them where {@code afterMeals}. */
  Linear present(int day, boolean afterMeals) {
    int interval = days.interval(day);
    Linear sum = Linear.of(stock[interval]);
    if (day == days.intervals()[interval]) {
      sum.plus(thrown[interval]);
    }
    sum.minus(eatenBefore(interval, afterMeals ? day + 1 : day));
    for (Part part : parts) {
      if (part.earliest() <= day && day < part.latest() && day <= part.useBy()) {
        sum.plus(part.pieces());
      }
    }
    return sum;
  }
}
