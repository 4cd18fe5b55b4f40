package io.frostlot.files;

import java.util.Locale;

/**
 * Something in the input that cannot be used.
 *
 * @param found what stands there, as shown to the keeper
 * @param expected what could stand there
 * @param hint a sentence on the likely cause; may be empty
 */
public record Problem(Where where, String found, String expected, String hint) {
  private static final int SHOWN = 60;

  /** The one form of all messages: where, found, expected, hint. */
  @Override
  public String toString() {
    return where
        + ": found "
        + found
        + ", expected "
        + expected
        + "."
        + (hint.isEmpty() ? "" : " " + hint);
  }

  /** Text as found: quoted, shortened, without control characters. */
  static String quote(String text) {
    if (text.isBlank()) {
      return "nothing";
    }
    String head = text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "...";
    return '"'
        + visible(head)
        + '"'
        + (text.length() <= SHOWN
            ? ""
            : String.format(Locale.ROOT, " (%,d characters)", text.length()));
  }

  /** Control and direction characters, which could upset a terminal, shown as a question mark. */
  static String visible(String text) {
    return text.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\u2028\\u2029]", "?");
  }
}
