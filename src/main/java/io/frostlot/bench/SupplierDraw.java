package io.frostlot.bench;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Draws the suppliers, in this order: a carrier with sales, free shipping and boxes by total; a
 * carrier with whole packs in boxes, a minimum order, a discount and tax; a shop; a carrier far
 * away, with a sale; a show; and carriers like the first without its promotions. All say that they
 * are invented.
 */
final class SupplierDraw {
  private static final double SHOP_PRICES = 1.35;
  private final RoomSize size;
  private final Chance chance;
  private final Period planning;
  private final Calibration calibration;
  private final ItemDraw items;
  private final Promotions promotions;

  SupplierDraw(RoomSize size, Chance chance, Period planning, Calibration calibration) {
    this.size = size;
    this.chance = chance;
    this.planning = planning;
    this.calibration = calibration;
    items = new ItemDraw(size, chance);
    promotions = new Promotions(size, planning, calibration);
  }

  List<Supplier> suppliers() {
    List<Supplier> suppliers = new ArrayList<>();
    suppliers.add(near());
    suppliers.add(wholePacks());
    if (size.suppliers() > 2) {
      suppliers.add(shop());
    }
    if (size.suppliers() > 3) {
      suppliers.add(far());
    }
    if (size.suppliers() > 4) {
      suppliers.add(show());
    }
    for (int i = 6; i <= size.suppliers(); i++) {
      suppliers.add(further(i));
    }
    return suppliers;
  }

  /** Two carriers and a shop without promotions, price breaks, rare packs and closings. */
  List<Supplier> plain() {
    return List.of(
        plain(
            "carrier-1",
            "Carrier one (invented)",
            items.packs("carrier-1", 1, 1),
            Boxing.Way.BY_TOTAL,
            DayOfWeek.TUESDAY),
        plain(
            "carrier-2",
            "Carrier two (invented)",
            items.packs("carrier-2", 0.85, 0.92),
            Boxing.Way.WHOLE_PACKS,
            DayOfWeek.MONDAY),
        shop());
  }

  private Supplier plain(String id, String name, List<Pack> packs, Boxing.Way way, DayOfWeek day) {
    return new Supplier(
        id,
        name,
        sheet(packs),
        OrderTerms.PLAIN,
        boxing(way),
        new Shipping(rate(1), Shipping.Packing.FREE, List.of(), List.of()),
        new Delivery.Shipped(
            new Delivery.Lead(2, true, 0, List.of()), Set.of(day), new Delivery.Transit(1, 1)));
  }

  private Supplier near() {
    List<Pack> packs = new ArrayList<>(items.packs("carrier-1", 1, 1));
    Pack rare = packs.get(packs.size() / 2);
    packs.set(
        packs.indexOf(rare),
        new Pack(
            rare.item(),
            rare.pieces(),
            rare.price(),
            new Pack.Availability(Pack.UNLIMITED, 6, promotions.window(0.5)),
            rare.packed()));
    Shipping shipping =
        new Shipping(
            rate(1),
            Shipping.Packing.FREE,
            List.of(new Shipping.Surcharge(promotions.window(0.8), Money.ZERO, Chance.money(2))),
            List.of());
    return new Supplier(
        "carrier-1",
        "Carrier one (invented)",
        new Supplier.PriceSheet(
            planning.from(),
            packs,
            breaks(packs, PriceBreak.Counting.ALL_UNITS),
            promotions.sales(packs, size.suppliers() < 4)),
        new OrderTerms(
            List.of(),
            OrderTerms.Threshold.NONE,
            promotions.freeShipping(),
            OrderTerms.Tax.INCLUDED),
        boxing(Boxing.Way.BY_TOTAL),
        shipping,
        shipped(DayOfWeek.TUESDAY, new Delivery.Transit(1, 2)));
  }

  private Supplier wholePacks() {
    List<Pack> packs = items.packs("carrier-2", 0.85, 0.92);
    return new Supplier(
        "carrier-2",
        "Carrier two (invented)",
        new Supplier.PriceSheet(
            planning.from(), packs, breaks(packs, PriceBreak.Counting.INCREMENTAL), List.of()),
        new OrderTerms(
            promotions.discounts(),
            new OrderTerms.Threshold(
                Chance.money(0.3 * calibration.orderValue()), OrderTerms.Subtotal.GOODS),
            List.of(),
            new OrderTerms.Tax(Percent.of("7"), true)),
        boxing(Boxing.Way.WHOLE_PACKS),
        new Shipping(
            rate(0.9), new Shipping.Packing(Money.ZERO, Chance.money(1.5)), List.of(), List.of()),
        shipped(DayOfWeek.MONDAY, new Delivery.Transit(1, 1)));
  }

