package io.frostlot.supply;

import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.List;

/**
 * A lower pack price from a number of packs of one price-sheet row on, within one order.
 *
 * @param packId {@link Pack#id()}
 * @param steps rising packs, each at least 2
 */
public record PriceBreak(String packId, Counting counting, List<Step> steps) {
  /** All packs at the price of the step reached, or each pack at the price of its own step. */
  public enum Counting {
    ALL_UNITS,
    INCREMENTAL
  }

  /** From this many packs on, this price a pack. */
  public record Step(int fromPacks, Money price) {
    public Step {
      if (fromPacks < 2 || price.isNegative()) {
        throw new IllegalArgumentException("price step from " + fromPacks + " packs at " + price);
      }
    }
  }

  /** The same where nobody can buy more packs than so many. */
  public PriceBreak upTo(int most) {
    return new PriceBreak(
        packId, counting, steps.stream().filter(step -> step.fromPacks() <= most).toList());
  }

  /** The same where every price is a share of what it is, in the minor unit. */
  public PriceBreak times(BigDecimal share, int decimals) {
    return new PriceBreak(
        packId,
        counting,
        steps.stream()
            .map(step -> new Step(step.fromPacks(), step.price().times(share, decimals)))
            .toList());
  }

  public PriceBreak {
    steps = List.copyOf(steps);
    for (int i = 1; i < steps.size(); i++) {
      if (steps.get(i).fromPacks() <= steps.get(i - 1).fromPacks()) {
        throw new IllegalArgumentException("price steps out of order at " + steps.get(i));
      }
    }
  }
}
