package io.frostlot.oracle;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A random supplier of one or two items of mouse, 10 g or 20 g. */
final class TinySupplier {
  private final String id;
  private final Dice dice;

  TinySupplier(String id, Dice dice) {
    this.id = id;
    this.dice = dice;
  }

  Supplier make(int items) {
    List<Pack> packs = new ArrayList<>();
    boolean small = dice.oneIn(2);
    if (small || items > 1) {
      packs.addAll(packs(item("small", 10)));
    }
    if (!small || items > 1) {
      packs.addAll(packs(item("big", 20)));
    }
    Delivery delivery = delivery();
    TinyTerms terms = new TinyTerms(dice, packs);
    return new Supplier(
        id,
        id,
        new Supplier.PriceSheet(Dice.FIRST, packs, breaks(packs), terms.sales()),
        terms.make(),
        boxing(packs),
        shipping(),
        delivery);
  }

  private Item item(String name, int grams) {
    Item.Spread spread =
        new Item.Spread(
            Grams.of(grams - 2), Grams.of(grams + dice.between(-1, 1)), Grams.of(grams + 2), false);
    Litres litres = new Litres(20_000 + grams * 1500L + dice.between(0, 9) * 111L);
    String kind = grams > 10 && dice.has(Feature.KIND_SHARES) ? "rat" : "mouse";
    return new Item(id + "/" + name, name, kind, name, spread, litres);
  }

  private List<Pack> packs(Item item) {
    List<Pack> packs = new ArrayList<>();
    packs.add(pack(item, dice.between(1, 2)));
    if (dice.oneIn(2)) {
      packs.add(pack(item, dice.between(3, 4)));
    }
    return packs;
  }

  private Pack pack(Item item, int pieces) {
    double each = item.grams().mean().toDouble() / 10 * (pieces > 2 ? 0.8 : 1);
    long mills = Math.round(1000 * pieces * each * dice.between(70, 130) / 100.0);
    boolean fine = dice.oneIn(4);
    Pack.Availability available =
        new Pack.Availability(
            dice.has(Feature.PER_DELIVERY)
                ? dice.between(1, 2)
                : dice.has(Feature.COVER) || dice.has(Feature.MARGIN) ? 3 : Pack.UNLIMITED,
            dice.has(Feature.IN_TOTAL) ? dice.between(1, 2) : Pack.UNLIMITED,
            dice.oneIn(2) ? Period.ALWAYS : dice.days(3));
    return new Pack(
        item,
        pieces,
        new Money(BigDecimal.valueOf(fine ? mills : mills / 10 * 10, 3)),
        available,
        new Pack.Packed(
            item.grams().mean().times(pieces),
            new Litres(item.litres().microlitres() * pieces + dice.between(0, 20_000))));
  }

  private List<PriceBreak> breaks(List<Pack> packs) {
    if (!dice.has(Feature.BREAK)) {
      return List.of();
    }
    List<PriceBreak> breaks = new ArrayList<>();
    for (Pack pack : dice.someOf(packs)) {
      List<PriceBreak.Step> steps = new ArrayList<>();
      int percent = 100;
      int sure = dice.between(2, 3);
      for (int from = 2; from <= 3; from++) {
        if (from == sure || dice.oneIn(3)) {
          percent -= dice.between(10, 30);
          steps.add(
              new PriceBreak.Step(
                  from, pack.price().times(BigDecimal.valueOf(percent, 2), dice.between(2, 3))));
        }
      }
      PriceBreak.Counting counting =
          dice.oneIn(2) ? PriceBreak.Counting.ALL_UNITS : PriceBreak.Counting.INCREMENTAL;
      breaks.add(new PriceBreak(pack.id(), counting, steps));
    }
    return breaks;
  }

