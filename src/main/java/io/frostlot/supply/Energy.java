package io.frostlot.supply;

import java.util.OptionalDouble;

/**
 * Energy of whole prey as fed: Small Animal Clinical Nutrition, 5th ed., 2010, table 71-5: mouse
 * pup of 1.5 g 0.8 kcal/g, mouse 1.7, rat 1.6, day-old chick 1.3. A pup is taken for one below 3 g.
 */
public final class Energy {
  private static final double PUP_BELOW_G = 3;

  private Energy() {}

  /** Kilocalories in a gram; empty for a kind that is not in the table. */
  public static OptionalDouble kcalPerGram(Item item) {
    return switch (item.kind()) {
      case "mouse" -> OptionalDouble.of(item.grams().mean().toDouble() < PUP_BELOW_G ? 0.8 : 1.7);
      case "rat" -> OptionalDouble.of(1.6);
      case "chick" -> OptionalDouble.of(1.3);
      default -> OptionalDouble.empty();
    };
  }
}
