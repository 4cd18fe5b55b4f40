package io.frostlot.plan;

/**
 * Pieces of a lot that no meal of the planning days eats and that are not thrown away by decision.
 *
 * @param pieces at least 1
 */
public record Leftover(Lot lot, int pieces, Reason reason) {

  /** Why they are left. */
  public sealed interface Reason {
    /** Kebab-case name, as in files. */
    String id();
  }

  /** Meals after the planning days eat them. */
  public record KeptForLater() implements Reason {
    @Override
    public String id() {
      return "kept-for-later";
    }
  }

  /** Of the item as it was ordered, fewer are never eaten than the smallest pack bought holds. */
  public record PackSize(int holds) implements Reason {
    @Override
    public String id() {
      return "pack-size";
    }
  }

  /**
   * Animals that took it in the planning days take something heavier later, and no meal takes it.
   */
  public record Outgrown() implements Reason {
    @Override
    public String id() {
      return "outgrown";
    }
  }

  /** The use-by passes before the planning days end; they are to be thrown away. */
  public record PastUseBy() implements Reason {
    @Override
    public String id() {
      return "past-use-by";
    }
  }

  /** None of these: more is there than is eaten. */
  public record NotNeeded() implements Reason {
    @Override
    public String id() {
      return "not-needed";
    }
  }
}
