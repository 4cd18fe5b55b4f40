package io.frostlot.program;

import io.frostlot.plan.Pledge;
import io.frostlot.plan.World;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A relaxation of the world by weeks, for a bound on a large room: the days of one week, of two or
 * of four, are taken for one day, the deliveries of a shop in that time for one delivery.
 *
 * <p>Each of these only allows more: a delivery may serve every meal of its week, a piece lasts to
 * the end of its last week, freezers are checked after the meals of a week (whatever fitted on each
 * delivery day fits then), cover is not asked for, and holding is charged for the nights that are certain; a shop
 * without limits and promotions that is visited once a week costs no more than one visited on
 * several days. The freezers that are in use are taken for one that has their room and the longest
 * of their lives. So the least money of the relaxation is a bound for the world.
 */
final class Weeks {
  private static final int[] STEPS = {7, 14, 28};
  private static final int MOST_COLUMNS = 11_000;
  private final Program program;

  private record Visit(String supplier, int week) {}

  /** By weeks, or by longer steps where that would be too large a program to solve often. */
  Weeks(World world) {
    World pooled = Pool.of(world);
    Program found = of(pooled, STEPS[0]);
    for (int i = 1; i < STEPS.length && isLarge(found); i++) {
      found = of(pooled, STEPS[i]);
    }
    program = found;
    new CoverRows(program).add();
  }

  private static boolean isLarge(Program program) {
    return program.model().columns().size() > MOST_COLUMNS;
  }

  private static Program of(World world, int days) {
    Timeline timeline = new Timeline(world, days);
    Set<Visit> visits = new HashSet<>();
    List<Slot> slots = new ArrayList<>();
    for (Slot slot : world.slots()) {
      Visit visit = new Visit(slot.supplier(), timeline.at(slot.arrivesEarliest()));
      if (!isPlainShop(world.supplier(slot.supplier())) || visits.add(visit)) {
        slots.add(slot);
      }
    }
    return Rules.program(world.withSlots(slots).withPledges(kept(world)), days);
  }

  /** A visit that stands for others may lie outside the dates of a pledge: it is left out then. */
  private static List<Pledge> kept(World world) {
    return world.pledges().stream()
        .filter(pledge -> !isPlainShop(world.supplier(pledge.supplier())))
        .toList();
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
}
