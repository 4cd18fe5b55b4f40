package io.frostlot.files;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Checks a text, number or truth value against its schema. */
record JsonScalar(Json.Obj schema, Problems problems) {
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cs}&&[^\\n\\t]]");

  Optional<Json> check(Json value) {
    if (value instanceof Json.Num number) {
      return number(number);
    }
    return value instanceof Json.Text text ? text(text) : Optional.of(value);
  }

  private Optional<Json> number(Json.Num number) {
    NumberRange range = NumberRange.of(isWhole(), schema);
    Optional<BigDecimal> plain = NumberRange.plain(number.digits());
    if (plain.isEmpty()) {
      return refuse(number, range.expected(), "At most 12 digits and 10 decimals, no exponent.");
    }
    return range.takes(plain.get())
        ? Optional.of(number)
        : refuse(number, range.expectedInsteadOf(plain.get()), "");
  }

  private boolean isWhole() {
    return schema.get("type") instanceof Json.Text type && type.value().equals("integer");
  }

  private Optional<Json> text(Json.Text text) {
    String value = text.value();
    int most = schema.has("maxLength") ? schema.integer("maxLength") : 1000;
    if (value.codePointCount(0, value.length()) > most) {
      return refuse(text, "at most " + most + " characters", "");
    }
    if ((schema.has("minLength") && value.isBlank()) || CONTROL.matcher(value).find()) {
      return refuse(
          text, JsonSchema.expected(schema), "Blank text and control characters are refused.");
    }
    if (schema.has("enum") && !schema.texts("enum").contains(value)) {
      return refuse(text, JsonSchema.expected(schema), Nearest.hint(value, schema.texts("enum")));
    }
    String format = schema.has("format") ? schema.text("format") : "";
    if (format.equals("date") && Days.date(value).isEmpty()) {
      return refuse(text, Days.DATE, Days.dateHint(value));
    }
    if (format.equals("iso-8601-interval") && Days.period(value).isEmpty()) {
      return refuse(text, Days.PERIOD, Days.periodHint(value));
    }
    if (schema.has("pattern") && !Pattern.compile(schema.text("pattern")).matcher(value).find()) {
      return refuse(text, JsonSchema.expected(schema), "");
    }
    return Optional.of(text);
  }

  private Optional<Json> refuse(Json value, String expected, String hint) {
    problems.add(new Problem(value.where(), value.shown(), expected, hint));
    return Optional.empty();
  }
}
