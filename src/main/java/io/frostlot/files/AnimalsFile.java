package io.frostlot.files;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.PieceLimit;
import io.frostlot.keeping.Plate;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** {@code animals.csv}. */
final class AnimalsFile {
  private static final Set<String> WEEKDAYS =
      Set.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  private AnimalsFile() {}

  /** The animals that are right. */
  static List<Animal> read(Table table, ScenarioFile scenario) {
    return table.rows().stream().flatMap(row -> animal(row, scenario).stream()).toList();
  }

  private static Optional<Animal> animal(Row row, ScenarioFile scenario) {
    List<String> kinds = row.texts("kinds");
    kinds.forEach(kind -> scenario.kinds().require(row, "kinds", kind));
    checkCurve(row);
    checkSchedule(row);
    boolean limited = row.exactlyOne("largest_piece_g", "largest_piece_percent");
    Days.overlap(row.periods("fasts"))
        .ifPresent(
            fast ->
                row.wrong("fasts", Days.text(fast) + " overlapping another", "periods apart", ""));
    if (row.has("from") && row.has("until") && row.date("until").isBefore(row.date("from"))) {
      row.wrong("until", "a day from " + row.date("from") + " on", "");
    }
    FeedingDays fed = scenario.rooms().of(row);
    Plate plate = new PlateCells(row).read();
    if (row.isSound()) {
      Rooms.check(row, fed, schedule(row));
    }
    return new MealSizeCells(row)
        .read(scenario)
        .filter(size -> limited && row.isSound())
        .map(size -> animal(row, size).withFeedingDays(fed))
        .map(animal -> animal.withDiet(animal.diet().withPlate(plate)));
  }

  private static Animal animal(Row row, MealSize size) {
    return new Animal(
        row.text("name"),
        curve(row),
        row.date("weighed"),
        new Animal.Diet(
            Set.copyOf(row.texts("kinds")), pieceLimit(row), row.integer("most_pieces")),
        new Animal.Programme(
            schedule(row),
            size,
            Typed.read(Importance.class, row.text("importance")),
            new Animal.Leeway(row.integer("early_days"), row.integer("late_days"), lateness(row))),
        row.periods("fasts").stream().sorted(Days.BY_START).toList(),
        new Period(
            row.dateOr("from", Period.ALWAYS.from()), row.dateOr("until", Period.ALWAYS.to())));
  }

  private static List<Lateness> lateness(Row row) {
    List<Lateness> limits = new ArrayList<>();
    if (row.has("most_late_meals")) {
      limits.add(new Lateness(Lateness.Counted.MEALS, row.integer("most_late_meals")));
    }
    if (row.has("most_late_days")) {
      limits.add(new Lateness(Lateness.Counted.DAYS, row.integer("most_late_days")));
    }
    return limits;
  }

  private static void checkCurve(Row row) {
    if (row.text("curve").equals("constant")) {
      row.forbid("with curve constant", "adult_g", "rate_per_day");
      return;
    }
    for (String column : List.of("adult_g", "rate_per_day")) {
      if (!row.has(column)) {
        row.wrong(column, "a number", "A growth curve needs it.");
      }
    }
    if (row.has("adult_g") && row.grams("adult_g").compareTo(row.grams("mass_g")) < 0) {
      row.wrong("adult_g", "at least mass_g, " + row.grams("mass_g"), "");
    }
  }

  private static Curve curve(Row row) {
    Grams mass = row.grams("mass_g");
    return switch (row.text("curve")) {
      case "logistic" ->
          new Curve.Logistic(mass, row.grams("adult_g"), row.number("rate_per_day").doubleValue());
      case "gompertz" ->
          new Curve.Gompertz(mass, row.grams("adult_g"), row.number("rate_per_day").doubleValue());
      default -> new Curve.Constant(mass);
    };
  }

  private static void checkSchedule(Row row) {
    row.exactlyOne("every_days", "weekdays");
    row.together("every_days", "next_meal");
    if (row.has("weekdays")) {
      row.texts("weekdays").stream()
          .filter(word -> !WEEKDAYS.contains(word.toLowerCase(Locale.ROOT)))
          .findFirst()
          .ifPresent(
              word ->
                  row.wrong(
                      "weekdays", Problem.quote(word), "mon, tue, wed, thu, fri, sat or sun", ""));
    }
  }

  private static Schedule schedule(Row row) {
    if (row.has("every_days")) {
      return new Schedule.Every(row.integer("every_days"), row.date("next_meal"));
    }
    Set<DayOfWeek> days = new TreeSet<>();
    row.texts("weekdays").forEach(word -> days.add(DeliveryPart.weekday(word)));
    return new Schedule.Weekdays(days);
  }

  private static PieceLimit pieceLimit(Row row) {
    return row.has("largest_piece_g")
        ? new PieceLimit.OfGrams(row.grams("largest_piece_g"))
        : new PieceLimit.ShareOfMass(row.percent("largest_piece_percent"));
  }
}
