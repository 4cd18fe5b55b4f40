package io.frostlot.files;

import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code freezers.csv}. */
final class FreezersFile {
  /** Days that prey keeps by kind of freezer, common practice: about three and about six months. */
  private static final Map<String, Integer> LIFE_DAYS = Map.of("household", 91, "deep", 182);

  private FreezersFile() {}

  /** The freezers that are right. */
  static List<Freezer> read(Table table) {
    return table.rows().stream().flatMap(row -> freezer(row).stream()).toList();
  }

  private static Optional<Freezer> freezer(Row row) {
    String kind = row.text("kind");
    int days = row.integerOr("life_days", LIFE_DAYS.get(kind));
    if (!row.together("small_prey_below_g", "small_prey_life_days")) {
      return Optional.empty();
    }
    Freezer.Life life =
        row.has("small_prey_below_g")
            ? new Freezer.Life(
                days, row.grams("small_prey_below_g"), row.integer("small_prey_life_days"))
            : Freezer.Life.of(days);
    Freezer.Best best = new Freezer.Best(row.integerOr("best_days", Freezer.Best.ALWAYS.days()));
    return Optional.of(
        new Freezer(
            row.text("name"),
            Litres.of(row.number("usable_litres")),
            kind,
            life.withBest(best),
            row.yes("in_use")));
  }
}
