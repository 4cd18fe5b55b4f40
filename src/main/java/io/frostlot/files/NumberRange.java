package io.frostlot.files;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The numbers that a field takes.
 *
 * @param whole no decimals
 * @param least and {@code most} are both allowed
 */
record NumberRange(boolean whole, BigDecimal least, BigDecimal most) {
  private static final BigDecimal FAR = BigDecimal.TEN.pow(12);

  /** Twelve digits and ten decimals: all that money, grams and litres can hold exactly. */
  private static final Pattern PLAIN = Pattern.compile("-?(\\d{1,12}(\\.\\d{0,10})?|\\.\\d{1,10})");

  /** From the keywords minimum and maximum of a Table Schema's constraints or a JSON Schema. */
  static NumberRange of(boolean whole, Json.Obj keywords) {
    return new NumberRange(
        whole,
        keywords.has("minimum") ? keywords.decimal("minimum") : FAR.negate(),
        keywords.has("maximum") ? keywords.decimal("maximum") : FAR);
  }

  /** A plain decimal with a point; no exponent, no thousands separators. */
  static Optional<BigDecimal> plain(String text) {
    return PLAIN.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }

  boolean takes(BigDecimal number) {
    return (!whole || number.stripTrailingZeros().scale() <= 0)
        && number.compareTo(least) >= 0
        && number.compareTo(most) <= 0;
  }

  String expected() {
    return noun()
        + (least.compareTo(FAR.negate()) == 0 ? "" : " of at least " + least.toPlainString());
  }

  /** Names the limit that the number misses. */
  String expectedInsteadOf(BigDecimal number) {
    return number.compareTo(most) > 0 ? noun() + " of at most " + most.toPlainString() : expected();
  }

  private String noun() {
    return whole ? "a whole number" : "a number";
  }
}
