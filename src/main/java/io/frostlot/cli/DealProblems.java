package io.frostlot.cli;

import io.frostlot.files.Problem;
import io.frostlot.files.Where;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the reader of deals finds wrong, said by the options in which a deal was typed. */
final class DealProblems {
  /** Name for what has no option of its own. */
  static final String TYPED = "the sale typed";

  /** The place in the document, of which only the field is of interest. */
  private static final Pattern PLACE =
      Pattern.compile(".*\\((?:.*\\.)?([a-zA-Z]+)(?:\\[\\d+\\])?\\)");

  private static final Map<String, String> OPTIONS =
      Map.of(
          "supplier", "--supplier",
          "items", "--item",
          "percentOff", "--percent",
          "price", "--price",
          "take", "--take",
          "pay", "--pay",
          "from", "--spend",
          "amountOff", "--save",
          "when", "--from and --to",
          "follows", "--follows");

  private static final Map<String, String> LIMITS =
      Map.of("mostPacksPerOrder", "--most-an-order", "mostPacksInTotal", "--most-in-all");

  /** Words of the reader that are names of fields. */
  private static final Pattern FIELD = Pattern.compile("\\b(percentOff|price|take|pay)\\b");

  private DealProblems() {}

  static Problem said(Problem problem) {
    return new Problem(
        new Where(option(problem.where()).orElse(TYPED), 0, ""),
        problem.found().startsWith("\"") ? problem.found() : words(problem.found()),
        words(problem.expected()),
        problem.hint());
  }

  private static Optional<String> option(Where where) {
    Matcher place = PLACE.matcher(where.column());
    return place.matches()
        ? Optional.ofNullable(OPTIONS.get(place.group(1)))
            .or(() -> Optional.ofNullable(LIMITS.get(place.group(1))))
        : Optional.empty();
  }

  private static String words(String text) {
    return FIELD.matcher(text).replaceAll(field -> OPTIONS.get(field.group()));
  }
}