  private Boxing boxing(List<Pack> packs) {
    boolean whole = dice.has(Feature.BOXES_WHOLE_PACKS);
    if (!whole && !dice.has(Feature.BOXES_BY_TOTAL)) {
      return Boxing.NONE;
    }
    if (whole && dice.oneIn(2)) {
      return spacious(packs);
    }
    Grams grams = dice.oneIn(2) ? Grams.of(dice.between(40, 80)) : Grams.UNLIMITED;
    Litres litres = dice.oneIn(2) ? new Litres(dice.between(100, 200) * 1000L) : Litres.UNLIMITED;
    int pieces =
        dice.oneIn(2) || (grams.isUnlimited() && litres.isUnlimited())
            ? dice.between(2, 4)
            : Pack.UNLIMITED;
    return new Boxing(
        whole ? Boxing.Way.WHOLE_PACKS : Boxing.Way.BY_TOTAL,
        new Boxing.Limits(grams, litres, pieces),
        dice.between(1, 4));
  }

  /** A box that one of the smaller packs fills by little more than half. */
  private Boxing spacious(List<Pack> packs) {
    Pack.Packed packed =
        packs.stream()
            .filter(pack -> pack.pieces() < 3)
            .map(Pack::packed)
            .reduce((a, b) -> dice.oneIn(2) ? a : b)
            .orElseThrow();
    int percent = dice.between(150, 195);
    Boxing.Limits limits =
        dice.oneIn(2)
            ? new Boxing.Limits(
                new Grams(packed.grams().milligrams() * percent / 100),
                Litres.UNLIMITED,
                Pack.UNLIMITED)
            : new Boxing.Limits(
                Grams.UNLIMITED,
                new Litres(packed.litres().microlitres() * percent / 100),
                Pack.UNLIMITED);
    return new Boxing(Boxing.Way.WHOLE_PACKS, limits, dice.between(2, 4));
  }

  private Shipping shipping() {
    return new Shipping(
        new Shipping.Rate(
            dice.oneIn(2) ? dice.cents(20, 150) : Money.ZERO,
            dice.cents(20, 250),
            dice.cents(20, 250)),
        dice.has(Feature.PACKING)
            ? new Shipping.Packing(dice.cents(0, 80), dice.cents(0, 80))
            : Shipping.Packing.FREE,
        dice.has(Feature.SURCHARGE)
            ? List.of(
                new Shipping.Surcharge(dice.days(2), dice.cents(0, 150), dice.cents(0, 150)),
                new Shipping.Surcharge(dice.days(2), Money.ZERO, dice.cents(10, 90)))
            : List.of(),
        dice.has(Feature.ORDER_CHARGE)
            ? List.of(
                new Shipping.OrderCharge(dice.days(2), dice.cents(10, 200)),
                new Shipping.OrderCharge(dice.days(2), dice.cents(10, 200)))
            : List.of());
  }

  private Delivery delivery() {
    boolean ahead = dice.has(Feature.BOOK_AHEAD);
    Delivery.Lead lead =
        new Delivery.Lead(
            dice.oneIn(3) ? 1 : 0,
            dice.oneIn(4),
            ahead ? dice.between(1, 2) : 0,
            dice.oneIn(10) ? List.of(dice.days(0)) : List.of());
    Set<DayOfWeek> days = new HashSet<>();
    for (int i = dice.between(ahead ? 1 : 2, ahead ? 2 : 4); i > 0; i--) {
      days.add(Dice.FIRST.plusDays(dice.between(0, 3)).getDayOfWeek());
    }
    if (dice.has(Feature.SHOP) && dice.oneIn(2)) {
      return new Delivery.Shop(lead, days);
    }
    if (dice.has(Feature.SHOW) && dice.oneIn(2)) {
      List<LocalDate> dates =
          List.of(Dice.FIRST.plusDays(dice.between(0, 1)), Dice.FIRST.plusDays(dice.between(2, 3)));
      return new Delivery.Show(lead, dates);
    }
    int earliest = dice.oneIn(3) ? 1 : 0;
    int latest = earliest + (dice.has(Feature.UNCERTAIN_ARRIVAL) ? dice.between(0, 2) : 0);
    return new Delivery.Shipped(lead, days, new Delivery.Transit(earliest, latest));
  }
}
