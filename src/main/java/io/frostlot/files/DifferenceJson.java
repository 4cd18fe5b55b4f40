package io.frostlot.files;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Solved;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * Differences and short answers in JSON.
 *
 * @param decimals of money
 */
record DifferenceJson(int decimals) {
  private static final int BOUND_DECIMALS = 4;

  /** Meals of both, then money: what it saves, where that lies, and whether it can be told. */
  void write(JsonLines json, String name, Difference difference) {
    json.object(
        name,
        one -> {
          side(one, "before", difference.before());
          side(one, "after", difference.after());
          one.yes("sameMeals", difference.sameMeals());
          if (difference.sameMeals()) {
            one.text("saves", difference.found().toText(decimals));
            bound(one, "savesAtLeast", difference.saves().least(), RoundingMode.FLOOR);
            bound(one, "savesAtMost", difference.saves().most(), RoundingMode.CEILING);
            one.yes("cannotTell", difference.saves().holdsZero());
          } else {
            one.nothing("saves").nothing("savesAtLeast").nothing("savesAtMost");
            one.yes("cannotTell", false);
          }
        });
  }

  static void side(JsonLines json, String name, Difference.Side side) {
    json.object(
        name,
        one ->
            one.number("unmetMust", side.standing().unmetMust())
                .number("unmetOther", side.standing().unmetOther())
                .number("shortfall", side.standing().shortfall())
                .number("late", side.lateMeals()));
  }

  /** How it stands with an answer. */
  void answer(JsonLines json, String name, Solved solved) {
    json.object(
        name,
        one -> {
          side(one, "meals", Difference.Side.of(solved));
          one.text("status", solved.answer() instanceof Answer.Proven ? "proven" : "best-found")
              .text("cost", solved.standing().money().toText(decimals));
          bound(one, "bound", solved.answer().bound(), RoundingMode.FLOOR);
        });
  }

  static void bound(JsonLines json, String name, OptionalDouble amount, RoundingMode towards) {
    if (amount.isPresent() && Double.isFinite(amount.getAsDouble())) {
      json.text(name, decimal(amount.getAsDouble(), towards));
    } else {
      json.nothing(name);
    }
  }

  /** As a cell; empty where it is not known. */
  static String cell(OptionalDouble amount, RoundingMode towards) {
    return amount.isPresent() && Double.isFinite(amount.getAsDouble())
        ? decimal(amount.getAsDouble(), towards)
        : "";
  }

  /** Up to four decimals, without the noise of a number that is not exact. */
  static String decimal(double amount, RoundingMode towards) {
    return BigDecimal.valueOf(amount)
        .setScale(7, RoundingMode.HALF_EVEN)
        .setScale(BOUND_DECIMALS, towards)
        .toPlainString();
  }
}
