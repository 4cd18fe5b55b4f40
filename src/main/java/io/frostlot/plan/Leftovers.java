package io.frostlot.plan;

import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Finds what is left of each lot when the planning days are over, and why. */
final class Leftovers {
  private final World world;
  private final Plan plan;
  private final LocalDate last;
  private final Set<Item> eatenInPlanning = new HashSet<>();
  private final Set<Item> eatenLater = new HashSet<>();

  Leftovers(World world, Plan plan) {
    this.world = world;
    this.plan = plan;
    last = world.scenario().planning().to();
    for (Demand demand : world.demands()) {
      Set<Item> items = demand.tail() ? eatenLater : eatenInPlanning;
      demand.options().forEach(option -> items.add(option.item()));
    }
  }

  /** By lot, what is kept for later first. */
  List<Leftover> find() {
    List<Leftover> found = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      int left = lot.pieces() - eaten(lot, false) - discarded(lot);
      int later = eaten(lot, true);
      if (lot.useBy().isAfter(last)) {
        add(found, lot, later, new Leftover.KeptForLater());
        add(found, lot, left - later, reason(lot, left - later));
      } else {
        add(found, lot, left, new Leftover.PastUseBy());
      }
    }
    return found;
  }

  private static void add(List<Leftover> found, Lot lot, int pieces, Leftover.Reason reason) {
    if (pieces > 0) {
      found.add(new Leftover(lot, pieces, reason));
    }
  }

  private int eaten(Lot lot, boolean later) {
    return plan.feedings().stream()
        .filter(feeding -> feeding.day().isAfter(last) == later)
        .flatMap(feeding -> feeding.draws().stream())
        .filter(draw -> draw.lotId().equals(lot.id()))
        .mapToInt(Feeding.Draw::pieces)
        .sum();
  }

  private int discarded(Lot lot) {
    return plan.discards().stream()
        .filter(discard -> discard.lotId().equals(lot.id()))
        .mapToInt(Discard::pieces)
        .sum();
  }

  private Leftover.Reason reason(Lot lot, int pieces) {
    OptionalInt pack = smallestPack(lot);
    if (pack.isPresent() && pieces < pack.getAsInt()) {
      return new Leftover.PackSize(pack.getAsInt());
    }
    boolean tail = world.scenario().policy().tail().days() > 0;
    return tail && eatenInPlanning.contains(lot.item()) && !eatenLater.contains(lot.item())
        ? new Leftover.Outgrown()
        : new Leftover.NotNeeded();
  }

  /** Pieces of the smallest pack of the item in the order that the lot came with. */
  private OptionalInt smallestPack(Lot lot) {
    return plan.orders().stream()
        .filter(order -> lot.origin().equals(new Lot.Ordered(order.slot())))
        .flatMap(order -> order.lines().stream())
        .map(Order.Line::pack)
        .filter(pack -> pack.item().equals(lot.item()))
        .mapToInt(Pack::pieces)
        .min();
  }
}
