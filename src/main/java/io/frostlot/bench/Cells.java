package io.frostlot.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Writes the cells of tables, in Markdown and in CSV. */
final class Cells {
  private Cells() {}

  /** What was measured, when and on what. */
  static String top(String version, LocalDate day) {
    return version + ", " + day + "; " + Machine.says();
  }

  static void head(StringBuilder text, List<String> names) {
    row(text, names);
    row(text, names.stream().map(name -> "---").toList());
  }

  static void row(StringBuilder text, List<String> cells) {
    text.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  static String finite(String format, double value) {
    return Double.isInfinite(value) ? "-" : String.format(Locale.ROOT, format, value);
  }

  /** Empty where there is none. */
  static String number(OptionalLong value) {
    return value.isPresent() ? Long.toString(value.getAsLong()) : "";
  }

  static String number(OptionalDouble value, String none) {
    return value.isPresent() ? String.format(Locale.ROOT, "%.2f", value.getAsDouble()) : none;
  }
}
