package io.frostlot.files;

import java.util.Locale;

/** Constants as they stand in files: {@code AFTER_DISCOUNT} is {@code after-discount}. */
final class Typed {
  private Typed() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The constant of a text that the schema has checked. */
  static <E extends Enum<E>> E read(Class<E> constants, String text) {
    return Enum.valueOf(constants, text.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
