package io.frostlot.report;

import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.Locale;

/**
 * How days, amounts and counts are written; money in one currency. What should not be broken across
 * lines holds no-break spaces, which the page turns into plain ones.
 */
record Wording(Currency currency) {
  static final char NO_BREAK = '\u00a0';
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE'\u00a0'd'\u00a0'MMM'\u00a0'uuuu", Locale.ROOT);
  private static final DateTimeFormatter SHORT_DAY =
      DateTimeFormatter.ofPattern("d'\u00a0'MMM", Locale.ROOT);

  /** Such as "Tue 7 Jan 2031". */
  static String day(LocalDate day) {
    return DAY.format(day);
  }

  /** Such as "7 Jan 2031". */
  static String date(LocalDate day) {
    return shortDay(day) + NO_BREAK + day.getYear();
  }

  /** Such as "7 Jan". */
  static String shortDay(LocalDate day) {
    return SHORT_DAY.format(day);
  }

  static String arrival(LocalDate earliest, LocalDate latest) {
    return earliest.equals(latest)
        ? day(earliest)
        : day(earliest) + ", at the latest " + day(latest);
  }

  /** Such as "1 box", "2 boxes". */
  static String count(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  /** Without its currency, as in a column. */
  String bare(Money amount) {
    return amount.toText(Math.max(0, currency.getDefaultFractionDigits()));
  }

  /** Such as "12.40 EUR". */
  String money(Money amount) {
    return bare(amount) + NO_BREAK + currency.getCurrencyCode();
  }

  /** Less than half of the least coin. */
  boolean isNothing(double amount) {
    return Math.abs(amount) < Math.pow(10, -Math.max(0, currency.getDefaultFractionDigits())) / 2;
  }

  /** The least that an amount that is not exact comes to, in the minor unit. */
  String atLeast(double amount) {
    return inexact(amount, RoundingMode.FLOOR);
  }

  /** The most that an amount that is not exact comes to, in the minor unit. */
  String atMost(double amount) {
    return inexact(amount, RoundingMode.CEILING);
  }

  /** An amount that is not exact, as in a column. */
  String barely(double amount) {
    int digits = Math.max(0, currency.getDefaultFractionDigits());
    return BigDecimal.valueOf(amount).setScale(digits, RoundingMode.HALF_UP).toPlainString();
  }

  private String inexact(double amount, RoundingMode towards) {
    int digits = Math.max(0, currency.getDefaultFractionDigits());
    BigDecimal withoutNoise = BigDecimal.valueOf(amount).setScale(6, RoundingMode.HALF_EVEN);
    return withoutNoise.setScale(digits, towards).toPlainString()
        + NO_BREAK
        + currency.getCurrencyCode();
  }

  /** One decimal, or none where it is zero. */
  static String decimal(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  static String percent(double share) {
    return Math.round(100 * share) + String.valueOf(NO_BREAK) + "%";
  }

  /** A rule's id as words. */
  static String rule(String id) {
    return id.replace('-', ' ');
  }
}
