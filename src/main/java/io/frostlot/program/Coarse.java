package io.frostlot.program;

import io.frostlot.plan.Joint;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.World;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

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
 * ({@link BagsInAll}) and orders that are collected later ({@link ToHaveFirst}). Parts of few
 * deliveries are written down finer, and at last exactly.
 */
final class Coarse implements Written {
  private static final List<Grain> GRAINS =
      List.of(Grain.DELIVERIES, Grain.ofStep(7), Grain.ofStep(14), Grain.ofStep(28));

  private static final int MOST_COLUMNS = 11_000;

  /** Of so small a part the exact program, which has three times as many, is soon solved too. */
  private static final int FEW_COLUMNS = 2500;

  private final World world;
  private final World pooled;
  private final Grain grain;
  private final Program program;
  private final Function<World, Written> exact;

  /** Days of a shop that are taken for one; in other cases a delivery is no other's. */
  private record Visit(String supplier, int week) {}

  /**
   * As fine as may be without being too large a program to solve often.
   *
   * @param exact writes a part of the world down as it is
   */
  Coarse(World world, Function<World, Written> exact) {
    this.world = world;
    this.exact = exact;
    boolean large = Grain.isLarge(world);
    pooled = large || world.keepers().size() == 1 ? Pool.of(world) : Pool.byLife(world);
    program = large ? fromCoarsest(pooled) : fromFinest(pooled);
    grain = program.decisions().timeline().grain();
    strengthen();
  }

  /** The same, of whose parts nothing becomes a plan. */
  Coarse(World world) {
    this(world, Exact::of);
  }

  private Coarse(World world, World pooled, Grain grain, Function<World, Written> exact) {
    this.world = world;
    this.pooled = pooled;
    this.grain = grain;
    this.exact = exact;
    program = of(pooled, grain);
    strengthen();
  }

  private void strengthen() {
    new CoverRows(program).add();
    OrderRoom.add(world, program);
    boolean isKnownWhoEats = !program.decisions().world().joint().equals(Joint.ALONE);
    if (world.keepers().size() > 1 && isKnownWhoEats) {
      new BagsInAll(world, program).add();
      new ToHaveFirst(world, program).add();
    }
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
    if (!grain.takesDaysTogether()) {
      return Rules.program(world, grain);
    }
    Timeline timeline = new Timeline(world, grain);
    Set<Object> visits = new HashSet<>();
    List<Slot> slots =
        world.slots().stream().filter(slot -> visits.add(visit(world, timeline, slot))).toList();
    return Rules.program(world.withSlots(slots).withPledges(kept(world)), grain);
  }

  /** What is told apart: visits of a plain shop where days are taken for one, else deliveries. */
  private static Object visit(World world, Timeline timeline, Slot slot) {
    return timeline.grain().takesDaysTogether() && isPlainShop(world.supplier(slot.supplier()))
        ? new Visit(slot.supplier(), timeline.at(slot.arrivesEarliest()))
        : slot;
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

  @Override
  public Program program() {
    return program;
  }

  /**
   * Where only few deliveries are left, finer than this one. Not where days are taken for one: what
   * is counted would not mean the same.
   */
  @Override
  public Written without(Set<Slot> closed) {
    Timeline timeline = program.decisions().timeline();
    Set<Object> visits = new HashSet<>();
    closed.forEach(slot -> visits.add(visit(world, timeline, slot)));
    List<Slot> left =
        world.slots().stream()
            .filter(slot -> !visits.contains(visit(world, timeline, slot)))
            .toList();
    World part = world.withSlots(left);
    double columns = columns() * left.size() / (double) world.slots().size();
    if (!grain.takesDaysTogether() && columns < FEW_COLUMNS) {
      return exact.apply(part);
    }
    boolean finer = !grain.takesDaysTogether() && columns < 2 * FEW_COLUMNS;
    return new Coarse(part, pooled.withSlots(left), finer ? Grain.DAYS : grain, exact);
  }

  @Override
  public Optional<Written> finer() {
    return !grain.takesDaysTogether() && columns() < 2 * FEW_COLUMNS
        ? Optional.of(exact.apply(world))
        : Optional.empty();
  }

  @Override
  public void whole(double[] point) {
    // says nothing of the freezer from which each is fed
  }

  private int columns() {
    return program.model().columns().size();
  }
}
