package io.frostlot.plan;

import io.frostlot.supply.Slot;
import java.util.List;

/**
 * What is left in the boxes of the next orders, and what would be worth putting into it.
 *
 * @param orders that are sent in boxes with a limit, by order date
 */
public record BoxRoom(List<Left> orders) implements SecondLook {
  public BoxRoom {
    orders = List.copyOf(orders);
  }

  /** What can be said of it. */
  public enum Verdict {
    /** No pack of the supplier fits. */
    NO_PACK_FITS,
    /** Nothing that fits saves money; that is certain. */
    NOTHING,
    /** The addition saves money; there may be one that saves more. */
    SAVES,
    CANNOT_TELL
  }

  /**
   * What is left in the boxes of one order.
   *
   * @param boxes all of them together, one for each limit that is stated
   * @param addition the best found, at most one; none of what nobody eats, unless it saves money
   */
  public record Left(
      Slot slot, List<BoxFill.Fill> boxes, Verdict verdict, List<Addition> addition) {
    public Left {
      boxes = List.copyOf(boxes);
      addition = List.copyOf(addition);
    }
  }

  /**
   * Packs that are ordered besides.
   *
   * @param packs of each row
   * @param difference from the plan shown to the one with them
   */
  public record Addition(List<Order.Content> packs, Difference difference) {
    public Addition {
      packs = List.copyOf(packs);
    }
  }
}
