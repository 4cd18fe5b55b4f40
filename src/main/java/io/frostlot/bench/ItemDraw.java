package io.frostlot.bench;

import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws a price sheet: of the pieces that there are a share, a few percent lighter or heavier at
 * each supplier, each in two packs, the larger one of four times the pieces (twice for a member of
 * a group) and 12 % cheaper.
 */
final class ItemDraw {
  private static final double LARGE_PACK = 0.88;
  private final RoomSize size;
  private final Chance chance;

  ItemDraw(RoomSize size, Chance chance) {
    this.size = size;
    this.chance = chance;
  }

  /**
   * Packs of a supplier.
   *
   * @param share of all pieces that it sells
   * @param level its prices, 1 being usual
   */
  List<Pack> packs(String supplier, double share, double level) {
    double bias = chance.between(0.93, 1.07);
    List<Pack> packs = new ArrayList<>();
    for (String kind : List.of("mouse", "rat")) {
      for (double usual : Prey.pieces(size, kind)) {
        double grams = Math.round(10 * usual * bias * chance.between(0.97, 1.03)) / 10.0;
        double price = Prey.price(grams) * level * chance.between(0.94, 1.06);
        if (chance.in(share)) {
          Item item = item(supplier, kind, usual, grams);
          int count = Prey.packCount(usual) * size.packFactor();
          packs.add(pack(item, count, price));
          packs.add(pack(item, size.smallInLarge() * count, price * LARGE_PACK));
        }
      }
    }
    return packs;
  }

  /** Single pieces in small packs, at most three a delivery. */
  List<Pack> shopPacks(String supplier, double share, double level) {
    return packs(supplier, share, level).stream()
        .filter(pack -> pack.pieces() <= Prey.packCount(0) * size.packFactor())
        .map(
            pack ->
                new Pack(
                    pack.item(),
                    Math.max(1, pack.pieces() / 5),
                    Chance.money(pack.price().toDouble() / 5),
                    new Pack.Availability(3, Pack.UNLIMITED, Period.ALWAYS),
                    packed(pack.item(), Math.max(1, pack.pieces() / 5))))
        .toList();
  }

  private static Item item(String supplier, String kind, double usual, double grams) {
    String name = String.format(Locale.ROOT, "%s %05.1f", kind, usual);
    return new Item(
        supplier + "/" + name,
        name,
        kind,
        "",
        new Item.Spread(Grams.of(0.87 * grams), Grams.of(grams), Grams.of(1.13 * grams), false),
        Litres.ofPrey(Grams.of(grams)));
  }

  private static Pack pack(Item item, int count, double each) {
    return new Pack(
        item, count, Chance.money(each * count), Pack.Availability.ANY, packed(item, count));
  }

  private static Pack.Packed packed(Item item, int count) {
    return new Pack.Packed(item.grams().mean().times(count), item.litres().times(count));
  }
}
