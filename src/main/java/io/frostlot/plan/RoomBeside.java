package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * Room in freezers beside what is eaten of a plan; what is never eaten could be thrown away. Where
 * prey might be spread over freezers in a way that is not looked at, there is room.
 */
final class RoomBeside {
  private final World world;
  private final Plan plan;
  private final Levels levels;
  private final boolean afterMeals;
  private final NavigableSet<LocalDate> checks = new TreeSet<>();

  RoomBeside(World world, Plan plan, Levels levels) {
    this.world = world;
    this.plan = plan;
    this.levels = levels;
    afterMeals = world.scenario().policy().freezerCheck() == Policy.FreezerCheck.END_OF_DAY;
    plan.lots().forEach(lot -> checks.add(lot.earliest()));
    world
        .scenario()
        .larder()
        .freezers()
        .forEach(freezer -> freezer.limitedFrom(world.scenario().planning()).forEach(checks::add));
  }

  /**
   * Might the smallest pack of an item find room on the day on which it comes, and a piece of it in
   * one freezer until it is eaten?
   */
  boolean mayTake(Item item, WhyUnmet.Coming coming) {
    LocalDate arrives = coming.slot().arrivesEarliest();
    boolean eatenAtOnce = afterMeals && coming.eaten().equals(arrives);
    long free =
        world.scenario().larder().freezers().stream()
            .filter(Freezer::inUse)
            .mapToLong(freezer -> Math.max(0, free(freezer, arrives)))
            .sum();
    long needed = smallest(item, coming.slot().supplier());
    return eatenAtOnce || (needed <= free && keepsRoom(item, coming));
  }

  private boolean keepsRoom(Item item, WhyUnmet.Coming coming) {
    TreeSet<LocalDate> looked = new TreeSet<>(Set.of(coming.slot().arrivesEarliest()));
    looked.addAll(checks.subSet(looked.first(), true, coming.eaten(), !afterMeals));
    List<Freezer> freezers = coming.freezers();
    return world.scenario().policy().moves().everyDays() > 0
        ? looked.stream().allMatch(day -> freezers.stream().anyMatch(it -> holds(it, item, day)))
        : freezers.stream().anyMatch(it -> looked.stream().allMatch(day -> holds(it, item, day)));
  }

  private boolean holds(Freezer freezer, Item item, LocalDate day) {
    return free(freezer, day) >= item.litres().microlitres();
  }

  /** Microlitres of the smallest pack in which an item comes. */
  private long smallest(Item item, String supplier) {
    return world.supplier(supplier).sheet().packs().stream()
        .filter(pack -> pack.piecesOf(item) > 0)
        .mapToLong(pack -> pack.room().microlitres())
        .min()
        .orElse(0);
  }

  /** Microlitres beside what is there and will be eaten; below zero where that is too much. */
  private long free(Freezer freezer, LocalDate day) {
    long used =
        plan.lots().stream()
            .filter(lot -> lot.freezerOn(day).equals(freezer.name()))
            .mapToLong(lot -> eaten(lot, day) * lot.item().litres().microlitres())
            .sum();
    return freezer.usableOn(day).microlitres() - used;
  }

  private long eaten(Lot lot, LocalDate day) {
    int there = levels.checked(lot, day, world.scenario().policy().freezerCheck());
    return Math.max(0, there - levels.neverEaten(lot));
  }
}