  private Supplier shop() {
    return new Supplier(
        "shop-3",
        "Shop three (invented)",
        sheet(items.shopPacks("shop-3", 0.5, SHOP_PRICES)),
        OrderTerms.PLAIN,
        Boxing.NONE,
        trip(4),
        new Delivery.Shop(new Delivery.Lead(0, false, 0, List.of()), Set.of(DayOfWeek.SATURDAY)));
  }

  private Supplier far() {
    List<Pack> packs = items.packs("carrier-4", 0.9, 0.84);
    return new Supplier(
        "carrier-4",
        "Carrier four (invented)",
        new Supplier.PriceSheet(planning.from(), packs, List.of(), promotions.freePacks(packs)),
        OrderTerms.PLAIN,
        boxing(Boxing.Way.BY_TOTAL),
        new Shipping(rate(1.5), Shipping.Packing.FREE, List.of(), List.of()),
        shipped(DayOfWeek.WEDNESDAY, new Delivery.Transit(2, 4)));
  }

  private Supplier show() {
    List<LocalDate> dates = List.of(promotions.window(0.15).from(), promotions.window(0.7).from());
    return new Supplier(
        "show-5",
        "Show five (invented)",
        sheet(items.packs("show-5", 0.6, 0.9)),
        OrderTerms.PLAIN,
        Boxing.NONE,
        trip(20),
        new Delivery.Show(new Delivery.Lead(0, false, 2, List.of()), dates));
  }

  private Supplier further(int number) {
    String id = "carrier-" + number;
    return new Supplier(
        id,
        "Carrier " + number + " (invented)",
        sheet(items.packs(id, 0.8, chance.between(0.9, 1.05))),
        OrderTerms.PLAIN,
        boxing(Boxing.Way.BY_TOTAL),
        new Shipping(rate(chance.between(0.9, 1.2)), Shipping.Packing.FREE, List.of(), List.of()),
        shipped(DayOfWeek.of(number - 4), new Delivery.Transit(1, 1)));
  }

  private Supplier.PriceSheet sheet(List<Pack> packs) {
    return new Supplier.PriceSheet(planning.from(), packs, List.of(), List.of());
  }

  private Delivery shipped(DayOfWeek weekday, Delivery.Transit transit) {
    return new Delivery.Shipped(
        new Delivery.Lead(2, true, 0, calibration.closings()), Set.of(weekday), transit);
  }

  private Shipping.Rate rate(double level) {
    double charge = calibration.box().charge() * level;
    return new Shipping.Rate(
        Chance.money(0.15 * charge), Chance.money(0.95 * charge), Chance.money(0.8 * charge));
  }

  private static Shipping trip(double amount) {
    return new Shipping(
        Shipping.Rate.FREE,
        Shipping.Packing.FREE,
        List.of(),
        List.of(new Shipping.OrderCharge(Period.ALWAYS, Chance.money(amount))));
  }

  private Boxing boxing(Boxing.Way way) {
    double boxKg = calibration.box().boxKg();
    int most = 4 + (int) Math.ceil(3 * calibration.orderKg() / boxKg);
    return new Boxing(
        way,
        new Boxing.Limits(
            Grams.of(1000 * boxKg),
            new Litres(Math.round(1e6 * Appetite.litres(boxKg) * 1.05)),
            Pack.UNLIMITED),
        most);
  }

  /** Lower prices from three packs on, of every third row. */
  private static List<PriceBreak> breaks(List<Pack> packs, PriceBreak.Counting counting) {
    List<PriceBreak> breaks = new ArrayList<>();
    for (int i = 0; i < packs.size(); i += 3) {
      Pack pack = packs.get(i);
      breaks.add(
          new PriceBreak(
              pack.id(),
              counting,
              List.of(
                  new PriceBreak.Step(3, Chance.money(0.93 * pack.price().toDouble())),
                  new PriceBreak.Step(8, Chance.money(0.88 * pack.price().toDouble())))));
    }
    return breaks;
  }
}
