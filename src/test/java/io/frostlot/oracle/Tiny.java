package io.frostlot.oracle;

import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.supply.Item;
import java.time.LocalDate;
import java.util.List;

/** A world by small numbers: days since the first planning day, items and freezers by index. */
final class Tiny {
  final World world;
  final List<Item> items;
  final List<Freezer> freezers;

  /** First day after the planning days. */
  final int planned;

  /** First day after everything. */
  final int end;

  Tiny(World world) {
    this.world = world;
    items = List.copyOf(world.items().values());
    freezers = world.scenario().larder().freezers();
    planned = day(world.scenario().planning().to()) + 1;
    end = planned + world.scenario().policy().tail().days();
  }

  int day(LocalDate date) {
    return (int) (date.toEpochDay() - world.scenario().planning().from().toEpochDay());
  }

  LocalDate date(int day) {
    return world.scenario().planning().from().plusDays(day);
  }

  int item(Item item) {
    return items.indexOf(item);
  }

  long microlitres(int item) {
    return items.get(item).litres().microlitres();
  }

  /** All days after the end are one. */
  int useBy(LocalDate date) {
    return Math.min(day(date), end);
  }

  Cells.Kind pieces(Lot lot) {
    return pieces(lot.item(), lot.freezer(), new Keeps(bestBefore(lot), lot.useBy()));
  }

  Cells.Kind pieces(Item item, String freezer, Keeps keeps) {
    boolean charged = !world.scenario().policy().charges().pastBest().isZero();
    return new Cells.Kind(
        item(item),
        freezers.indexOf(world.freezer(freezer)),
        useBy(keeps.useBy()),
        charged ? Math.max(0, useBy(keeps.bestBefore()) + 1) : 0);
  }

  /** The days of life in the freezer, at most those for which prey is at its best. */
  private LocalDate bestBefore(Lot lot) {
    if (lot.origin() instanceof Lot.InHand inHand) {
      return world.scenario().larder().stock().stream()
          .filter(stock -> stock.id().equals(inHand.stockLot()))
          .map(stock -> stock.keeps().bestBefore())
          .findFirst()
          .orElseThrow();
    }
    int life = world.freezer(lot.freezer()).lifeDays(lot.item());
    int best = Math.min(life, world.freezer(lot.freezer()).life().best().days());
    return lot.useBy().minusDays(life - best);
  }
}
