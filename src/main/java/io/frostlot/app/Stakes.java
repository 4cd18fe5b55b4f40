package io.frostlot.app;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.MealSize;
import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Guess;
import io.frostlot.plan.ListPrices;
import io.frostlot.plan.Order;
import io.frostlot.plan.Solved;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.ToDoubleFunction;

/**
 * What money is at stake with a guess, without planning again: list price of what the plan feeds
 * and could not feed then, what its orders would cost more or less, what would find no room. Only
 * good for trying first what likely matters most.
 */
final class Stakes {
  /** Something, so that of two guesses that break nothing the one about more money is first. */
  private static final double A_LITTLE = 0.01;

  private static final double FULL = 0.98;
  private final Solved shown;
  private final Map<String, Demand> demands;
  private final ListPrices prices;
  private final List<FreezerLoad> freezers;

  Stakes(Solved shown) {
    this.shown = shown;
    demands = shown.world().demandsById();
    freezers = shown.outcome().freezers();
    prices = new ListPrices(shown.world().scenario().suppliers());
  }

  /** The larger of what is at stake at both ends. */
  double of(Guess guess) {
    Guess.Ends ends = guess.ends();
    return Math.max(at(guess, ends.low()), at(guess, ends.high()));
  }

  private double at(Guess guess, double value) {
    double assumed = guess.ends().assumed();
    double change = Math.abs(value - assumed) / Math.max(assumed, 100);
    return switch (guess.kind()) {
      case PIECE_GRAMS ->
          fed(
              (demand, option) -> option.item().id().equals(guess.of()),
              (demand, option) -> holds(demand, option.pieces() * value, 1));
      case ANIMAL_GRAMS ->
          fed(
              (demand, option) -> demand.meal().eater().equals(guess.of()),
              (demand, option) -> holds(demand, option.grams().toDouble(), value / assumed));
      case OLD_PRICES -> change * spent(it -> it.slot().supplier().equals(guess.of()) ? 1 : 0);
      case LATER_PRICES ->
          change * shown.answer().plan().books().total(Books.Account.TAIL).toDouble();
      case FREEZER_LITRES ->
          freezers.stream()
              .filter(load -> load.freezer().name().equals(guess.of()))
              .mapToDouble(load -> withoutRoom(load, value))
              .sum();
      case PREY_LITRES ->
          freezers.stream()
              .mapToDouble(it -> withoutRoom(it, it.freezer().usable().toDouble() * 100 / value))
              .sum();
      case SKIPPED_MEALS -> change * spent(order -> 1);
    };
  }

  private static boolean holds(Demand demand, double grams, double scale) {
    MealSize.Window window = demand.meal().prey().window();
    return grams >= scale * window.least().toDouble() && grams <= scale * window.most().toDouble();
  }

  /** What is fed of some meals, those above all that could not be fed so. */
  private double fed(BiPredicate<Demand, Option> which, BiPredicate<Demand, Option> still) {
    double stake = 0;
    for (Feeding feeding : shown.plan().feedings()) {
      Demand demand = demands.get(feeding.mealId());
      Option option = feeding.option();
      if (which.test(demand, option)) {
        double price =
            option.pieces()
                * prices.of(option.item()).map(BigDecimal::doubleValue).orElse(0.0)
                * feeding.meals();
        stake += still.test(demand, option) ? A_LITTLE * price : price;
      }
    }
    return stake;
  }

  private double spent(ToDoubleFunction<Order> share) {
    return shown.plan().orders().stream()
        .mapToDouble(
            order ->
                share.applyAsDouble(order)
                    * shown.answer().plan().books().ledger(order.slot()).total().toDouble())
        .sum();
  }

  /** What of all orders finds no room, or would find more. */
  private double withoutRoom(FreezerLoad load, double litres) {
    double peak = load.peak().toDouble();
    double usable = load.freezer().usable().toDouble();
    double beyond = litres < usable ? peak - litres : peak > FULL * usable ? litres - usable : 0;
    return Math.max(0, beyond) / usable * spent(order -> 1);
  }
}
