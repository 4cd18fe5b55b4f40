package io.frostlot.bench;

/**
 * How large a drawn room is. XXL is XL with about ten times the meal classes, XL10 is XL with ten
 * times the animals and the same kinds of programme; XS is for a quick look only, MEMBER for one of
 * a group.
 */
public enum RoomSize {
  XS,
  MEMBER,
  S,
  M,
  L,
  XL,
  XXL,
  XL10;

  int animals() {
    return switch (this) {
      case XS -> 8;
      case MEMBER -> 12;
      case S -> 20;
      case M -> 60;
      case L -> 600;
      case XL, XXL -> 3000;
      case XL10 -> 30_000;
    };
  }

  int suppliers() {
    return switch (this) {
      case XS -> 2;
      case MEMBER, S -> 3;
      case M -> 4;
      case L -> 5;
      case XL, XXL, XL10 -> 8;
    };
  }

  int weeks() {
    return switch (this) {
      case XS -> 8;
      case MEMBER -> 12;
      case S, M, L -> 26;
      case XL, XXL, XL10 -> 52;
    };
  }

  int tailDays() {
    return switch (this) {
      case XS -> 28;
      case MEMBER -> 91;
      case S, M, L, XL, XXL, XL10 -> 182;
    };
  }

  /** Is it planned for so few weeks that all that is counted in weeks is short? */
  boolean isBrief() {
    return this == XS || this == MEMBER;
  }

  /** Do animals eat on any weekday, and with leeways of their own? */
  boolean varied() {
    return this == XXL;
  }

  /** Times the pack counts of a small room. */
  int packFactor() {
    return switch (this) {
      case XS, MEMBER, S, M -> 1;
      case L -> 2;
      case XL, XXL, XL10 -> 4;
    };
  }

  /** Share of the animals that grow. */
  double growing() {
    return this == MEMBER ? 0.25 : 0.4;
  }

  /** How many small packs a large one is. */
  int smallInLarge() {
    return this == MEMBER ? 2 : 4;
  }

  /** About how many boxes an order has. */
  double boxesInOrder() {
    return switch (this) {
      case MEMBER -> 0.5;
      case XS, S -> 1.3;
      case M -> 2;
      case L -> 4;
      case XL, XXL, XL10 -> 8;
    };
  }
}
