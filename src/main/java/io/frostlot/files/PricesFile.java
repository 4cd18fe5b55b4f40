package io.frostlot.files;

import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** {@code prices.csv} of one supplier. */
final class PricesFile {
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);
  private final String supplier;
  private final Kinds kinds;
  private final int decimals;
  private final Map<String, Prey> preyByItem = new TreeMap<>();
  private final Map<String, Pack> packs = new TreeMap<>();

  /**
   * A reader for one supplier.
   *
   * @param decimals of the currency's minor unit
   */
  PricesFile(String supplier, Kinds kinds, int decimals) {
    this.supplier = supplier;
    this.kinds = kinds;
    this.decimals = decimals;
  }

  /**
   * What could be read.
   *
   * @param whole nothing had to be left out
   */
  record Prices(List<Pack> packs, boolean whole) {
    Optional<Item> item(String name) {
      return packs.stream()
          .flatMap(pack -> Stream.concat(Stream.of(pack.item()), pack.sortedAtHome().items()))
          .filter(item -> item.name().equals(name))
          .findFirst();
    }

    Optional<Pack> pack(String id) {
      return packs.stream().filter(pack -> pack.id().equals(id)).findFirst();
    }
  }

  Prices read(Table table) {
    table.rows().forEach(row -> pack(row).ifPresent(pack -> add(row, pack)));
    boolean whole = table.whole() && table.rows().stream().allMatch(Row::isSound);
    return new Prices(List.copyOf(packs.values()), whole);
  }

  private void add(Row row, Pack pack) {
    if (packs.putIfAbsent(pack.id(), pack) != null) {
      row.wrong("pack_count", pack.id() + " a second time", "each item and pack count once", "");
    }
  }

  private Optional<Pack> pack(Row row) {
    Optional<Prey> prey = Prey.of(row, kinds).filter(it -> agrees(row, it));
    row.exactlyOne("price", "price_per_kg");
    boolean weighed = packMassInOrder(row);
    if (!row.has("available_in_total")) {
      row.forbid("without available_in_total", "available_window");
    }
    if (prey.isEmpty() || !weighed || !row.isSound()) {
      return Optional.empty();
    }
    int pieces = row.has("pack_count") ? row.integer("pack_count") : piecesByMass(row, prey.get());
    if (pieces < 1) {
      row.wrong(
          "pack_count", "a whole number of at least 1", "Or a pack_least_kg that holds a piece.");
      return Optional.empty();
    }
    String name = row.text("item");
    Item item = prey.get().item(supplier + "/" + name, name);
    BigDecimal kg = packKg(row, item, pieces);
    Money price =
        row.has("price")
            ? new Money(row.number("price"))
            : new Money(row.number("price_per_kg")).times(kg, decimals);
    return Optional.of(
        new Pack(item, pieces, price, availability(row), packed(row, item, pieces, kg)));
  }

  private boolean packMassInOrder(Row row) {
    if (!row.together("pack_least_kg", "pack_most_kg")) {
      return false;
    }
    boolean stated = row.has("pack_least_kg");
    if (stated && row.number("pack_least_kg").compareTo(row.number("pack_most_kg")) > 0) {
      row.wrong("pack_most_kg", "at least pack_least_kg", "");
    } else if (!stated && !row.has("pack_count")) {
      row.wrong(
          "pack_count",
          "a whole number of at least 1",
          "Only a pack sold by weight may leave it empty.");
    }
    return row.isSound();
  }

  private static int piecesByMass(Row row, Prey prey) {
    long milligrams = Grams.of(row.number("pack_least_kg").multiply(THOUSAND)).milligrams();
    return (int) Math.min(1_000_000, milligrams / prey.grams().mean().milligrams());
  }

  private static BigDecimal packKg(Row row, Item item, int pieces) {
    return row.has("pack_least_kg")
        ? row.number("pack_least_kg").add(row.number("pack_most_kg")).divide(BigDecimal.valueOf(2))
        : item.grams().mean().times(pieces).toDecimal().divide(THOUSAND);
  }

  private static Pack.Packed packed(Row row, Item item, int pieces, BigDecimal kg) {
    BigDecimal packedKg = row.has("packed_kg") ? row.number("packed_kg") : kg;
    return new Pack.Packed(
        Grams.of(packedKg.multiply(THOUSAND)),
        row.has("packed_litres")
            ? Litres.of(row.number("packed_litres"))
            : item.litres().times(pieces));
  }

  private static Pack.Availability availability(Row row) {
    return new Pack.Availability(
        row.integerOr("available_per_delivery", Pack.UNLIMITED),
        row.integerOr("available_in_total", Pack.UNLIMITED),
        row.periodOr("available_window", Period.ALWAYS));
  }

  /** Rows of one item name must describe the same prey. */
  private boolean agrees(Row row, Prey prey) {
    Prey first = preyByItem.computeIfAbsent(row.text("item"), name -> prey);
    Stream.of(
            new Claim("kind", first.kind(), prey.kind()),
            new Claim("size_word", first.sizeWord(), prey.sizeWord()),
            new Claim("least_g", first.grams().least(), prey.grams().least()),
            new Claim("mean_g", first.grams().mean(), prey.grams().mean()),
            new Claim("most_g", first.grams().most(), prey.grams().most()),
            new Claim("litres_per_piece", first.litres(), prey.litres()))
        .filter(claim -> !claim.before().equals(claim.now()))
        .findFirst()
        .ifPresent(
            claim ->
                row.wrong(
                    claim.column(),
                    claim.now().toString(),
                    claim.before() + " as in the row of this item before",
                    "Prey that differs needs another item name."));
    return row.isSound();
  }

  /** What two rows say in one column. */
  private record Claim(String column, Object before, Object now) {}
}
