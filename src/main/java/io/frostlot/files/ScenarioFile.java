package io.frostlot.files;

import io.frostlot.keeping.MealSize;
import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** {@code scenario.json}, and what the other files need to know of it. */
final class ScenarioFile {
  private static final int MOST_DAYS = 1100;
  private final JsonSchema.Checked json;
  private final Problems problems;
  private final Kinds kinds = Kinds.shipped();
  private final Map<String, MealSize.ByMass> mealTables = new TreeMap<>();
  private boolean allMealTablesKnown;
  private final Rooms rooms;

  private ScenarioFile(JsonSchema.Checked json, Problems problems) {
    this.json = json;
    this.problems = problems;
    rooms = Rooms.read(json, problems);
  }

  /** Reads what can be read; nothing is left out without a problem. */
  static Optional<ScenarioFile> read(Path path, Problems problems) {
    Optional<ScenarioFile> file =
        TextFile.read(path, "scenario.json", problems)
            .flatMap(text -> JsonText.parse(text, "scenario.json", problems))
            .flatMap(json -> JsonSchema.named("schema/scenario.schema.json").check(json, problems))
            .map(json -> new ScenarioFile(json, problems));
    file.ifPresent(ScenarioFile::interpret);
    return file;
  }

  private void interpret() {
    kinds.addOwn(json, problems);
    Currencies.read(root(), problems);
    planning(problems);
    int before = problems.count();
    root().objects("mealTables").forEach(this::readMealTable);
    allMealTablesKnown = json.sound("mealTables") && problems.count() == before;
    if (json.sound("policy")) {
      budget(root().object("policy").object("budget"));
    }
    Days.overlap(away())
        .ifPresent(
            period ->
                refuse(
                    root().get("away"),
                    Days.text(period) + " overlapping another",
                    "periods apart"));
  }

  private void budget(Json.Obj budget) {
    if (!budget.money("spentThisMonth").isZero() && budget.money("perMonth").isZero()) {
      Json typed = budget.get("spentThisMonth");
      refuse(typed, typed.shown(), "perMonth beside it");
    }
  }

  private Optional<Period> planning(Problems found) {
    if (!json.sound("from", "to", "planningDays")) {
      return Optional.empty();
    }
    LocalDate from = root().date("from");
    if (root().has("to") == root().has("planningDays")) {
      String typed = root().has("to") ? "both to and planningDays" : "neither to nor planningDays";
      found.add(new Problem(root().where(), typed, "exactly one of them", ""));
      return Optional.empty();
    }
    if (root().has("planningDays")) {
      return Optional.of(new Period(from, from.plusDays(root().integer("planningDays") - 1L)));
    }
    LocalDate to = root().date("to");
    long days = ChronoUnit.DAYS.between(from, to) + 1;
    if (days < 1 || days > MOST_DAYS) {
      Json typed = root().get("to");
      String expected = "a day from " + from + " on, at most " + MOST_DAYS + " planning days";
      found.add(new Problem(typed.where(), typed.shown(), expected, ""));
      return Optional.empty();
    }
    return Optional.of(new Period(from, to));
  }

  private void readMealTable(Json.Obj table) {
    List<MealSize.ByMass.Step> steps = new ArrayList<>();
    for (Json.Obj step : table.objects("steps")) {
      Grams from = step.grams("fromMassG");
      if (!steps.isEmpty() && steps.get(steps.size() - 1).fromMass().compareTo(from) >= 0) {
        refuse(
            step.get("fromMassG"), step.get("fromMassG").shown(), "more than in the step before");
        return;
      }
      if (step.grams("leastG").compareTo(step.grams("mostG")) > 0) {
        refuse(step.get("mostG"), step.get("mostG").shown(), "at least leastG");
        return;
      }
      steps.add(new MealSize.ByMass.Step(from, step.grams("leastG"), step.grams("mostG")));
    }
    if (mealTables.put(table.text("name"), new MealSize.ByMass(steps)) != null) {
      refuse(table.get("name"), table.get("name").shown(), "a name that no other table has");
    }
  }

  private void refuse(Json at, String found, String expected) {
    problems.add(new Problem(at.where(), found, expected, ""));
  }

  Json.Obj root() {
    return json.document();
  }

  boolean sound(String... fields) {
    return json.sound(fields);
  }

  Kinds kinds() {
    return kinds;
  }

  /** Empty where it could not be read; that was reported. */
  Optional<Period> planning() {
    return planning(new Problems());
  }

  /** Empty where it could not be read; that was reported. */
  Optional<Currency> currency() {
    return Currencies.read(root(), new Problems());
  }

  /** Meal tables by name. */
  Map<String, MealSize.ByMass> mealTables() {
    return mealTables;
  }

  /** Could all of them be read, so that one that is not found does not exist? */
  boolean allMealTablesKnown() {
    return allMealTablesKnown;
  }

  Rooms rooms() {
    return rooms;
  }

  List<Period> away() {
    return root().periods("away").stream().sorted(Days.BY_START).toList();
  }

  /** Ids of the chosen suppliers, with their places. */
  List<Json.Text> suppliers() {
    return root().has("suppliers")
        ? root().items("suppliers").stream().map(Json.Text.class::cast).toList()
        : List.of();
  }
}
