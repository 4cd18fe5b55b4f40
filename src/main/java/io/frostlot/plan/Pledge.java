package io.frostlot.plan;

import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.util.Set;

/**
 * Packs that the keeper has made up his mind to buy, or to buy no more of, whatever they are good
 * for.
 *
 * @param supplier whose packs
 * @param packIds rows of its price sheet that count
 * @param orderDates orders dated within count
 * @param packs how many in all
 * @param mostBoxes an order of the supplier dated within fills no more boxes, or {@link #ANY_BOXES}
 */
public record Pledge(
    String supplier, Set<String> packIds, Period orderDates, Packs packs, int mostBoxes) {
  public static final int ANY_BOXES = Integer.MAX_VALUE;

  /** In any number of boxes. */
  public Pledge(String supplier, Set<String> packIds, Period orderDates, Packs packs) {
    this(supplier, packIds, orderDates, packs, ANY_BOXES);
  }

  public Pledge {
    packIds = Set.copyOf(packIds);
    if (packIds.isEmpty()) {
      throw new IllegalArgumentException("a pledge of no packs");
    }
  }

  /** How many packs: from {@code least} to {@code most}. */
  public record Packs(int least, int most) {
    public Packs {
      if (least < 0 || most < least || (least == 0 && most == Pack.UNLIMITED)) {
        throw new IllegalArgumentException("from " + least + " to " + most + " packs");
      }
    }

    /** How many too few or too many. */
    public int off(int packs) {
      return Math.max(0, Math.max(least - packs, packs - most));
    }

    public static Packs atLeast(int packs) {
      return new Packs(packs, Pack.UNLIMITED);
    }

    public static Packs atMost(int packs) {
      return new Packs(0, packs);
    }
  }

  /** Does an order, where it is meant, fill no more boxes? */
  public boolean fits(Order order) {
    return !concerns(order.slot()) || order.boxes().count() <= mostBoxes;
  }

  /** Is an order of this delivery meant? */
  public boolean concerns(Slot slot) {
    return supplier.equals(slot.supplier()) && orderDates.contains(slot.ordered());
  }

  /** Does a pack of an order count? */
  public boolean counts(Slot slot, Pack pack) {
    return concerns(slot) && packIds.contains(pack.id());
  }

  /** Packs of a plan that count. */
  public int kept(Plan plan) {
    return plan.orders().stream()
        .flatMap(order -> order.lines().stream().filter(line -> counts(order.slot(), line.pack())))
        .mapToInt(Order.Line::packs)
        .sum();
  }
}
