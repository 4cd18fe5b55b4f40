package io.frostlot.program;

import io.frostlot.plan.DueSoon;
import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.MovesPolicy;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.List;

/** A scenario without percentages in which every amount of money is twice as large. */
final class Doubled {
  private Doubled() {}

  static Scenario of(Scenario scenario) {
    Policy policy = scenario.policy();
    Policy.Charges charges = policy.charges();
    return scenario
        .withSuppliers(scenario.suppliers().stream().map(Doubled::of).toList())
        .withPolicy(
            new Policy(
                policy.demand(),
                policy.tail(),
                policy.freezerCheck(),
                new Policy.Charges(
                    new HoldingCharge(
                        twice(charges.holding().perPiece()), twice(charges.holding().perLitre())),
                    twice(charges.order()),
                    twice(charges.deliveryDay()),
                    twice(charges.lateMeal()),
                    twice(charges.pastBest())),
                policy.safety(),
                policy.adequacy(),
                new Policy.Ordering(
                    new Policy.Budget(
                        twice(policy.ordering().budget().perOrder()),
                        twice(policy.ordering().budget().perMonth()),
                        twice(policy.ordering().budget().spent())),
                    new Policy.Calm(
                        policy.ordering().calm().days(), twice(policy.ordering().calm().charge()))),
                new MovesPolicy(policy.moves().everyDays(), twice(policy.moves().perPiece()))));
  }

  static DueSoon of(DueSoon dueSoon) {
    return new DueSoon(dueSoon.dates(), dueSoon.orders(), twice(dueSoon.charge()));
  }

  private static Money twice(Money money) {
    return money.times(2);
  }

  private static Supplier of(Supplier supplier) {
    Supplier.PriceSheet sheet = supplier.sheet();
    return new Supplier(
        supplier.id(),
        supplier.name(),
        new Supplier.PriceSheet(
            sheet.dated(),
            sheet.packs().stream().map(Doubled::of).toList(),
            sheet.breaks().stream().map(Doubled::of).toList(),
            sheet.sales()),
        of(supplier.terms()),
        supplier.boxing(),
        of(supplier.shipping()),
        supplier.delivery());
  }

  private static Pack of(Pack pack) {
    return new Pack(
        pack.item(),
        pack.pieces(),
        twice(pack.price()),
        pack.available(),
        pack.packed(),
        pack.sorted());
  }

  private static PriceBreak of(PriceBreak priceBreak) {
    List<PriceBreak.Step> steps =
        priceBreak.steps().stream()
            .map(step -> new PriceBreak.Step(step.fromPacks(), twice(step.price())))
            .toList();
    return new PriceBreak(priceBreak.packId(), priceBreak.counting(), steps);
  }

  private static OrderTerms.Threshold of(OrderTerms.Threshold threshold) {
    return new OrderTerms.Threshold(twice(threshold.from()), threshold.base());
  }

  private static OrderTerms of(OrderTerms terms) {
    return new OrderTerms(
        terms.discounts(),
        of(terms.minimum()),
        terms.freeShipping().stream()
            .map(
                free ->
                    new OrderTerms.FreeShipping(
                        free.when(), free.follows(), of(free.threshold()), free.waives()))
            .toList(),
        terms.tax());
  }

  private static Shipping of(Shipping shipping) {
    Shipping.Rate rate = shipping.rate();
    Shipping.Packing packing = shipping.packing();
    return new Shipping(
        new Shipping.Rate(twice(rate.perOrder()), twice(rate.firstBox()), twice(rate.nextBox())),
        new Shipping.Packing(twice(packing.perOrder()), twice(packing.perBox())),
        shipping.surcharges().stream()
            .map(s -> new Shipping.Surcharge(s.shipDates(), twice(s.perOrder()), twice(s.perBox())))
            .toList(),
        shipping.orderCharges().stream()
            .map(c -> new Shipping.OrderCharge(c.orderDates(), twice(c.amount())))
            .toList());
  }
}
