package io.frostlot.files;

import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * {@code guesses} of a plan in JSON: what would change the next orders.
 *
 * @param decimals of money
 */
record PlanJsonGuesses(int decimals) {
  private static final int VALUE_DECIMALS = 3;

  void write(JsonLines json, Guesses guesses) {
    json.list("tried", guesses.tried(), this::tried)
        .list("notTried", guesses.notTried(), PlanJsonGuesses::guess);
  }

  private static void guess(JsonLines json, Guess guess) {
    json.text("kind", Typed.of(guess.kind()))
        .text("of", guess.of())
        .number("low", decimal(guess.ends().low()))
        .number("assumed", decimal(guess.ends().assumed()))
        .number("high", decimal(guess.ends().high()));
  }

  private void tried(JsonLines json, Guesses.Tried tried) {
    guess(json, tried.guess());
    json.object("atLow", one -> end(one, tried.low()))
        .object("atHigh", one -> end(one, tried.high()));
  }

  private void end(JsonLines json, Guesses.End end) {
    DifferenceJson.side(json, "meals", end.side());
    json.yes("known", end.sure() != Guesses.Sure.UNKNOWN)
        .yes("proven", end.sure() == Guesses.Sure.PROVEN)
        .text("moved", end.moved().toText(decimals))
        .list("orders", end.changes(), new PlanJsonChanges(decimals)::order);
  }

  private static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(value)
        .setScale(VALUE_DECIMALS, RoundingMode.HALF_EVEN)
        .stripTrailingZeros();
  }
}
