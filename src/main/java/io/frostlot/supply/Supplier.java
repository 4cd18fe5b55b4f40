package io.frostlot.supply;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A supplier as seen from the keeper's place: its zone is looked up, its prices are per pack.
 *
 * @param id folder name, unique
 * @param name shown
 * @param sheet the price sheet
 * @param terms what happens to the order as a whole
 * @param boxing how an order is put into boxes
 * @param shipping what that costs
 * @param delivery when it comes
 */
public record Supplier(
    String id,
    String name,
    PriceSheet sheet,
    OrderTerms terms,
    Boxing boxing,
    Shipping shipping,
    Delivery delivery) {

  /**
   * Prices of single packs.
   *
   * @param dated day of the prices
   * @param packs in canonical order, ids unique
   * @param breaks at most one per pack id
   * @param sales by name
   */
  public record PriceSheet(
      LocalDate dated, List<Pack> packs, List<PriceBreak> breaks, List<Sale> sales) {
    public PriceSheet {
      packs =
          packs.stream()
              .sorted(
                  (a, b) -> {
                    int byItem = a.item().id().compareTo(b.item().id());
                    return byItem != 0 ? byItem : Integer.compare(a.pieces(), b.pieces());
                  })
              .toList();
      breaks = List.copyOf(breaks);
      sales = sales.stream().sorted(Comparator.comparing(Sale::id)).toList();
    }

    public PriceSheet withPacks(List<Pack> others) {
      return new PriceSheet(dated, others, breaks, sales);
    }

    /** The same where every price is a share of what it is, in the minor unit. */
    public PriceSheet times(BigDecimal share, int decimals) {
      return new PriceSheet(
          dated,
          packs.stream().map(pack -> pack.withPrice(pack.price().times(share, decimals))).toList(),
          breaks.stream().map(some -> some.times(share, decimals)).toList(),
          sales);
    }

    public PriceSheet withSales(List<Sale> others) {
      return new PriceSheet(dated, packs, breaks, others);
    }
  }

  /** The same under another id and name. */
  public Supplier named(String otherId, String otherName) {
    return new Supplier(otherId, otherName, sheet, terms, boxing, shipping, delivery);
  }

  public Supplier withSheet(PriceSheet other) {
    return new Supplier(id, name, other, terms, boxing, shipping, delivery);
  }

  public Supplier withTerms(OrderTerms other) {
    return new Supplier(id, name, sheet, other, boxing, shipping, delivery);
  }

  public Supplier withBoxing(Boxing other) {
    return new Supplier(id, name, sheet, terms, other, shipping, delivery);
  }

  /** A sale or order discount that an order may take or decline. */
  public record Promotion(String id, boolean combinable) {}

  /** Sales that hold for an order. */
  public List<Sale> salesOn(Slot slot) {
    return sheet.sales().stream().filter(s -> s.when().contains(slot.date(s.follows()))).toList();
  }

  /** Order discounts that hold for an order. */
  public List<OrderTerms.Discount> discountsOn(Slot slot) {
    return terms.discounts().stream()
        .filter(d -> d.when().contains(slot.date(d.follows())))
        .toList();
  }

  /** Everything that an order may take. */
  public List<Promotion> promotionsOn(Slot slot) {
    return Stream.concat(
            salesOn(slot).stream().map(s -> new Promotion(s.id(), s.combinable())),
            discountsOn(slot).stream().map(d -> new Promotion(d.id(), d.combinable())))
        .toList();
  }

  /** The break of a row; without steps where it has none. */
  public PriceBreak breakOf(Pack pack) {
    return sheet.breaks().stream()
        .filter(b -> b.packId().equals(pack.id()))
        .findFirst()
        .orElse(new PriceBreak(pack.id(), PriceBreak.Counting.ALL_UNITS, List.of()));
  }

  /** Can a pack be had at all? Where packs are not cut across boxes, it must fit into one. */
  public boolean canPack(Pack pack) {
    return isPickUp()
        || boxing.way() != Boxing.Way.WHOLE_PACKS
        || BoxFit.fits(pack, boxing.limits());
  }

  /** A pick-up needs no box and no shipping. */
  public boolean isPickUp() {
    return !(delivery instanceof Delivery.Shipped);
  }
}
