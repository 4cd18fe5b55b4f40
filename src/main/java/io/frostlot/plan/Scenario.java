package io.frostlot.plan;

import io.frostlot.forecast.Need;
import io.frostlot.keeping.Animal;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.util.Currency;
import java.util.List;

/**
 * Everything a keeper typed in, checked and put into canonical order.
 *
 * @param name shown
 * @param planning first to last planning day
 * @param away days on which nothing can be received
 */
public record Scenario(
    String name,
    Period planning,
    Currency currency,
    Collection collection,
    Larder larder,
    List<Supplier> suppliers,
    List<Period> away,
    Policy policy) {

  public Scenario {
    suppliers = suppliers.stream().sorted((a, b) -> a.id().compareTo(b.id())).toList();
    away = List.copyOf(away);
  }

  /** Who eats. */
  public record Collection(List<Animal> animals, List<Need> needs) {
    public Collection {
      animals = animals.stream().sorted((a, b) -> a.name().compareTo(b.name())).toList();
      needs = needs.stream().sorted((a, b) -> a.label().compareTo(b.label())).toList();
    }
  }

  /** Where prey lies and what lies there or is under way. */
  public record Larder(List<Freezer> freezers, List<StockLot> stock, List<PlacedLot> placed) {
    public Larder {
      freezers = freezers.stream().sorted((a, b) -> a.name().compareTo(b.name())).toList();
      stock = stock.stream().sorted((a, b) -> a.id().compareTo(b.id())).toList();
      placed = placed.stream().sorted((a, b) -> a.id().compareTo(b.id())).toList();
    }

    public Larder withFreezers(List<Freezer> others) {
      return new Larder(others, stock, placed);
    }
  }

  public Scenario withPlanning(Period other) {
    return new Scenario(name, other, currency, collection, larder, suppliers, away, policy);
  }

  /** The same with other animals that eat the same meals. */
  public Scenario withAnimals(List<Animal> others) {
    Collection eaters = new Collection(others, collection.needs());
    return new Scenario(name, planning, currency, eaters, larder, suppliers, away, policy);
  }

  /** The same with other freezers and what lies in them. */
  public Scenario withLarder(Larder other) {
    return new Scenario(name, planning, currency, collection, other, suppliers, away, policy);
  }

  /** The same with other suppliers, or with other prices or terms of the same. */
  public Scenario withSuppliers(List<Supplier> others) {
    return new Scenario(name, planning, currency, collection, larder, others, away, policy);
  }

  public Scenario withAway(List<Period> others) {
    return new Scenario(name, planning, currency, collection, larder, suppliers, others, policy);
  }

  public Scenario withPolicy(Policy other) {
    return new Scenario(name, planning, currency, collection, larder, suppliers, away, other);
  }
}
