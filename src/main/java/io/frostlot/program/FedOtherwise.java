package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Feeds meals whose food comes too late from what lies there and nobody else eats; or from what a
 * later meal of the same keeper would have eaten, if that can be fed with the food that came too
 * late.
 *
 * @param lots of the plan being made
 * @param feedings of it, to which more are added
 */
record FedOtherwise(World world, List<Lot> lots, List<Feeding> feedings) {

  /**
   * One feeding that cannot be as it is.
   *
   * @param late of one meal
   */
  void feed(Feeding late) {
    Demand demand = world.demandsById().get(late.mealId());
    if (demand == null || late.meals() != 1 || demand.tail()) {
      return;
    }
    Optional<Feeding> spare =
        demand.options().stream()
            .flatMap(option -> lots.stream().flatMap(lot -> from(lot, option, demand).stream()))
            .min(Comparator.comparing(Feeding::day));
    if (spare.isPresent()) {
      feedings.add(spare.get());
    } else {
      exchange(late, demand);
    }
  }

  /** On the first day of the meal on which there is enough of a lot; empty where there is none. */
  private Optional<Feeding> from(Lot lot, Option option, Demand demand) {
    String keeper = world.joint().keeperOf(demand);
    boolean fits =
        lot.item().equals(option.item())
            && !lot.isMoved()
            && world.joint().feeds(world.freezer(lot.freezer()), keeper)
            && lot.pieces() - drawn(lot) >= option.pieces();
    if (!fits) {
      return Optional.empty();
    }
    LocalDate best = demand.meal().days().best();
    LocalDate day = lot.takenFrom().isAfter(best) ? lot.takenFrom() : best;
    return demand.meal().days().contains(day) && !day.isAfter(lot.useBy())
        ? Optional.of(
            new Feeding(
                demand.meal().id(),
                day,
                option,
                1,
                List.of(new Feeding.Draw(lot.id(), option.pieces()))))
        : Optional.empty();
  }

  private int drawn(Lot lot) {
    return feedings.stream()
        .flatMap(feeding -> feeding.draws().stream())
        .filter(draw -> draw.lotId().equals(lot.id()))
        .mapToInt(Feeding.Draw::pieces)
        .sum();
  }

  private void exchange(Feeding late, Demand demand) {
    for (Feeding other : List.copyOf(feedings)) {
      Demand later = world.demandsById().get(other.mealId());
      boolean alike =
          other.meals() == 1
              && later.options().contains(late.option())
              && demand.options().contains(other.option());
      if (alike) {
        feedings.remove(other);
        Optional<Feeding> now = fed(demand, other);
        now.ifPresent(feedings::add);
        Optional<Feeding> then = now.flatMap(it -> fed(later, late));
        if (then.isPresent()) {
          feedings.add(then.get());
          return;
        }
        now.ifPresent(feedings::remove);
        feedings.add(other);
      }
    }
  }

  /** A meal with the food of another, from any of the lots that this was drawn from. */
  private Optional<Feeding> fed(Demand demand, Feeding food) {
    return food.draws().stream()
        .flatMap(draw -> lots.stream().filter(lot -> lot.id().equals(draw.lotId())))
        .flatMap(lot -> from(lot, food.option(), demand).stream())
        .findFirst();
  }
}
