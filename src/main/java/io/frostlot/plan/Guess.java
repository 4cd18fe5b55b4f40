package io.frostlot.plan;

/**
 * A number that the planning rests on and that is not known for sure.
 *
 * @param of id of the item or supplier, name of the animal or freezer; empty where it is about all
 */
public record Guess(Kind kind, String of, Ends ends) {

  /** What is guessed, and in what. */
  public enum Kind {
    /** Mean grams of a piece whose spread is a guess. */
    PIECE_GRAMS,
    /** Grams of an animal when it was weighed. */
    ANIMAL_GRAMS,
    /** Prices of an old sheet, in percent of it. */
    OLD_PRICES,
    /** Prices after the planning days, in percent of today's. */
    LATER_PRICES,
    /** Usable litres of a freezer. */
    FREEZER_LITRES,
    /** Litres that prey takes in freezers, in percent of those reckoned with. */
    PREY_LITRES,
    /** Meals that are refused, in percent. */
    SKIPPED_MEALS
  }

  /**
   * Between what it likely lies.
   *
   * @param low at most {@code assumed}
   * @param assumed what is planned with
   * @param high at least {@code assumed}
   */
  public record Ends(double low, double assumed, double high) {
    public Ends {
      if (!(low <= assumed && assumed <= high && low < high)) {
        throw new IllegalArgumentException(low + " to " + high + ", assumed " + assumed);
      }
    }

    /** So much less and more, as a share. */
    public static Ends around(double assumed, double share) {
      return new Ends(assumed * (1 - share), assumed, assumed * (1 + share));
    }
  }
}
