package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Shortfall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** A tying rule that falls short by a number of its own for each animal; they add up. */
interface Counted extends Tying {
  /** By how much the feedings of one of the tied animals fall short. */
  long beyond(String animal, Map<String, Feeding> feedings);

  /** What it counts. */
  Shortfall.Unit unit();

  @Override
  default Set<String> lacking(Plan plan) {
    Map<String, Feeding> feedings = tied().isEmpty() ? Map.of() : plan.feedingsByMeal();
    Set<String> lacking = new TreeSet<>(tied().keySet());
    lacking.removeIf(animal -> beyond(animal, feedings) == 0);
    return lacking;
  }

  @Override
  default void judge(Plan plan, Books books) {
    Map<String, Feeding> feedings = tied().isEmpty() ? Map.of() : plan.feedingsByMeal();
    List<Shortfall.Part> parts = new ArrayList<>();
    tied()
        .forEach(
            (animal, meals) -> {
              long beyond = beyond(animal, feedings);
              if (beyond > 0) {
                parts.add(new Shortfall.Part(animal, MealRuns.days(meals), beyond));
              }
            });
    books.shortfall(Shortfall.counted(id(), unit(), parts));
  }

  /** The same put to the solver: what an amount is beyond the most falls short. */
  default void giveWay(Linear amount, double most, Model model) {
    Var beyond = model.real(0, Model.INFINITY);
    model.atMost(id(), amount.plus(-1, beyond), most);
    model.minimise(Level.SHORTFALL, Linear.of(beyond));
  }
}
