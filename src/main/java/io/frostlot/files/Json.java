package io.frostlot.files;

import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A JSON value that remembers where it stood. */
sealed interface Json {
  Where where();

  /** As shown to the keeper. */
  String shown();

  /** The same value somewhere else; used for defaults, which have no place in the file. */
  Json at(Where place);

  record Text(Where where, String value) implements Json {
    @Override
    public String shown() {
      return value.isBlank() ? "\"\"" : Problem.quote(value);
    }

    @Override
    public Json at(Where place) {
      return new Text(place, value);
    }
  }

  /** A number, its digits as typed. */
  record Num(Where where, String digits) implements Json {
    @Override
    public String shown() {
      return digits.length() > 40 ? digits.substring(0, 40) + "..." : digits;
    }

    @Override
    public Json at(Where place) {
      return new Num(place, digits);
    }
  }

  record Bool(Where where, boolean value) implements Json {
    @Override
    public String shown() {
      return String.valueOf(value);
    }

    @Override
    public Json at(Where place) {
      return new Bool(place, value);
    }
  }

  record Nothing(Where where) implements Json {
    @Override
    public String shown() {
      return "null";
    }

    @Override
    public Json at(Where place) {
      return new Nothing(place);
    }
  }

  record Arr(Where where, List<Json> items) implements Json {
    @Override
    public String shown() {
      return "a list [...]";
    }

    @Override
    public Json at(Where place) {
      return new Arr(place, items.stream().map(item -> item.at(place)).toList());
    }
  }

  /**
   * An object; the typed getters take for granted that its schema was checked and that the field is
   * required, has a default, or was asked for with {@link #has}.
   */
  record Obj(Where where, Map<String, Json> fields) implements Json {
    @Override
    public String shown() {
      return "an object {...}";
    }

    @Override
    public Json at(Where place) {
      return new Obj(place, fields);
    }

    boolean has(String name) {
      return fields.containsKey(name);
    }

    Json get(String name) {
      Json value = fields.get(name);
      if (value == null) {
        throw new IllegalStateException("no field " + name + " at " + where);
      }
      return value;
    }

    Obj object(String name) {
      return (Obj) get(name);
    }

    /** No items where the list was left out or is wrong. */
    List<Json> items(String name) {
      return has(name) ? ((Arr) get(name)).items() : List.of();
    }

    List<Obj> objects(String name) {
      return items(name).stream().map(Obj.class::cast).toList();
    }

    List<String> texts(String name) {
      return items(name).stream().map(item -> ((Text) item).value()).toList();
    }

    String text(String name) {
      return ((Text) get(name)).value();
    }

    boolean yes(String name) {
      return ((Bool) get(name)).value();
    }

    BigDecimal decimal(String name) {
      return new BigDecimal(get(name) instanceof Num num ? num.digits() : text(name));
    }

    int integer(String name) {
      return decimal(name).intValueExact();
    }

    Money money(String name) {
      return new Money(decimal(name));
    }

    Percent percent(String name) {
      return new Percent(decimal(name));
    }

    Grams grams(String name) {
      return Grams.of(decimal(name));
    }

    LocalDate date(String name) {
      return LocalDate.parse(text(name));
    }

    /** The period typed, or all days where left out. */
    Period period(String name) {
      return has(name) ? Days.period(text(name)).orElseThrow() : Period.ALWAYS;
    }

    List<Period> periods(String name) {
      return texts(name).stream().map(text -> Days.period(text).orElseThrow()).toList();
    }
  }
}
