package io.frostlot.program;

import io.frostlot.plan.Lot;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * One item in one freezer over time, in pieces, or a part of it; where a piece that is past its
 * best is charged for, what is eaten before that and what is eaten after are flows of their own.
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
  private final Shelf shelf;
  private final ItemDays days;
  private final boolean coarse;
  private final boolean forSafety;
  private final List<Part> parts = new ArrayList<>();
  private final Var[] stock;
  private final Linear[] thrown;
  private final Linear[] eaten;

  /**
   * What flows together.
   *
   * @param pastBest eaten after its best before
   */
  record Shelf(Item item, Freezer freezer, boolean pastBest) {}

  /**
   * When pieces come.
   *
   * @param arrives the same as {@code earliest}, as a day, where days are taken together too
   * @param earliest take room from this day
   * @param latest are surely there from this day
   */
  record Coming(int arrives, int earliest, int latest) {}

  /**
   * Pieces of a lot that are eaten in a flow; until they are part of it they only take room.
   *
   * @param lot which, as far as it is known before its pieces are counted
   * @param from can be eaten from this day
   * @param until last day on which they are part of the flow
   */
  record Part(Lot lot, Coming coming, int from, int until, Linear pieces) {
    /** There before the first day, so never a delivery. */
    boolean inHand() {
      return lot.origin() instanceof Lot.InHand;
    }

    /** Do they come on the day from which they can be eaten? */
    boolean isDelivered() {
      return !inHand() && from == coming.latest();
    }

    /** First day at whose start they may be thrown away, a delivery not on its own day. */
    int throwableFrom() {
      return isDelivered() ? from + 1 : from;
    }

    /** Can be eaten on every day of a span. */
    boolean coversDays(int first, int last) {
      return from <= first && until >= last;
    }

    /** Takes room on a day without being part of the flow yet. */
    boolean waits(int day) {
      return coming.earliest() <= day && day < from && day <= until;
    }
  }

  Flow(Shelf shelf, Timeline timeline, Model model) {
    days = timeline.of(shelf.item());
    this.shelf = shelf;
    coarse = timeline.grain().takesDaysTogether();
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
                        * Integer.compare(part.until(), added.until())
                    >= 0);
  }

  /** Adds pieces that come; on their day some, or others, may be marked for throwing away. */
  void add(Part part, Model model) {
    parts.add(part);
    int k = days.interval(part.from());
    if (!coarse && part.isDelivered() && part.from() <= days.last() && thrown[k].hasNoTerms()) {
      thrown[k].plus(1, level(model));
    }
  }

  /** Whole by itself where what is eaten is whole, but not where safety and room are weighed. */
  private Var level(Model model) {
    return forSafety ? model.follows(0, Model.INFINITY) : model.real(0, Model.INFINITY);
  }

  Shelf shelf() {
    return shelf;
  }

  Item item() {
    return shelf.item();
  }

  Freezer freezer() {
    return shelf.freezer();
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
      if (part.from() == from) {
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
    return left(night, until, freezer -> true);
  }

  /** The same of what lies in some freezers only, by name. */
  Linear left(int night, int until, Predicate<String> freezers) {
    return lying(night, until + 1, part -> part.coming().latest() <= night, freezers);
  }

  /**
   * Pieces that lie in some freezers on a day, less what meals of its interval take before another.
   *
   * @param counted of those that only take room yet
   */
  private Linear lying(int day, int before, Predicate<Part> counted, Predicate<String> freezers) {
    Linear sum = new Linear();
    if (freezers.test(freezer().name())) {
      int interval = days.interval(day);
      sum.plus(1, stock[interval]).minus(eatenBefore(interval, before));
      if (day == days.intervals()[interval]) {
        sum.plus(thrown[interval]);
      }
    }
    for (Part part : parts) {
      if (part.waits(day)
          && counted.test(part)
          && freezers.test(part.lot().freezerOn(Timeline.date(day)))) {
        sum.plus(part.pieces());
      }
    }
    return sum;
  }

  /** What meals take from one first day of a segment to another, that one left out. */
  Linear eatenBetween(int from, int before) {
    Linear sum = new Linear();
    for (int s = days.segment(from); s < eaten.length && days.segments()[s] < before; s++) {
      sum.plus(eaten[s]);
    }
    return sum;
  }

  /** Does anything of it ever lie in a freezer? */
  boolean takesRoomIn(Freezer in) {
    return freezer().equals(in)
        || parts.stream().anyMatch(part -> part.lot().firstFreezer().equals(in.name()));
  }

  /**
   * Pieces that take room in a freezer on a day before its meals; after them where {@code
   * afterMeals}.
   */
  Linear present(Freezer in, int day, boolean afterMeals) {
    return lying(day, afterMeals ? day + 1 : day, part -> true, in.name()::equals);
  }
}
