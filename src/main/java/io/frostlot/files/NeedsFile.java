package io.frostlot.files;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code needs.csv}. */
final class NeedsFile {
  private final ScenarioFile scenario;
  private final Set<String> animals;

  /**
   * A reader.
   *
   * @param animals names, from which the meals of animals get their ids
   */
  NeedsFile(ScenarioFile scenario, Set<String> animals) {
    this.scenario = scenario;
    this.animals = animals;
  }

  /** The needs that are right; those without a label get one that says what they are. */
  List<Need> read(Table table) {
    List<Need> needs = new ArrayList<>();
    table.rows().forEach(row -> need(row).ifPresent(needs::add));
    return labelled(needs, table.texts("label"));
  }

  private Optional<Need> need(Row row) {
    scenario.kinds().require(row, "kind", row.text("kind"));
    if (row.grams("most_g").compareTo(row.grams("least_g")) < 0) {
      row.wrong("most_g", "at least least_g, " + row.grams("least_g"), "");
    }
    LocalDate best = row.date("date");
    LocalDate earliest = row.dateOr("earliest", best);
    LocalDate latest = row.dateOr("latest", best);
    if (earliest.isAfter(best)) {
      row.wrong("earliest", "a day up to " + best, "");
    }
    if (latest.isBefore(best)) {
      row.wrong("latest", "a day from " + best + " on", "");
    }
    scenario.planning().ifPresent(planning -> requireWithin(row, planning));
    String label = row.textOr("label", "");
    if (isMealId(label)) {
      row.wrong("label", "a label that is not an animal's name and a date", "");
    }
    return row.isSound()
        ? Optional.of(
            new Need(
                label,
                row.text("kind"),
                row.grams("least_g"),
                row.grams("most_g"),
                row.integer("pieces"),
                new Meal.Days(earliest, best, latest)))
        : Optional.empty();
  }

  private static void requireWithin(Row row, Period planning) {
    for (String column : List.of("date", "earliest", "latest")) {
      if (row.has(column) && !planning.contains(row.date(column))) {
        row.wrong(column, "a planning day, " + planning.from() + " to " + planning.to(), "");
      }
    }
  }

  private boolean isMealId(String label) {
    int space = label.lastIndexOf(' ');
    return space > 0
        && animals.contains(label.substring(0, space))
        && Days.date(label.substring(space + 1)).isPresent();
  }

  /** Labels do not depend on the order of rows: like rows are numbered by their pieces. */
  private static List<Need> labelled(List<Need> needs, Set<String> typed) {
    Set<String> taken = new HashSet<>(typed);
    Map<String, Integer> counts = new HashMap<>();
    List<Need> labelled = new ArrayList<>();
    needs.stream()
        .sorted(
            Comparator.comparing((Need need) -> need.days().earliest())
                .thenComparing(need -> need.days().latest())
                .thenComparingInt(Need::pieces))
        .forEach(
            need -> {
              String label = need.label();
              while (label.isEmpty()) {
                String base = description(need);
                int number = counts.merge(base, 1, Integer::sum);
                String candidate = number == 1 ? base : base + " #" + number;
                label = taken.add(candidate) ? candidate : "";
              }
              labelled.add(
                  new Need(
                      label, need.kind(), need.least(), need.most(), need.pieces(), need.days()));
            });
    return labelled;
  }

  private static String description(Need need) {
    return need.kind()
        + " "
        + need.days().best()
        + " "
        + need.least().toDecimal().toPlainString()
        + "-"
        + need.most();
  }
}
