package io.frostlot.report;

import io.frostlot.plan.BoxFill;
import io.frostlot.plan.BoxRoom;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Order;
import io.frostlot.supply.Supplier;
import java.util.List;
import java.util.stream.Collectors;

/** Room in the boxes of the next orders, and what is worth adding. */
record LeftInTheBox(BoxRoom room) implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    page.heading("What is left in the box");
    page.say("In the boxes that are paid for; later orders come on the same days.");
    room.orders().forEach(left -> page.point(line(report, left)));
  }

  private static String line(PlanReport report, BoxRoom.Left left) {
    Supplier supplier = report.world().supplier(left.slot().supplier());
    return "%s, %s: room for %s. %s."
        .formatted(
            supplier.name(),
            OrderBlock.when(supplier, left.slot()),
            room(left),
            said(report, left));
  }

  /** Such as "3.2 kg and 40 pieces". */
  private static String room(BoxRoom.Left left) {
    return left.boxes().stream().map(LeftInTheBox::room).collect(Collectors.joining(" and "));
  }

  private static String room(BoxFill.Fill boxes) {
    return Wording.decimal(boxes.room()) + Wording.NO_BREAK + OrderBlock.unit(boxes.unit());
  }

  private static String said(PlanReport report, BoxRoom.Left left) {
    List<BoxRoom.Addition> addition = left.addition();
    return switch (left.verdict()) {
      case NO_PACK_FITS -> "No pack fits into it";
      case NOTHING ->
          "Nothing that fits saves money"
              + addition.stream()
                  .filter(it -> it.difference().sameMeals())
                  .map(
                      it ->
                          "; the best addition found, %s, %s"
                              .formatted(packs(report, it), costs(report, it)))
                  .collect(Collectors.joining());
      case SAVES -> "The best addition found is " + verdict(report, addition.get(0));
      case CANNOT_TELL ->
          addition.isEmpty()
              ? "Cannot tell what is worth adding: no plan with more that is eaten was found in the time"
              : "Cannot tell whether something is worth adding; the best found is "
                  + verdict(report, addition.get(0));
    };
  }

  private static String costs(PlanReport report, BoxRoom.Addition addition) {
    return new Differences(report.wording()).saves(addition.difference().found());
  }

  private static String verdict(PlanReport report, BoxRoom.Addition addition) {
    Difference difference = addition.difference();
    return packs(report, addition) + ": " + new Differences(report.wording()).verdict(difference);
  }

  private static String packs(PlanReport report, BoxRoom.Addition addition) {
    return addition.packs().stream()
        .map(packs -> packs(report, packs))
        .collect(Collectors.joining(" and "));
  }

  private static String packs(PlanReport report, Order.Content packs) {
    return "%d x %s, pack of %d"
        .formatted(packs.packs(), report.names().of(packs.pack().item()), packs.pack().pieces());
  }
}
