package io.frostlot.app;

import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** When somebody is there to receive, where prey may lie, and whether bags are sorted at home. */
record PlaceWishes(World world) {
  Stream<Wish> all() {
    return Stream.of(away(), sorted(), besideFood(), roomBesideFood()).flatMap(some -> some);
  }

  private Stream<Wish> away() {
    return world.scenario().away().isEmpty()
        ? Stream.empty()
        : Stream.of(
            new Wish(
                Wish.Bearing.of("days away on which nobody receives", true),
                world,
                Loosened.neverAway(world)));
  }

  /** As if bags were sorted, or as if they were not; nothing where no bag can be. */
  private Stream<Wish> sorted() {
    boolean asked = packs().anyMatch(Pack::sorted);
    if (packs().noneMatch(pack -> pack.sortedAtHome().sorted())) {
      return Stream.empty();
    }
    World other = packed(asked ? Pack::unsorted : Pack::sortedAtHome);
    return Stream.of(
        new Wish(
            Wish.Bearing.of("bags sorted at home into two halves", asked).freer(Wish.Freer.NEITHER),
            asked ? world : other,
            asked ? other : world));
  }

  private Stream<Pack> packs() {
    return world.scenario().suppliers().stream().flatMap(it -> it.sheet().packs().stream());
  }

  private World packed(UnaryOperator<Pack> change) {
    UnaryOperator<Supplier> packed =
        from ->
            from.withSheet(
                from.sheet().withPacks(from.sheet().packs().stream().map(change).toList()));
    return MealWishes.projected(
        world,
        world.scenario().withSuppliers(world.scenario().suppliers().stream().map(packed).toList()));
  }

  /** New prey in freezers that hold food too, whether the keeper has allowed it or not. */
  private Stream<Wish> besideFood() {
    boolean asked = freezers().anyMatch(it -> holds(it, Freezer.Company.FOOD) && it.inUse());
    if (!asked && freezers().noneMatch(it -> holds(it, Freezer.Company.FOOD_UNSEALED))) {
      return Stream.empty();
    }
    World other =
        Loosened.freezers(
            world,
            it ->
                holds(it, Freezer.Company.NONE)
                    ? it
                    : it.withAccess(
                        new Freezer.Access(
                            !asked && holds(it, Freezer.Company.FOOD_UNSEALED),
                            it.access().company(),
                            it.access().limits())));
    return Stream.of(
        new Wish(
            people("new prey in freezers that hold food too", asked).freer(Wish.Freer.WITH),
            asked ? world : other,
            asked ? other : world));
  }

  /** Without a limit to the room of these, where they are used. */
  private Stream<Wish> roomBesideFood() {
    return freezers().noneMatch(it -> holds(it, Freezer.Company.FOOD) && it.inUse())
        ? Stream.empty()
        : Stream.of(
            new Wish(
                people("the room that prey may take in freezers that hold food too", true),
                world,
                Loosened.freezers(
                    world, it -> holds(it, Freezer.Company.FOOD) ? Loosened.ofAnySize(it) : it)));
  }

  private Stream<Freezer> freezers() {
    return world.scenario().larder().freezers().stream();
  }

  private static boolean holds(Freezer freezer, Freezer.Company company) {
    return freezer.access().company() == company;
  }

  private static Wish.Bearing people(String says, boolean asked) {
    return Wish.Bearing.of(says, asked).sake(ExplainFinding.Sake.PEOPLE);
  }
}
