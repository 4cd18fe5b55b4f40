package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A relaxation of the world by weeks, for a bound on a large room: days of one week are taken for
 * one day, the deliveries of a shop in one week for one delivery.
 *
 * <p>Each of these only allows more: a delivery may serve every meal of its week, a piece lasts to
 * the end of its last week, freezers are checked after the meals of a week (whatever fitted on each
 * delivery day fits then), cover is not asked for, a week counts one night of holding; and a shop
 * without limits and promotions that is visited once a week costs no more than one visited on
 * several days. So the least money of the relaxation is a bound for the world.
 */
final class Weeks {
  private static final int DAYS = 7;
  private final World world;
  private final Map<Slot, Slot> merged = new HashMap<>();
  private final Program program;

  private record Visit(String supplier, int week) {}

  Weeks(World world) {
    this.world = world;
    Timeline timeline = new Timeline(world, DAYS);
    Map<Visit, Slot> visits = new HashMap<>();
    List<Slot> slots = new ArrayList<>();
    for (Slot slot : world.slots()) {
      Visit visit = new Visit(slot.supplier(), timeline.at(slot.arrivesEarliest()));
      Slot same =
          isPlainShop(world.supplier(slot.supplier())) ? visits.putIfAbsent(visit, slot) : null;
      merged.put(slot, same == null ? slot : same);
      if (same == null) {
        slots.add(slot);
      }
    }
    program = Rules.program(world.withSlots(slots), DAYS);
    new CoverRows(program).add();
  }

  private static boolean isPlainShop(Supplier supplier) {
    return supplier.delivery() instanceof Delivery.Shop
        && supplier.sheet().sales().isEmpty()
        && supplier.terms().discounts().isEmpty()
        && supplier.shipping().orderCharges().stream()
            .allMatch(charge -> charge.orderDates().equals(Period.ALWAYS))
        && supplier.sheet().packs().stream()
            .allMatch(pack -> pack.available().equals(Pack.Availability.ANY));
  }

  Program program() {
    return program;
  }

  World world() {
    return world;
  }

  /** The slot that stands for a slot of the world. */
  Slot merged(Slot slot) {
    return merged.getOrDefault(slot, slot);
  }
}
