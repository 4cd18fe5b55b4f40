package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Order;
import io.frostlot.plan.Simplest;
import java.util.stream.Collectors;

/** Fewer orders for little more money, where that can be had. */
record SimplestPlan(Simplest simplest) implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    int shown = report.plan().orders().size();
    if (shown == 0) {
      return;
    }
    page.heading("The simplest plan within " + simplest.within() + " %");
    if (simplest.plan().isEmpty()) {
      page.say(
          simplest.sure()
              ? "It is the one shown: with fewer orders, no plan does the same for so little more."
              : "With fewer orders none was found that does the same for so little more; there may"
                  + " be one.");
      return;
    }
    simplest.plan().forEach(plan -> write(report, plan, page));
  }

  private void write(PlanReport report, Answer.Judged simpler, Page page) {
    int before = report.plan().orders().size();
    int after = simpler.plan().orders().size();
    double more =
        simpler.standing().money().toDouble()
            - report.answer().plan().standing().money().toDouble();
    page.say(
        "%s in place of %d do the same and cost %s: %s."
            .formatted(
                Wording.count(after, "order", "orders"),
                before,
                cost(report.wording(), more),
                simplest.sure() ? "fewer are not enough" : "perhaps fewer would do"));
    simpler.plan().orders().forEach(order -> page.point(line(report.names(), order)));
  }

  private static String cost(Wording wording, double more) {
    if (wording.isNothing(more)) {
      return "the same";
    }
    return more > 0 ? wording.atMost(more) + " more" : wording.atLeast(-more) + " less";
  }

  private static String line(Names names, Order order) {
    return order.lines().stream()
        .map(
            line ->
                "%d x %s, pack of %d"
                    .formatted(line.packs(), names.of(line.pack().item()), line.pack().pieces()))
        .collect(
            Collectors.joining(
                "; ",
                "%s, order by %s: "
                    .formatted(
                        names.supplier(order.slot().supplier()),
                        Wording.day(order.slot().ordered())),
                "."));
  }
}
