package io.frostlot.files;

import io.frostlot.keeping.MealSize;
import java.util.Optional;

/** The columns of animals.csv that say how much a meal is. */
record MealSizeCells(Row row) {
  /** Empty, with a problem added, where they do not fit together. */
  Optional<MealSize> read(ScenarioFile scenario) {
    if (!row.exactlyOne("meal_percent", "meal_g", "meal_table")) {
      return Optional.empty();
    }
    if (!row.has("meal_percent")) {
      row.forbid("without meal_percent", "of_mass_g");
    }
    if (row.has("meal_table")) {
      return fromTable(scenario);
    }
    MealSize.Tolerance tolerance =
        new MealSize.Tolerance(row.percent("meal_least_percent"), row.percent("meal_most_percent"));
    if (row.has("meal_g")) {
      return Optional.of(new MealSize.Fixed(row.grams("meal_g"), tolerance));
    }
    MealSize.ShareOfMass share = new MealSize.ShareOfMass(row.percent("meal_percent"), tolerance);
    return row.has("of_mass_g")
        ? Optional.of(
            new MealSize.Fixed(
                row.grams("of_mass_g").times(share.share().fraction().doubleValue()), tolerance))
        : Optional.of(share);
  }

  private Optional<MealSize> fromTable(ScenarioFile scenario) {
    row.forbid("with meal_table", "meal_least_percent", "meal_most_percent");
    String name = row.text("meal_table");
    Optional<MealSize> table = Optional.ofNullable(scenario.mealTables().get(name));
    if (table.isEmpty() && scenario.allMealTablesKnown()) {
      row.wrong(
          "meal_table",
          "a name of mealTables in scenario.json",
          Nearest.hint(name, scenario.mealTables().keySet()));
    }
    return table;
  }
}
