package io.frostlot.files;

import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the cells of one column by the type and constraints of its schema. */
sealed interface Cell {
  /** A cell that was read, or what is wrong with it. */
  sealed interface Outcome {}

  /** Value: String, BigDecimal, LocalDate, Boolean, Period, or a list of String or Period. */
  record Value(Object value) implements Outcome {}

  record Wrong(String expected, String hint) implements Outcome {}

  /** Reads a cell that is not blank, spaces around it taken off. */
  Outcome read(String cell);

  /** What stands in such a cell. */
  String expected();

  static Cell of(Json.Obj field, Json.Obj constraints) {
    boolean interval = field.has("interval");
    return switch (field.text("type")) {
      case "integer" -> new Figure(NumberRange.of(true, constraints));
      case "number" -> new Figure(NumberRange.of(false, constraints));
      case "date" -> new Day();
      case "boolean" -> new YesNo(field.texts("trueValues"), field.texts("falseValues"));
      case "list" -> new Listed(interval ? new Interval() : Text.of(field, constraints));
      default -> interval ? new Interval() : Text.of(field, constraints);
    };
  }

  record Figure(NumberRange range) implements Cell {
    @Override
    public Outcome read(String cell) {
      Optional<BigDecimal> number = NumberRange.plain(cell);
      if (number.isEmpty()) {
        return new Wrong(expected(), hint(cell));
      }
      return range.takes(number.get())
          ? new Value(number.get())
          : new Wrong(range.expectedInsteadOf(number.get()), "");
    }

    private static String hint(String cell) {
      if (cell.contains(",")) {
        return "Decimals take a point here, and thousands no separator.";
      }
      return cell.matches("[-+.\\d\\s]*([eE][-+\\d]*)?")
          ? "Plain digits: at most 12, and 10 decimals."
          : "Maybe a unit was typed in.";
    }

    @Override
    public String expected() {
      return range.expected();
    }
  }

  record Day() implements Cell {
    @Override
    public Outcome read(String cell) {
      Optional<LocalDate> date = Days.date(cell);
      return date.isPresent() ? new Value(date.get()) : new Wrong(Days.DATE, Days.dateHint(cell));
    }

    @Override
    public String expected() {
      return Days.DATE;
    }
  }

  record Interval() implements Cell {
    @Override
    public Outcome read(String cell) {
      Optional<Period> period = Days.period(cell);
      return period.isPresent()
          ? new Value(period.get())
          : new Wrong(Days.PERIOD, Days.periodHint(cell));
    }

    @Override
    public String expected() {
      return Days.PERIOD;
    }
  }

  record YesNo(List<String> yes, List<String> no) implements Cell {
    @Override
    public Outcome read(String cell) {
      String lower = cell.toLowerCase(Locale.ROOT);
      return yes.contains(lower) || no.contains(lower)
          ? new Value(yes.contains(lower))
          : new Wrong(expected(), "");
    }

    @Override
    public String expected() {
      return "yes or no";
    }
  }

  /**
   * One line.
   *
   * @param title the phrase for what is expected, where there are no choices
   */
  record Text(List<String> choices, Pattern pattern, String title, int longest) implements Cell {
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cs}]");

    static Text of(Json.Obj field, Json.Obj constraints) {
      return new Text(
          constraints.has("enum") ? constraints.texts("enum") : List.of(),
          Pattern.compile(constraints.has("pattern") ? constraints.text("pattern") : ".*"),
          field.has("title") ? field.text("title") : "text",
          constraints.has("maxLength") ? constraints.integer("maxLength") : 100);
    }

    @Override
    public Outcome read(String cell) {
      if (cell.codePointCount(0, cell.length()) > longest) {
        return new Wrong("at most " + longest + " characters", "");
      }
      if (CONTROL.matcher(cell).find()) {
        return new Wrong("text without line breaks and control characters", "");
      }
      if (!choices.isEmpty() && !choices.contains(cell)) {
        return new Wrong(expected(), Nearest.hint(cell, choices));
      }
      return pattern.matcher(cell).matches() ? new Value(cell) : new Wrong(expected(), "");
    }

    @Override
    public String expected() {
      return choices.isEmpty() ? title : "one of " + String.join(", ", choices);
    }
  }

  record Listed(Cell item) implements Cell {
    private static final Pattern SPACES = Pattern.compile("\\s+");

    @Override
    public Outcome read(String cell) {
      List<Object> values = new ArrayList<>();
      for (String part : SPACES.split(cell, -1)) {
        Outcome outcome = item.read(part);
        if (outcome instanceof Wrong) {
          return outcome;
        }
        values.add(((Value) outcome).value());
      }
      return new Value(List.copyOf(values));
    }

    @Override
    public String expected() {
      return item.expected();
    }
  }
}
