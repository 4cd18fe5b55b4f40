package io.frostlot.plan;

import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.List;

/** Something that a supplier gives for a time, and that an order may take or leave. */
public sealed interface Deal {
  /** Id of the supplier that gives it. */
  String supplier();

  /** Its name at that supplier. */
  String id();

  /** Dates on which it holds. */
  Period when();

  /** The supplier with it. */
  Supplier given(Supplier supplier);

  /** A sale on packs. */
  record OnPacks(String supplier, Sale sale) implements Deal {
    @Override
    public String id() {
      return sale.id();
    }

    @Override
    public Period when() {
      return sale.when();
    }

    @Override
    public Supplier given(Supplier from) {
      return from.withSheet(from.sheet().withSales(and(from.sheet().sales(), sale)));
    }

    /** Packs of a plan that are bought under it. */
    public int taken(Plan plan) {
      return plan.orders().stream()
          .filter(order -> order.slot().supplier().equals(supplier))
          .flatMap(order -> order.lines().stream())
          .mapToInt(line -> line.underSale().getOrDefault(sale.id(), 0))
          .sum();
    }

    /** The same sale on at most so many packs in all. */
    public OnPacks atMost(int packs) {
      int inTotal = Math.min(packs, sale.limits().inTotal());
      return new OnPacks(
          supplier, sale.withLimits(new Sale.Limits(sale.limits().perOrder(), inTotal)));
    }
  }

  /** Money off an order's value. */
  record OnOrders(String supplier, OrderTerms.Discount discount) implements Deal {
    @Override
    public String id() {
      return discount.id();
    }

    @Override
    public Period when() {
      return discount.when();
    }

    @Override
    public Supplier given(Supplier from) {
      return from.withTerms(from.terms().withDiscounts(and(from.terms().discounts(), discount)));
    }
  }

  /** Charges waived from an order's value on. */
  record OnShipping(String supplier, OrderTerms.FreeShipping waiver) implements Deal {
    @Override
    public String id() {
      return "free shipping";
    }

    @Override
    public Period when() {
      return waiver.when();
    }

    @Override
    public Supplier given(Supplier from) {
      return from.withTerms(
          from.terms().withFreeShipping(and(from.terms().freeShipping(), waiver)));
    }
  }

  /** The scenario with all of these deals. */
  static Scenario in(Scenario scenario, List<? extends Deal> deals) {
    List<Supplier> suppliers = new ArrayList<>();
    for (Supplier supplier : scenario.suppliers()) {
      Supplier with = supplier;
      for (Deal deal : deals) {
        with = deal.supplier().equals(supplier.id()) ? deal.given(with) : with;
      }
      suppliers.add(with);
    }
    return scenario.withSuppliers(suppliers);
  }

  private static <T> List<T> and(List<T> some, T one) {
    List<T> all = new ArrayList<>(some);
    all.add(one);
    return all;
  }
}
