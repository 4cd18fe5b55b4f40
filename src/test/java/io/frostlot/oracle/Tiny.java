package io.frostlot.oracle;

import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
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

  Move.Pieces pieces(Lot lot) {
    int freezer = freezers.indexOf(world.freezer(lot.freezer()));
    return new Move.Pieces(item(lot.item()), freezer, useBy(lot.useBy()));
  }
}
