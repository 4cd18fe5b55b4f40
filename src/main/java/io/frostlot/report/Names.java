package io.frostlot.report;

import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Supplier;
import java.util.List;
import java.util.Optional;

/** What prey and suppliers are called in a letter: as on their price sheets, never by ids. */
record Names(World world) {
  /** Whom prey is from where no supplier of the scenario sells it. */
  static final String IN_HAND = "prey of other suppliers";

  /**
   * Such as "Fuzzy mouse", or "Fuzzy mouse from Hillside" where another one sells that name too.
   */
  String of(Item item) {
    boolean unique =
        world.items().values().stream().filter(it -> it.name().equals(item.name())).count() == 1;
    return unique
        ? item.name()
        : item.name() + supplier(item).map(it -> " from " + it.name()).orElse(" in hand");
  }

  /** The supplier's name, or {@link #IN_HAND}. */
  String source(Item item) {
    return supplier(item).map(Supplier::name).orElse(IN_HAND);
  }

  /** The name of a supplier; its id where the scenario has it no more. */
  String supplier(String id) {
    return world.scenario().suppliers().stream()
        .filter(supplier -> supplier.id().equals(id))
        .map(Supplier::name)
        .findFirst()
        .orElse(id);
  }

  private Optional<Supplier> supplier(Item item) {
    List<Supplier> suppliers = world.scenario().suppliers();
    return suppliers.stream()
        .filter(
            supplier ->
                supplier.sheet().packs().stream()
                    .anyMatch(pack -> pack.item().equals(item) || pack.piecesOf(item) > 0))
        .findFirst();
  }
}
