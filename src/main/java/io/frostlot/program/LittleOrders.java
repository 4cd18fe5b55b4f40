package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Replay;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Deliveries of the supplier from which a little costs least to order: some pieces now and then
 * make good what whole packs of others lack.
 */
final class LittleOrders {
  private static final int FEW = 3;
  private final World world;
  private final List<Slot> slots;

  LittleOrders(World world) {
    this.world = world;
    Optional<String> cheapest =
        world.slots().stream()
            .map(Slot::supplier)
            .distinct()
            .min(Comparator.comparingDouble(this::ofAnOrder).thenComparing(id -> id));
    slots =
        world.slots().stream()
            .filter(slot -> cheapest.filter(slot.supplier()::equals).isPresent())
            .toList();
  }

  /** What is charged for an order of one box. */
  private double ofAnOrder(String id) {
    Supplier supplier = world.supplier(id);
    Shipping.Rate rate = supplier.shipping().rate();
    return supplier.isPickUp() ? 0 : rate.perOrder().plus(rate.firstBox()).toDouble();
  }

  /** The last that come in time for what a plan lacks, without its own. */
  Set<Slot> inTimeFor(Answer.Judged plan) {
    Set<Slot> found = new TreeSet<>();
    lacking(plan)
        .map(this::lastBefore)
        .flatMap(Optional::stream)
        .filter(slot -> !plan.plan().slots().contains(slot))
        .distinct()
        .limit(FEW)
        .forEach(found::add);
    return found;
  }

  /** Is none of them in a set? */
  boolean isWithout(Set<Slot> set) {
    return slots.stream().noneMatch(set::contains);
  }

  /** A set with each of them added. */
  List<Set<Slot>> added(Set<Slot> set) {
    return slots.stream()
        .<Set<Slot>>map(
            slot -> {
              Set<Slot> more = new TreeSet<>(set);
              more.add(slot);
              return more;
            })
        .toList();
  }

  private Stream<LocalDate> lacking(Answer.Judged plan) {
    Stream<LocalDate> unmet =
        plan.standing().unmet() == 0
            ? Stream.empty()
            : Replay.of(world, plan.plan()).unmet().stream()
                .map(meal -> meal.demand().meal().days().latest());
    Stream<LocalDate> lacking =
        plan.books().shortfalls().stream()
            .map(Shortfall::parts)
            .flatMap(List::stream)
            .map(part -> part.days().from());
    return Stream.concat(unmet, lacking);
  }

  private Optional<Slot> lastBefore(LocalDate day) {
    return slots.stream()
        .filter(slot -> slot.arrivesLatest().isBefore(day))
        .max(Comparator.comparing(Slot::arrivesLatest));
  }
}
