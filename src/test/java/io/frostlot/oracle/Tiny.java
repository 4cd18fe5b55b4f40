package io.frostlot.oracle;

import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.StockLot;
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

  /** All days after the end are one, but where what is moved then depends on them. */
  int useBy(LocalDate date) {
    return isMoving() ? day(date) : Math.min(day(date), end);
  }

  boolean isMoving() {
    return world.scenario().policy().moves().everyDays() > 0;
  }

  Cells.Kind pieces(Lot lot) {
    Cells.Kind first =
        pieces(lot.item(), lot.firstFreezer(), new Keeps(bestBefore(lot), firstUseBy(lot)));
    return lot.isMoved()
        ? moved(first, freezers.indexOf(world.freezer(lot.freezer())), day(lot.move().day()))
        : first;
  }

  Cells.Kind pieces(Item item, String freezer, Keeps keeps) {
    boolean charged = !world.scenario().policy().charges().pastBest().isZero();
    return new Cells.Kind(
        item(item),
        freezers.indexOf(world.freezer(freezer)),
        false,
        useBy(keeps.useBy()),
        charged ? Math.max(0, useBy(keeps.bestBefore()) + 1) : 0);
  }

  /**
   * Pieces after a move: of each span the same share is left as before it, in whole days. What is
   * past its best stays so.
   */
  Cells.Kind moved(Cells.Kind kind, int into, int day) {
    Item item = items.get(kind.item());
    Freezer from = freezers.get(kind.freezer());
    Freezer to = freezers.get(into);
    int useBy = day + (kind.useBy() + 1 - day) * to.lifeDays(item) / from.lifeDays(item) - 1;
    boolean charged = !world.scenario().policy().charges().pastBest().isZero();
    int left = Math.max(0, kind.pastBest() - day);
    int best = day + left * best(to, item) / best(from, item);
    return new Cells.Kind(
        kind.item(), into, true, useBy, charged ? Math.max(0, Math.min(best, useBy + 1)) : 0);
  }

  private static int best(Freezer freezer, Item item) {
    return Math.min(freezer.lifeDays(item), freezer.life().best().days());
  }

  private LocalDate firstUseBy(Lot lot) {
    if (!lot.isMoved()) {
      return lot.useBy();
    }
    if (lot.origin() instanceof Lot.InHand inHand) {
      return stock(inHand).keeps().useBy();
    }
    return world.freezer(lot.firstFreezer()).useBy(lot.item(), lot.earliest());
  }

  private StockLot stock(Lot.InHand inHand) {
    return world.scenario().larder().stock().stream()
        .filter(stock -> stock.id().equals(inHand.stockLot()))
        .findFirst()
        .orElseThrow();
  }

  /** The days of life in the freezer, at most those for which prey is at its best. */
  private LocalDate bestBefore(Lot lot) {
    if (lot.origin() instanceof Lot.InHand inHand) {
      return stock(inHand).keeps().bestBefore();
    }
    int life = world.freezer(lot.firstFreezer()).lifeDays(lot.item());
    int best = Math.min(life, world.freezer(lot.firstFreezer()).life().best().days());
    return firstUseBy(lot).minusDays(life - best);
  }
}
