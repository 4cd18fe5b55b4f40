package io.frostlot.files;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Kinds of prey that may be named, what their size words mean, and the room that prey takes. */
final class Kinds {
  private final Map<String, Map<String, Item.Spread>> bands = new TreeMap<>();
  private boolean complete = true;
  private double kgPerLitre = Litres.PREY_KG_PER_LITRE;

  /** The shipped kinds, common practice. */
  static Kinds shipped() {
    Kinds kinds = new Kinds();
    ((Json.Arr) Resources.any("prey.json")).items().forEach(kind -> kinds.add((Json.Obj) kind));
    return kinds;
  }

  /** Adds the keeper's own, which stand before the shipped ones. */
  void addOwn(JsonSchema.Checked scenario, Problems problems) {
    complete = scenario.sound("kinds");
    if (scenario.sound("kgPerLitre")) {
      kgPerLitre = scenario.document().decimal("kgPerLitre").doubleValue();
    }
    for (Json.Obj kind : scenario.document().objects("kinds")) {
      int before = problems.count();
      for (Json.Obj band : kind.objects("bands")) {
        if (band.grams("leastG").compareTo(band.grams("mostG")) > 0) {
          Json most = band.get("mostG");
          problems.add(new Problem(most.where(), most.shown(), "at least leastG", ""));
        }
      }
      complete &= problems.count() == before;
      if (problems.count() == before) {
        add(kind);
      }
    }
  }

  private void add(Json.Obj kind) {
    Map<String, Item.Spread> words =
        bands.computeIfAbsent(kind.text("kind"), name -> new TreeMap<>());
    for (Json.Obj band : kind.objects("bands")) {
      Grams least = band.grams("leastG");
      Grams most = band.grams("mostG");
      words.put(
          lower(band.text("sizeWord")), new Item.Spread(least, middle(least, most), most, true));
    }
  }

  /** Room of a piece whose litres are not given. */
  Litres litres(Grams mean) {
    return Litres.ofPrey(mean, kgPerLitre);
  }

  /** The middle of two masses, half-up to the milligram. */
  static Grams middle(Grams least, Grams most) {
    return new Grams((least.milligrams() + most.milligrams() + 1) / 2);
  }

  /** What a size word of a kind stands for, marked as a guess. */
  Optional<Item.Spread> band(String kind, String sizeWord) {
    return Optional.ofNullable(bands.getOrDefault(kind, Map.of()).get(lower(sizeWord)));
  }

  String sizeWords(String kind) {
    return String.join(", ", bands.getOrDefault(kind, Map.of()).keySet());
  }

  /** Reports a kind that nobody has described. */
  void require(Row row, String column, String kind) {
    if (!isKnown(kind)) {
      String near = Nearest.hint(kind, bands.keySet());
      row.wrong(
          column,
          Problem.quote(kind),
          "one of " + String.join(", ", bands.keySet()),
          near.isEmpty() ? "Own kinds are listed under kinds in scenario.json." : near);
    }
  }

  /** Every kind is, where the keeper's own could not all be read. */
  private boolean isKnown(String kind) {
    return !complete || bands.containsKey(kind);
  }

  /** Are all bands there, so that one that is not found does not exist? */
  boolean isComplete() {
    return complete;
  }

  private static String lower(String word) {
    return word.strip().toLowerCase(Locale.ROOT);
  }
}
