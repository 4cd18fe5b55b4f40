package io.frostlot.app;

import io.frostlot.plan.Invoice;
import io.frostlot.plan.Order;
import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Map;

/**
 * What the invoices of the joint orders of a part of a group are expected to say.
 *
 * @param collected what its keepers get of them
 */
record ExpectedInvoices(Shared.Part part, List<Shared.Collected> collected, int decimals) {

  List<Invoice> all() {
    return part.plan().orders().stream().filter(part::isJoint).map(this::of).toList();
  }

  private Invoice of(Order order) {
    Money total = part.answer().plan().books().ledger(order.slot()).total().rounded(decimals);
    return new Invoice(
        new Invoice.Head(order.slot().supplier(), order.slot().ordered(), part.host(), total),
        order.lines().stream()
            .map(line -> new Invoice.Line(line.pack(), line.packs(), line.pack().price()))
            .toList(),
        collected.stream()
            .filter(some -> some.order().equals(order))
            .map(ExpectedInvoices::portion)
            .toList(),
        List.of(),
        Map.of(),
        Map.of());
  }

  private static Invoice.Portion portion(Shared.Collected some) {
    return new Invoice.Portion(
        some.portion().keeper(),
        new Invoice.Bag(some.portion().pack(), some.portion().bag()),
        some.portion().pieces(),
        some.wanted());
  }
}
