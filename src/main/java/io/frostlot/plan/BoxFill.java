package io.frostlot.plan;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How full one box of an order is.
 *
 * @param contents packs in it; empty where a supplier counts boxes by the order's totals
 * @param tightest the limit that is used most
 */
public record BoxFill(List<Order.Content> contents, Fill tightest) {
  public BoxFill {
    contents = List.copyOf(contents);
  }

  /** What a limit of a box is measured in. */
  public enum Unit {
    KILOGRAMS,
    LITRES,
    PIECES,
    /** No limit is stated. */
    NONE
  }

  /** Use of a limit, in its unit. */
  public record Fill(Unit unit, double used, double limit) {
    private static final Fill OPEN = new Fill(Unit.NONE, 0, 1);

    public double share() {
      return used / limit;
    }

    /** What is left of the limit. */
    public double room() {
      return limit - used;
    }
  }

  /** One entry per box; by totals, every box but the last is full by its tightest limit. */
  public static List<BoxFill> of(Boxing boxing, Order order) {
    List<BoxFill> boxes = new ArrayList<>();
    order
        .boxes()
        .contents()
        .forEach(contents -> boxes.add(new BoxFill(contents, tightest(boxing.limits(), contents))));
    if (boxes.isEmpty()) {
      Fill total = tightest(boxing.limits(), contents(order));
      for (int box = 0; box < order.boxes().count(); box++) {
        double used = Math.max(0, Math.min(total.limit(), total.used() - box * total.limit()));
        boxes.add(new BoxFill(List.of(), new Fill(total.unit(), used, total.limit())));
      }
    }
    return boxes;
  }

  /** All boxes of an order taken together, one for each limit that is stated. */
  public static List<Fill> together(Boxing boxing, Order order) {
    int boxes = order.boxes().count();
    return fills(boxing.limits(), contents(order)).stream()
        .map(fill -> new Fill(fill.unit(), fill.used(), boxes * fill.limit()))
        .toList();
  }

  private static List<Order.Content> contents(Order order) {
    return order.lines().stream()
        .map(line -> new Order.Content(line.pack(), line.packs()))
        .toList();
  }

  private static Fill tightest(Boxing.Limits limits, List<Order.Content> contents) {
    return fills(limits, contents).stream()
        .reduce((a, b) -> b.share() > a.share() ? b : a)
        .orElse(Fill.OPEN);
  }

  private static List<Fill> fills(Boxing.Limits limits, List<Order.Content> contents) {
    List<Fill> fills = new ArrayList<>();
    if (!limits.grams().isUnlimited()) {
      double grams =
          sum(contents.stream().map(c -> c.packs() * c.pack().packed().grams().toDouble()));
      fills.add(new Fill(Unit.KILOGRAMS, grams / 1000, limits.grams().toDouble() / 1000));
    }
    if (!limits.litres().isUnlimited()) {
      double litres =
          sum(contents.stream().map(c -> c.packs() * c.pack().packed().litres().toDouble()));
      fills.add(new Fill(Unit.LITRES, litres, limits.litres().toDouble()));
    }
    if (limits.pieces() != Pack.UNLIMITED) {
      double pieces = sum(contents.stream().map(c -> (double) c.packs() * c.pack().pieces()));
      fills.add(new Fill(Unit.PIECES, pieces, limits.pieces()));
    }
    return fills;
  }

  private static double sum(Stream<Double> amounts) {
    return amounts.mapToDouble(amount -> amount).sum();
  }
}
