package io.frostlot.files;

import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Dates and periods as typed: ISO 8601 calendar dates of the years 1900 to 2999, and intervals. */
final class Days {
  static final String DATE = "a date such as 2031-01-31";
  static final String PERIOD = "a period such as 2031-01-05/2031-03-01";
  static final Comparator<Period> BY_START =
      Comparator.comparing(Period::from).thenComparing(Period::to);
  private static final Pattern ISO = Pattern.compile("(19|2\\d)\\d{2}-\\d{2}-\\d{2}");

  private Days() {}

  static Optional<LocalDate> date(String text) {
    if (!ISO.matcher(text).matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Both days included; a single date is a period of one day. */
  static Optional<Period> period(String text) {
    List<Optional<LocalDate>> ends = new ArrayList<>();
    for (String end : text.split("/", -1)) {
      ends.add(date(end));
    }
    if (ends.size() > 2 || ends.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    LocalDate from = ends.get(0).orElseThrow();
    LocalDate to = ends.get(ends.size() - 1).orElseThrow();
    return to.isBefore(from) ? Optional.empty() : Optional.of(new Period(from, to));
  }

  static String dateHint(String text) {
    return ISO.matcher(text).matches()
        ? "There is no such day."
        : "Dates are written year-month-day.";
  }

  static String periodHint(String text) {
    String[] ends = text.split("/", -1);
    boolean dated = ends.length == 2 && date(ends[0]).isPresent() && date(ends[1]).isPresent();
    return dated ? "It ends before it starts." : "First and last day, with a slash between.";
  }

  /** The first period that overlaps one that starts earlier. */
  static Optional<Period> overlap(List<Period> periods) {
    List<Period> sorted = periods.stream().sorted(BY_START).toList();
    Optional<Period> found = Optional.empty();
    for (int i = 1; i < sorted.size() && found.isEmpty(); i++) {
      if (sorted.get(i - 1).overlaps(sorted.get(i))) {
        found = Optional.of(sorted.get(i));
      }
    }
    return found;
  }

  static String text(Period period) {
    return period.from() + "/" + period.to();
  }
}
