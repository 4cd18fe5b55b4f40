package io.frostlot.plan;

import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

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

  /** Is it about a pack of that supplier? */
  default boolean covers(Pack pack) {
    return true;
  }

  /** Does an order of that supplier take it, or could it where nobody has to say so? */
  boolean takes(Order order);

  /** Packs of a line that are bought under it, where its order takes it. */
  default int packs(Order.Line line) {
    return line.packs();
  }

  /** Packs of a plan that are bought under it. */
  default int taken(Plan plan) {
    return plan.orders().stream()
        .filter(order -> order.slot().supplier().equals(supplier()) && takes(order))
        .flatMap(order -> order.lines().stream())
        .mapToInt(this::packs)
        .sum();
  }

  /** The pledge of packs that it is about, on the dates on which it holds. */
  default Pledge pledge(World world, Pledge.Packs packs) {
    Set<String> rows =
        world.supplier(supplier()).sheet().packs().stream()
            .filter(this::covers)
            .map(Pack::id)
            .collect(Collectors.toSet());
    return new Pledge(supplier(), rows, when(), packs);
  }

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

    @Override
    public boolean covers(Pack pack) {
      return sale.covers(pack);
    }

    @Override
    public boolean takes(Order order) {
      return true;
    }

    @Override
    public int packs(Order.Line line) {
      return line.underSale().getOrDefault(sale.id(), 0);
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

    @Override
    public boolean takes(Order order) {
      return order.promotions().contains(discount.id());
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

    @Override
    public boolean takes(Order order) {
      return waiver.when().contains(order.slot().ordered());
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
