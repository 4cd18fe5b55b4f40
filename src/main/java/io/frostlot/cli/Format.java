package io.frostlot.cli;

import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine.TypeConversionException;

/** How an answer is printed. */
enum Format {
  TEXT,
  JSON,
  CSV;

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Format typed(String text) {
    return Arrays.stream(values())
        .filter(format -> format.toString().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException("found \"" + text + "\", expected text, json or csv"));
  }
}
