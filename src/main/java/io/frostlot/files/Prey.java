package io.frostlot.files;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.util.Optional;

/**
 * What a row says of its prey: columns kind, size_word, least_g, mean_g, most_g, litres_per_piece.
 */
record Prey(String kind, String sizeWord, Item.Spread grams, Litres litres) {
  static final String[] COLUMNS = {
    "kind", "size_word", "least_g", "mean_g", "most_g", "litres_per_piece"
  };

  /** Empty, with problems added, where the row does not say what it is. */
  static Optional<Prey> of(Row row, Kinds kinds) {
    String kind = row.text("kind");
    kinds.require(row, "kind", kind);
    String sizeWord = row.textOr("size_word", "");
    row.together("least_g", "most_g");
    row.together("sample_pieces", "sample_g");
    if (row.isTyped("mean_g")) {
      row.forbid("beside mean_g", "sample_pieces", "sample_g");
    }
    if (!row.isSound()) {
      return Optional.empty();
    }
    Optional<Item.Spread> spread =
        row.has("least_g") ? stated(row) : guessed(row, kinds, kind, sizeWord);
    return spread.map(it -> new Prey(kind, sizeWord, it, litres(row, it, kinds)));
  }

  private static Litres litres(Row row, Item.Spread spread, Kinds kinds) {
    return row.has("litres_per_piece")
        ? Litres.of(row.number("litres_per_piece"))
        : kinds.litres(spread.mean());
  }

  private static Optional<Item.Spread> stated(Row row) {
    Grams least = row.grams("least_g");
    Grams most = row.grams("most_g");
    if (least.compareTo(most) > 0) {
      row.wrong("most_g", "at least least_g, " + least, "");
      return Optional.empty();
    }
    Item.Spread stated = new Item.Spread(least, Kinds.middle(least, most), most, false);
    if (row.has("sample_g")) {
      return Sample.of(row).correct(row, stated);
    }
    if (!row.has("mean_g")) {
      return Optional.of(stated);
    }
    Grams mean = row.grams("mean_g");
    if (!stated.holds(mean)) {
      row.wrong("mean_g", "a mean mass between least_g and most_g, " + least + " to " + most, "");
      return Optional.empty();
    }
    return Optional.of(new Item.Spread(least, mean, most, false));
  }

  /** The band of the size word, scaled to a sample or widened to the mean where one is known. */
  private static Optional<Item.Spread> guessed(Row row, Kinds kinds, String kind, String sizeWord) {
    Optional<Item.Spread> band = kinds.band(kind, sizeWord);
    if (band.isEmpty() && kinds.isComplete()) {
      String words = kinds.sizeWords(kind);
      row.wrong(
          "least_g",
          "least_g and most_g" + (words.isEmpty() ? "" : ", or one of the size words " + words),
          "Without either the mass of a piece is not known.");
    }
    if (row.has("sample_g")) {
      return band.flatMap(it -> Sample.of(row).correct(row, it));
    }
    return band.map(it -> row.has("mean_g") ? widened(it, row.grams("mean_g")) : it);
  }

  private static Item.Spread widened(Item.Spread band, Grams mean) {
    Grams least = band.least().compareTo(mean) < 0 ? band.least() : mean;
    Grams most = band.most().compareTo(mean) > 0 ? band.most() : mean;
    return new Item.Spread(least, mean, most, true);
  }

  Item item(String id, String name) {
    return new Item(id, name, kind, sizeWord, grams, litres);
  }
}
