package io.frostlot.app;

import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The plan that all questions are about: told as soon as there is one, and again where a long look
 * ends with another.
 *
 * @param what of a plan it is that makes it another
 */
record Present(Questions questions, Function<Solved, Object> what, Consumer<Solved> tell) {
  /** Share of all time after which a plan is told while the search for it goes on. */
  private static final double EARLY = 0.1;

  /** Empty where there is no plan within a share of all time. */
  Optional<Solved> of(World world, double share) {
    List<Object> told = new ArrayList<>();
    Optional<Solved> best =
        questions.atLength(
            world,
            share,
            EARLY,
            it -> {
              told.add(what.apply(it));
              tell.accept(it);
            });
    best.filter(it -> !told.contains(what.apply(it))).ifPresent(tell);
    return best;
  }
}
