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
    if (!row.isSound() || !row.together("least_g", "most_g")) {
      return Optional.empty();
    }
    Optional<Item.Spread> spread =
        row.has("least_g") ? stated(row) : guessed(row, kinds, kind, sizeWord);
    return spread.map(it -> new Prey(kind, sizeWord, it, litres(row, it)));
  }

  private static Litres litres(Row row, Item.Spread spread) {
    return row.has("litres_per_piece")
        ? Litres.of(row.number("litres_per_piece"))
        : Litres.ofPrey(spread.mean());
  }

  private static Optional<Item.Spread> stated(Row row) {
    Grams least = row.grams("least_g");
    Grams most = row.grams("most_g");
    if (least.compareTo(most) > 0) {
      row.wrong("most_g", "at least least_g, " + least, "");
      return Optional.empty();
    }
    Grams mean = row.has("mean_g") ? row.grams("mean_g") : Kinds.middle(least, most);
    if (mean.compareTo(least) < 0 || mean.compareTo(most) > 0) {
      row.wrong("mean_g", "between least_g and most_g, " + least + " to " + most, "");
      return Optional.empty();
    }
    return Optional.of(new Item.Spread(least, mean, most, false));
  }

  /** The band of the size word, widened to the mean where one is given. */
  private static Optional<Item.Spread> guessed(Row row, Kinds kinds, String kind, String sizeWord) {
    Optional<Item.Spread> band = kinds.band(kind, sizeWord);
    if (band.isEmpty() && kinds.isComplete()) {
      String words = kinds.sizeWords(kind);
      row.wrong(
          "least_g",
          "least_g and most_g" + (words.isEmpty() ? "" : ", or one of the size words " + words),
          "Without either the mass of a piece is not known.");
    }
    if (band.isEmpty() || !row.has("mean_g")) {
      return band;
    }
    Grams mean = row.grams("mean_g");
    Grams least = band.get().least().compareTo(mean) < 0 ? band.get().least() : mean;
    Grams most = band.get().most().compareTo(mean) > 0 ? band.get().most() : mean;
    return Optional.of(new Item.Spread(least, mean, most, true));
  }

  Item item(String id, String name) {
    return new Item(id, name, kind, sizeWord, grams, litres);
  }
}
