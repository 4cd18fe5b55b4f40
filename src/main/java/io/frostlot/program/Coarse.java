package io.frostlot.program;

import io.frostlot.plan.Joint;
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
 * A relaxation of the world, for a bound on a large room: deliveries come on their days, but a
 * use-by is put off to the next of them; where that is still a large program, the days of one week,
 * of two or of four are taken for one, the deliveries of a shop in that time for one delivery.
 *
 * <p>Each of these only allows more: a delivery may serve every meal of its week, a piece lasts to
 * the end of its last week, freezers are checked after the meals until the next delivery or of a
 * week (whatever fitted on each delivery day fits then), safety is not asked for, orders due soon
 * may change, and holding is charged for the nights that are certain; a shop without limits and
 * promotions that is visited once a week costs no more than one visited on several days. The
 * freezers that are in use are taken for one that has their room and the longest of their lives. So
 * the least money of the relaxation is a bound for the world. Where there are several keepers, all
 * eat from one freezer for each life, but who eats what is told apart, for bags that may not be cut
 * ({@link BagsInAll}) and orders that are collected later ({@link ToHaveFirst}).
 */
final class Coarse {
  private static final List<Grain> GRAINS =
      List.of(Grain.DELIVERIES, Grain.ofStep(7), Grain.ofStep(14), Grain.ofStep(28));

  private static final int MOST_COLUMNS = 11_000;
  private final Program program;

  private record Visit(String supplier, int week) {}

  /** As fine as may be without being too large a program to solve often. */
  Coarse(World world) {
    program = Grain.isLarge(world) ? fromCoarsest(Pool.of(world)) : fromFinest(pooled(world));
    new CoverRows(program).add();
    OrderRoom.add(world, program);
    boolean isKnownWhoEats = !program.decisions().world().joint().equals(Joint.ALONE);
    if (world.keepers().size() > 1 && isKnownWhoEats) {
      new BagsInAll(world, program).add();
      new ToHaveFirst(world, program).add();
    }
  }

  private static World pooled(World world) {
    return world.keepers().size() > 1 ? Pool.byLife(world) : Pool.of(world);
  }

  private static Program fromFinest(World pooled) {
    Program found = of(pooled, GRAINS.get(0));
    for (int i = 1; i < GRAINS.size() && isLarge(found); i++) {
      found = of(pooled, GRAINS.get(i));
    }
    return found;
  }

  /** The finest would be too large even to be written down and thrown away. */
  private static Program fromCoarsest(World pooled) {
    int last = GRAINS.size() - 1;
    Program found = of(pooled, GRAINS.get(last).withNightsTogether());
    for (int i = last - 1; i >= 0 && !isLarge(found); i--) {
      Program finer = of(pooled, GRAINS.get(i).withNightsTogether());
      if (isLarge(finer)) {
        break;
      }
      found = finer;
    }
    return found;
  }

  private static boolean isLarge(Program program) {
    return program.model().columns().size() > MOST_COLUMNS;
  }

  private static Program of(World world, Grain grain) {
    if (grain.step() == 1) {
      return Rules.program(world, grain);
    }
    Timeline timeline = new Timeline(world, grain);
    Set<Visit> visits = new HashSet<>();
    List<Slot> slots = new ArrayList<>();
    for (Slot slot : world.slots()) {
      Visit visit = new Visit(slot.supplier(), timeline.at(slot.arrivesEarliest()));
      if (!isPlainShop(world.supplier(slot.supplier())) || visits.add(visit)) {
        slots.add(slot);
      }
    }
    return Rules.program(world.withSlots(slots).withPledges(kept(world)), grain);
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
