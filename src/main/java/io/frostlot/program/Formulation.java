package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntBiFunction;

/**
 * How the program of a world is written down; what it means is the same but for a coarser grain of
 * time.
 *
 * @param grain how finely time is looked at
 * @param merged are meals that the program cannot tell apart one class?
 * @param tight are packs bounded by what one order could use, or only by all that is ever eaten?
 * @param apart animals whose meals share no class with those of others
 * @param packs only what lies near these may be bought
 */
record Formulation(
    Grain grain, boolean merged, boolean tight, Set<String> apart, Optional<NearPacks> packs) {
  static final Formulation USUAL = of(Grain.DAYS);

  /** Each meal by itself, and wide constants in the on-off rows. */
  static final Formulation PLAIN =
      new Formulation(Grain.DAYS, false, false, Set.of(), Optional.empty());

  static Formulation of(Grain grain) {
    return new Formulation(grain, true, true, Set.of(), Optional.empty());
  }

  /** Any of whose rules may be left out, since no bound of a column follows from another rule. */
  static Formulation ofEachRule(Grain grain) {
    return new Formulation(grain, true, false, Set.of(), Optional.empty());
  }

  /** The same with animals whose meals share no class with those of others (see {@link Apart}). */
  Formulation withApart(Set<String> animals) {
    return new Formulation(grain, merged, tight, animals, packs);
  }

  /** The same of what lies near some packs, which is a part and a much smaller program. */
  Formulation near(NearPacks packs) {
    return new Formulation(grain, merged, tight, apart, Optional.of(packs));
  }

  /** Most packs of a row in the order of a slot. */
  ToIntBiFunction<Slot, Pack> mostPacks(World world) {
    ToIntBiFunction<Slot, Pack> most = ofAllPacks(world);
    return packs
        .<ToIntBiFunction<Slot, Pack>>map(
            near -> (slot, pack) -> Math.min(near.most(slot, pack), most.applyAsInt(slot, pack)))
        .orElse(most);
  }

  private ToIntBiFunction<Slot, Pack> ofAllPacks(World world) {
    if (!tight) {
      AnyPacks any = new AnyPacks(world);
      return (slot, pack) -> any.most(world.supplier(slot.supplier()), pack);
    }
    UsefulPacks useful = new UsefulPacks(world);
    return (slot, pack) -> useful.most(slot, world.supplier(slot.supplier()), pack);
  }

  List<DemandClass> classes(Timeline timeline, DemandClasses.Possible possible, MealTies ties) {
    World world = timeline.world();
    DemandClasses classes = new DemandClasses(world, timeline, possible, ties);
    return merged ? classes.merge(world.meals()) : classes.each(world.meals());
  }
}
