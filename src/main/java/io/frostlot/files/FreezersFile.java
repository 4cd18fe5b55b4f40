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

  /**
   * The freezers that are right.
   *
   * @param besideFood may new prey be put into one that holds food too?
   */
  static List<Freezer> read(Table table, FreezerLimitsFile limits, boolean besideFood) {
    return table.rows().stream().flatMap(row -> freezer(row, limits, besideFood).stream()).toList();
  }

  private static Optional<Freezer> freezer(Row row, FreezerLimitsFile limits, boolean besideFood) {
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
            access(row, limits.of(row.text("name")), besideFood)));
  }

  private static Freezer.Access access(Row row, List<Freezer.Limit> limits, boolean besideFood) {
    boolean food = row.yes("holds_food");
    boolean kept = food && !besideFood && row.yes("in_use");
    if (kept) {
      row.lookAt(
          row.text("name")
              + " holds food, so no new prey is put into it. Where you keep prey there sealed in a"
              + " closed box apart from food, and the rules of your place allow it, type"
              + " policy.preySealedFromFood in scenario.json.");
    }
    return new Freezer.Access(row.yes("in_use") && !kept, company(food, kept), limits);
  }

  private static Freezer.Company company(boolean food, boolean kept) {
    if (kept) {
      return Freezer.Company.FOOD_UNSEALED;
    }
    return food ? Freezer.Company.FOOD : Freezer.Company.NONE;
  }
}
