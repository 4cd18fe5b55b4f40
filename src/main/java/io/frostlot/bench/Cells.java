package io.frostlot.bench;

import io.frostlot.plan.Standing;
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

  /** What was found and what is known of it, in words. */
  static String says(Standing found, OptionalDouble bound) {
    StringBuilder words = new StringBuilder("cost ").append(found.money().toText(2));
    if (found.unmet() > 0) {
      words.append(", meals unmet ").append(found.unmet());
    }
    if (found.shortfall() > 0) {
      words.append(", soft rules short by ").append(found.shortfall());
    }
    return words
        .append(bound.isPresent() ? ", bound " + number(bound, "") : ", no bound")
        .toString();
  }

  /** Empty where there is none. */
  static String number(OptionalLong value) {
    return value.isPresent() ? Long.toString(value.getAsLong()) : "";
  }

  static String number(OptionalDouble value, String none) {
    return value.isPresent() ? String.format(Locale.ROOT, "%.2f", value.getAsDouble()) : none;
  }
}
