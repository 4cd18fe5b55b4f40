package io.frostlot.report;

import io.frostlot.plan.BoxFill;
import io.frostlot.plan.Order;
import io.frostlot.supply.Supplier;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The limits that are used most: of freezers on their fullest day, and of boxes. */
final class WhatIsTight implements Sections.Section {
  private static final double WORTH_SHOWING = 0.7;
  private static final int MOST_SHOWN = 6;

  private record Limit(double share, String used, String where) {}

  @Override
  public void write(PlanReport report, Page page) {
    List<Limit> tight =
        Stream.concat(freezers(report), boxes(report))
            .filter(limit -> limit.share() >= WORTH_SHOWING)
            .sorted(Comparator.comparingDouble((Limit limit) -> -limit.share()))
            .limit(MOST_SHOWN)
            .toList();
    if (tight.isEmpty()) {
      return;
    }
    page.heading("What is tight");
    Table table = Table.of(">full", ">used", "where");
    tight.forEach(limit -> table.row(Wording.percent(limit.share()), limit.used(), limit.where()));
    page.table(table);
  }

  private static Stream<Limit> freezers(PlanReport report) {
    return report.books().uses().stream()
        .filter(use -> use.limit() > 0)
        .map(
            use ->
                new Limit(
                    use.used() / use.limit(),
                    used(use.used(), use.limit(), "l"),
                    Wording.inWords(use.where())));
  }

  private static Stream<Limit> boxes(PlanReport report) {
    return report.plan().orders().stream().flatMap(order -> boxes(report, order));
  }

  private static Stream<Limit> boxes(PlanReport report, Order order) {
    Supplier supplier = report.world().supplier(order.slot().supplier());
    List<BoxFill> boxes = BoxFill.of(supplier.boxing(), order);
    return boxes.stream()
        .map(BoxFill::tightest)
        .filter(fill -> fill.unit() != BoxFill.Unit.NONE)
        .max(Comparator.comparingDouble(BoxFill.Fill::share))
        .map(
            fill ->
                new Limit(
                    fill.share(),
                    used(fill.used(), fill.limit(), OrderBlock.unit(fill.unit())),
                    "%s of %s, order by %s"
                        .formatted(
                            boxes.size() == 1 ? "the box" : "a box",
                            supplier.name(),
                            Wording.day(order.slot().ordered()))))
        .stream();
  }

  private static String used(double used, double limit, String unit) {
    return "%s of %s %s".formatted(Wording.decimal(used), Wording.decimal(limit), unit);
  }
}
