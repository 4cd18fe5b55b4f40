package io.frostlot.oracle;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Order;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every order that could be placed for a slot, at its least cost. */
final class Candidates {
  private final World world;
  private final Tiny tiny;
  private final TotalLimits limits;
  private final EarlierPlan earlier;

  /**
   * An order that could be placed.
   *
   * @param cost in millionths, effort not counted
   * @param pieces by item
   * @param uses what it uses up of each limit over all orders
   */
  record Candidate(Order order, long cost, Map<Item, Integer> pieces, int[] uses) {}

  private record Key(Map<Item, Integer> pieces, List<Integer> uses, long changed) {}

  Candidates(Tiny tiny, TotalLimits limits) {
    this.tiny = tiny;
    world = tiny.world;
    this.limits = limits;
    earlier = new EarlierPlan(world);
  }

  List<Candidate> of(Slot slot) {
    Supplier supplier = world.supplier(slot.supplier());
    OracleInvoice invoice = new OracleInvoice(supplier, slot, world.decimals());
    Map<Key, Candidate> cheapest = new HashMap<>();
    fill(
        slot,
        supplier.sheet().packs(),
        0,
        roomFor(slot),
        new LinkedHashMap<>(),
        packs -> {
          for (OracleInvoice.Priced priced : invoice.price(packs)) {
            if (!isPledgedFor(priced.order())) {
              continue;
            }
            Candidate candidate = candidate(priced);
            Key key =
                new Key(
                    candidate.pieces,
                    java.util.Arrays.stream(candidate.uses).boxed().toList(),
                    earlier.of(candidate.order));
            cheapest.merge(key, candidate, (a, b) -> b.cost < a.cost ? b : a);
          }
        });
    List<Candidate> all = new ArrayList<>(cheapest.values());
    all.sort((a, b) -> Long.compare(a.cost, b.cost));
    return all;
  }

  /** Within the boxes that a pledge is for. */
  private boolean isPledgedFor(Order order) {
    return world.pledges().stream()
        .noneMatch(
            pledge ->
                order.slot().supplier().equals(pledge.supplier())
                    && pledge.orderDates().contains(order.slot().ordered())
                    && order.boxes().count() > pledge.mostBoxes());
  }

  private interface Visit {
    void visit(Map<Pack, Integer> packs);
  }

  private void fill(
      Slot slot, List<Pack> rows, int row, long room, Map<Pack, Integer> chosen, Visit visit) {
    if (row == rows.size()) {
      if (!chosen.isEmpty()) {
        visit.visit(chosen);
      }
      return;
    }
    Pack pack = rows.get(row);
    fill(slot, rows, row + 1, room, chosen, visit);
    long each =
        pack.parts().stream()
            .mapToLong(part -> part.pieces() * part.item().litres().microlitres())
            .sum();
    int most = Math.min(mostUseful(slot, pack), pack.available().perDelivery());
    for (int packs = 1; packs <= most && packs * each <= room; packs++) {
      chosen.put(pack, packs);
      fill(slot, rows, row + 1, room - packs * each, chosen, visit);
    }
    chosen.remove(pack);
  }

  /** Litres that could be free on the day, in microlitres: a delivery must fit in whole. */
  private long roomFor(Slot slot) {
    long room =
        world.scenario().larder().freezers().stream()
            .filter(Freezer::inUse)
            .mapToLong(f -> f.usable().microlitres())
            .sum();
    if (world.scenario().policy().freezerCheck() == Policy.FreezerCheck.END_OF_DAY) {
      room += new Room(tiny).mostEaten(tiny.day(slot.arrivesEarliest()));
    }
    return room;
  }

  /**
   * Packs that could be eaten, rounded up; without a limit where more could pay all the same: by a
   * threshold, a step or a group of the price ladder, for safety, or since they are pledged or were
   * ordered before.
   */
  private int mostUseful(Slot slot, Pack pack) {
    Supplier supplier = world.supplier(slot.supplier());
    boolean more =
        !world.scenario().policy().safety().equals(Policy.Safety.NONE)
            || earlier.had(slot, pack)
            || world.pledges().stream()
                .anyMatch(pledge -> pledge.packs().least() > 0 && pledge.counts(slot, pack))
            || supplier.terms().minimum().from().toDouble() > 0
            || !supplier.terms().discounts().isEmpty()
            || !supplier.terms().freeShipping().isEmpty()
            || supplier.sheet().breaks().stream().anyMatch(b -> b.packId().equals(pack.id()))
            || supplier.sheet().sales().stream()
                .anyMatch(s -> s.covers(pack) && s.terms() instanceof Sale.TakeAndPay);
    return more
        ? Pack.UNLIMITED
        : pack.parts().stream()
            .mapToInt(part -> (edible(slot, part.item()) + part.pieces() - 1) / part.pieces())
            .max()
            .orElse(0);
  }

  private int edible(Slot slot, Item item) {
    LocalDate last =
        world.scenario().larder().freezers().stream()
            .filter(Freezer::inUse)
            .map(freezer -> freezer.useBy(item, slot.arrivesEarliest()))
            .max(LocalDate::compareTo)
            .orElse(LocalDate.MIN);
    int pieces = 0;
    for (Demand demand : world.demands()) {
      Meal.Days days = demand.meal().days();
      if (!days.latest().isBefore(slot.arrivesLatest()) && !days.earliest().isAfter(last)) {
        pieces +=
            demand.meal().count()
                * demand.options().stream()
                    .filter(option -> option.item().equals(item))
                    .mapToInt(Option::pieces)
                    .max()
                    .orElse(0);
      }
    }
    return pieces;
  }

  private Candidate candidate(OracleInvoice.Priced priced) {
    Map<Item, Integer> pieces = new LinkedHashMap<>();
    priced
        .order()
        .lines()
        .forEach(
            line ->
                line.pack()
                    .parts()
                    .forEach(
                        part ->
                            pieces.merge(part.item(), line.packs() * part.pieces(), Integer::sum)));
    return new Candidate(priced.order(), priced.cost(), pieces, limits.uses(priced.order()));
  }
}
