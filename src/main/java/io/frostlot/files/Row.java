package io.frostlot.files;

import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One row of a CSV file, its cells read by schema. The typed getters take for granted that the
 * column is required, has a default, or was asked for with {@link #has}.
 */
final class Row {
  private final String file;
  private final int line;
  private final Map<String, Object> values;
  private final Map<String, String> typed;
  private final Problems problems;
  private boolean sound;

  /**
   * One row.
   *
   * @param values right cells and defaults, by column
   * @param typed cells that are not blank as they were typed, by column
   */
  Row(Where line, Map<String, Object> values, Map<String, String> typed, Problems problems) {
    this.file = line.file();
    this.line = line.line();
    this.values = values;
    this.typed = typed;
    this.problems = problems;
    this.sound = true;
  }

  Where at(String column) {
    return new Where(file, line, column);
  }

  /** Is every cell right so far? */
  boolean isSound() {
    return sound;
  }

  /** Reports a cell. */
  void wrong(String column, String expected, String hint) {
    wrong(column, Problem.quote(typed.getOrDefault(column, "")), expected, hint);
  }

  void wrong(String column, String found, String expected, String hint) {
    sound = false;
    problems.add(new Problem(at(column), found, expected, hint));
  }

  /** Notes a sentence on what is accepted but should be looked at. */
  void lookAt(String sentence) {
    problems.lookAt(file + ": " + sentence);
  }

  boolean has(String column) {
    return values.containsKey(column);
  }

  /** Was it typed, rather than filled in by default? */
  boolean isTyped(String column) {
    return typed.containsKey(column);
  }

  /** Reports unless exactly one of these columns is filled. */
  boolean exactlyOne(String... columns) {
    List<String> filled = Stream.of(columns).filter(this::isTyped).toList();
    if (filled.size() != 1) {
      wrong(
          filled.isEmpty() ? columns[0] : filled.get(1),
          filled.isEmpty() ? "nothing" : String.join(" and ", filled),
          "exactly one of " + String.join(", ", columns),
          "");
    }
    return filled.size() == 1;
  }

  /** Reports unless both or neither of two columns is filled. */
  boolean together(String column, String other) {
    if (isTyped(column) != isTyped(other)) {
      String missing = isTyped(column) ? other : column;
      String filled = isTyped(column) ? column : other;
      wrong(missing, "nothing", "a value, because " + filled + " has one", "");
    }
    return isTyped(column) == isTyped(other);
  }

  /** Reports each of these columns that is filled. */
  void forbid(String reason, String... columns) {
    for (String column : columns) {
      if (isTyped(column)) {
        wrong(column, "nothing " + reason, "");
      }
    }
  }

  private Object value(String column) {
    Object value = values.get(column);
    if (value == null) {
      throw new IllegalStateException("no value for " + at(column));
    }
    return value;
  }

  String text(String column) {
    return (String) value(column);
  }

  String textOr(String column, String other) {
    return has(column) ? text(column) : other;
  }

  BigDecimal number(String column) {
    return (BigDecimal) value(column);
  }

  int integer(String column) {
    return number(column).intValueExact();
  }

  int integerOr(String column, int other) {
    return has(column) ? integer(column) : other;
  }

  Grams grams(String column) {
    return Grams.of(number(column));
  }

  Percent percent(String column) {
    return new Percent(number(column));
  }

  LocalDate date(String column) {
    return (LocalDate) value(column);
  }

  LocalDate dateOr(String column, LocalDate other) {
    return has(column) ? date(column) : other;
  }

  boolean yes(String column) {
    return (Boolean) value(column);
  }

  Period periodOr(String column, Period other) {
    return has(column) ? (Period) value(column) : other;
  }

  List<Period> periods(String column) {
    return has(column)
        ? ((List<?>) value(column)).stream().map(Period.class::cast).toList()
        : List.of();
  }

  List<String> texts(String column) {
    return ((List<?>) value(column)).stream().map(String.class::cast).toList();
  }
}
