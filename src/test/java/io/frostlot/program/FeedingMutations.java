package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Plans that differ from a plan in what is fed, where something lies, or what is thrown away. */
final class FeedingMutations {
  private final World world;
  private final Random random;
  private int named;

  FeedingMutations(World world, Random random) {
    this.world = world;
    this.random = random;
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  static boolean isOf(Lot lot, Slot slot, Item item) {
    return lot.item().equals(item) && lot.origin().equals(new Lot.Ordered(slot));
  }

  List<Freezer> inUse() {
    return world.scenario().larder().freezers().stream().filter(Freezer::inUse).toList();
  }

  Lot lot(Slot slot, Item item, int pieces, String freezer) {
    return new Lot(
        "new " + ++named,
        item,
        pieces,
        freezer,
        slot.arrivesEarliest(),
        slot.arrivesLatest(),
        world.freezer(freezer).useBy(item, slot.arrivesEarliest()),
        new Lot.Ordered(slot));
  }

  private Plan fed(Plan plan, Feeding before, List<Feeding> after) {
    List<Feeding> feedings = new ArrayList<>(plan.feedings());
    feedings.remove(before);
    feedings.addAll(after);
    return new Plan(plan.orders(), plan.lots(), feedings, plan.discards());
  }

  Plan notFed(Plan plan) {
    return plan.feedings().isEmpty() ? plan : fed(plan, any(plan.feedings()), List.of());
  }

  Plan fedOnAnotherDay(Plan plan) {
    if (plan.feedings().isEmpty()) {
      return plan;
    }
    Feeding feeding = any(plan.feedings());
    LocalDate day = feeding.day().plusDays(random.nextInt(5) - 2L);
    Feeding other =
        new Feeding(feeding.mealId(), day, feeding.option(), feeding.meals(), feeding.draws());
    return fed(plan, feeding, List.of(other));
  }

  /** One of the meals by another option, from any lot of its item. */
  Plan fedOtherwise(Plan plan) {
    if (world.demands().isEmpty()) {
      return plan;
    }
    Demand demand = any(world.demands());
    if (demand.options().isEmpty()) {
      return plan;
    }
    Option option = any(demand.options());
    List<Lot> lots = plan.lots().stream().filter(l -> l.item().equals(option.item())).toList();
    if (lots.isEmpty()) {
      return plan;
    }
    Feeding.Draw draw = new Feeding.Draw(any(lots).id(), option.pieces());
    Feeding added =
        new Feeding(demand.meal().id(), demand.meal().days().best(), option, 1, List.of(draw));
    Plan without =
        plan.feedings().stream()
            .filter(f -> f.mealId().equals(added.mealId()) && random.nextInt(4) > 0)
            .findFirst()
            .map(f -> fed(plan, f, List.of()))
            .orElse(plan);
    boolean twice =
        without.feedings().stream()
            .anyMatch(
                f ->
                    f.mealId().equals(added.mealId())
                        && f.day().equals(added.day())
                        && f.option().equals(option));
    return twice ? plan : fed(without, added, List.of(added));
  }

  /** Some pieces of a delivery put into another freezer. */
  Plan split(Plan plan) {
    List<Lot> delivered =
        plan.lots().stream().filter(lot -> lot.origin() instanceof Lot.Ordered).toList();
    if (delivered.isEmpty() || inUse().size() < 2) {
      return plan;
    }
    Lot lot = any(delivered);
    String freezer = any(inUse()).name();
    Slot slot = ((Lot.Ordered) lot.origin()).slot();
    boolean there =
        plan.lots().stream()
            .anyMatch(other -> isOf(other, slot, lot.item()) && other.freezer().equals(freezer));
    if (there || lot.pieces() < 2) {
      return plan;
    }
    int pieces = 1 + random.nextInt(lot.pieces() - 1);
    List<Lot> lots = new ArrayList<>(plan.lots());
    lots.remove(lot);
    lots.add(lot.withPieces(lot.pieces() - pieces));
    lots.add(lot(slot, lot.item(), pieces, freezer));
    return new Plan(plan.orders(), lots, plan.feedings(), plan.discards());
  }

  /** A piece thrown away once it is there, or not thrown away after all. */
  Plan thrown(Plan plan) {
    List<Discard> discards = new ArrayList<>(plan.discards());
    if (!discards.isEmpty() && random.nextBoolean()) {
      discards.remove(random.nextInt(discards.size()));
    } else if (!plan.lots().isEmpty()) {
      Lot lot = any(plan.lots());
      boolean inHand = lot.origin() instanceof Lot.InHand;
      LocalDate first = world.scenario().planning().from();
      discards.add(new Discard(lot.id(), inHand ? first : lot.latest().plusDays(1), 1));
    }
    return new Plan(plan.orders(), plan.lots(), plan.feedings(), discards);
  }
}
