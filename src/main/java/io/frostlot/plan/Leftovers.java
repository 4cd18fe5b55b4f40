package io.frostlot.plan;

import io.frostlot.supply.Item;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** Says why pieces are left when the planning days are over. */
final class Leftovers {
  private final World world;
  private final Plan plan;
  private final LocalDate last;
  private final Levels levels;
  private final Set<Item> takenLater = new HashSet<>();
  private final Map<Item, Boolean> outgrown = new HashMap<>();

  Leftovers(World world, Plan plan) {
    this.world = world;
    this.plan = plan;
    last = world.scenario().planning().to();
    levels = new Levels(plan);
    world.demands().stream()
        .filter(Demand::tail)
        .flatMap(demand -> demand.options().stream())
        .forEach(option -> takenLater.add(option.item()));
  }

  /** By lot, what leaves within the planning days first. */
  List<Leftover> of(Replay replay) {
    List<Leftover> found = new ArrayList<>();
    replay.pastUseBy().stream()
        .filter(left -> !left.leaves().isAfter(last))
        .forEach(left -> add(found, left.lot(), left.pieces(), new Leftover.PastUseBy()));
    for (Replay.Left left : replay.leftovers()) {
      Lot lot = left.lot();
      if (lot.useBy().isAfter(last)) {
        int later = eatenLater(lot);
        add(found, lot, later, new Leftover.KeptForLater());
        add(found, lot, left.pieces() - later, reason(lot));
      } else {
        add(found, lot, left.pieces(), new Leftover.PastUseBy());
      }
    }
    return found;
  }

  private static void add(List<Leftover> found, Lot lot, int pieces, Leftover.Reason reason) {
    if (pieces > 0) {
      found.add(new Leftover(lot, pieces, reason));
    }
  }

  private int eatenLater(Lot lot) {
    return plan.feedings().stream()
        .filter(feeding -> feeding.day().isAfter(last))
        .flatMap(feeding -> feeding.draws().stream())
        .filter(draw -> draw.lotId().equals(lot.id()))
        .mapToInt(Feeding.Draw::pieces)
        .sum();
  }

  private Leftover.Reason reason(Lot lot) {
    OptionalInt pack = smallestPack(lot);
    if (pack.isPresent() && neverEaten(lot) < pack.getAsInt()) {
      return new Leftover.PackSize(pack.getAsInt());
    }
    return !takenLater.contains(lot.item())
            && outgrown.computeIfAbsent(lot.item(), item -> Outgrowing.is(world, item))
        ? new Leftover.Outgrown()
        : new Leftover.NotNeeded();
  }

  /** Pieces of the item that came with the lot's order, wherever they lie. */
  private int neverEaten(Lot lot) {
    return plan.lots().stream()
        .filter(other -> other.item().equals(lot.item()) && other.origin().equals(lot.origin()))
        .mapToInt(levels::neverEaten)
        .sum();
  }

  /** Pieces of the smallest pack of the item in the order that the lot came with. */
  private OptionalInt smallestPack(Lot lot) {
    return plan.orders().stream()
        .filter(order -> lot.origin().equals(new Lot.Ordered(order.slot())))
        .flatMap(order -> order.lines().stream())
        .map(Order.Line::pack)
        .mapToInt(pack -> pack.piecesOf(lot.item()))
        .filter(pieces -> pieces > 0)
        .min();
  }
}
