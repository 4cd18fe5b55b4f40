package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.SortedMap;
import java.util.TreeMap;

/** What lies in the freezers while a plan is followed, and what it is worth. */
public final class Holdings {
  private final World world;
  private final Plan plan;
  private final Levels levels;
  private final ListPrices prices;

  public Holdings(World world, Plan plan) {
    this.world = world;
    this.plan = plan;
    levels = new Levels(plan);
    prices = new ListPrices(world.scenario().suppliers());
  }

  public Contents on(Freezer freezer, LocalDate day) {
    SortedMap<String, Integer> pieces = new TreeMap<>();
    for (Lot lot : plan.lots()) {
      int left = lot.freezerOn(day).equals(freezer.name()) ? levels.beforeMeals(lot, day) : 0;
      if (left > 0) {
        pieces.merge(lot.item().id(), left, Integer::sum);
      }
    }
    return new Contents(
        freezer,
        day,
        pieces.entrySet().stream()
            .map(entry -> pieces(world.items().get(entry.getKey()), entry.getValue()))
            .toList());
  }

  private Contents.Pieces pieces(Item item, int count) {
    BigDecimal worth = prices.of(item).orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(count));
    return new Contents.Pieces(item, count, new Money(worth).rounded(world.decimals()));
  }

  /** On the first of the planning days on which it is worth most, or of these holds most pieces. */
  public Contents dearest(Freezer freezer) {
    LocalDate from = world.scenario().planning().from();
    return from.datesUntil(world.scenario().planning().to().plusDays(1))
        .map(day -> on(freezer, day))
        .max(
            Comparator.comparing(Contents::worth)
                .thenComparing(Contents::count)
                .thenComparing(Contents::day, Comparator.reverseOrder()))
        .orElseThrow();
  }
}
