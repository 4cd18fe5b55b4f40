package io.frostlot.report;

import io.frostlot.plan.Shortfall;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Currency;
import java.util.Locale;
import java.util.regex.Pattern;

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

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM'\u00a0'uuuu", Locale.ROOT);

  /** What comes on top of the goods: shipping, packing, surcharges, the trip to a shop or show. */
  static final String CHARGES = "charges";

  private static final double GRAMS_A_KILOGRAM = 1000;

  /** Less would be a tenth of a kilogram or none. */
  private static final double LEAST_IN_KILOGRAMS = 150;

  private static final Pattern ISO_DATE =
      Pattern.compile("(?<![\\w-])\\d{4}-\\d{2}-\\d{2}(?![\\w-])");

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

  /** Such as "Jan 2031". */
  static String month(YearMonth month) {
    return MONTH.format(month);
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

  /** By how much a rule gave way, with its unit. */
  static String amount(Shortfall shortfall) {
    long amount = shortfall.amount();
    return switch (shortfall.unit()) {
      case PIECES -> count(amount, "piece", "pieces");
      case PIECE_DAYS -> count(amount, "piece-day", "piece-days");
      case PERCENT -> amount + " percent";
      case MEALS -> count(amount, "meal", "meals");
      case MEALS_OR_DAYS -> count(amount, "meal or day", "meals or days");
      case CHANGES -> count(amount, "change", "changes");
    };
  }

  /** Without its currency, as in a column. */
  String bare(Money amount) {
    return amount.toText(Math.max(0, currency.getDefaultFractionDigits()));
  }

  /** Such as "12.40 EUR". */
  String money(Money amount) {
    return bare(amount) + NO_BREAK + currency.getCurrencyCode();
  }

  /** What prey is worth at list price, where it is known. */
  String toBuyAgain(Money worth) {
    return worth.isZero()
        ? "and nobody here sells the like, so its worth is not known"
        : money(worth) + " to buy again at list price";
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

  /** One decimal, as in a column. */
  static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** One decimal, or none where it is zero. */
  static String decimal(double value) {
    String text = tenths(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** In kilograms with one decimal; where that would say little, in whole grams. */
  static String mass(double grams) {
    return grams < LEAST_IN_KILOGRAMS
        ? Math.round(grams) + String.valueOf(NO_BREAK) + "g"
        : decimal(grams / GRAMS_A_KILOGRAM) + NO_BREAK + "kg";
  }

  /** Whole percent; 100 only where nothing is left. */
  static String percent(double share) {
    long rounded = Math.round(100 * share);
    return (share < 1 && rounded == 100 ? 99 : rounded) + String.valueOf(NO_BREAK) + "%";
  }

  /** The next whole percent, of which a share is no more. */
  static String percentUp(double share) {
    double withoutNoise = Math.round(1e8 * share) / 1e6;
    return (long) Math.ceil(withoutNoise) + String.valueOf(NO_BREAK) + "%";
  }

  /** What a rule charges, in words. */
  static String charge(String ruleId) {
    return switch (ruleId) {
      case "pack-price" -> "packs at list price";
      case "price-breaks" -> "less for many packs of a kind";
      case "shipping" -> CHARGES + " (shipping, packing, trips)";
      case "free-shipping" -> CHARGES + " waived";
      case "effort" -> "effort of ordering and receiving";
      case "moves" -> "pieces moved to another freezer";
      case "changed-due-soon" -> "orders due soon that are changed or new";
      case "past-best" -> "pieces eaten past their best";
      case "tail" -> "prey for meals that nothing left over serves";
      default -> ruleId.replace('-', ' ');
    };
  }

  /** The same text with dates such as 2031-01-07 as words. */
  static String inWords(String text) {
    return ISO_DATE.matcher(text).replaceAll(it -> dayInWords(it.group()));
  }

  private static String dayInWords(String digits) {
    try {
      return day(LocalDate.parse(digits));
    } catch (DateTimeParseException e) {
      return digits;
    }
  }

  /** Such as "7 Jan 2031", or "7 Jan 2031 to 4 Feb 2031" where the days differ. */
  static String fromTo(LocalDate from, LocalDate to) {
    return from.equals(to) ? date(from) : date(from) + " to " + date(to);
  }

  /** Words as a sentence begins with them. */
  static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** A bag by its number in the order, which is not one of how many there are. */
  static String bag(int number, int pieces) {
    return "bag " + number + " (of " + pieces + " pieces)";
  }
}
