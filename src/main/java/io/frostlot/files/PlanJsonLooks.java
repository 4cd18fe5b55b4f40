package io.frostlot.files;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.BoxRoom;
import io.frostlot.plan.BudgetPrice;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.Habit;
import io.frostlot.plan.SecondLook;
import io.frostlot.plan.Simplest;
import io.frostlot.plan.World;
import java.math.RoundingMode;

/** What was looked for once a plan was known, in its JSON: each only where it was. */
record PlanJsonLooks(World world) {

  void write(JsonLines json, SecondLook look) {
    if (look instanceof Simplest simplest) {
      json.object("simplest", one -> simplest(one, simplest));
    } else if (look instanceof BudgetPrice price) {
      new DifferenceJson(world.decimals()).write(json, "withoutBudget", price.without());
    } else if (look instanceof Guesses guesses) {
      json.object("guesses", one -> new PlanJsonGuesses(world.decimals()).write(one, guesses));
    } else if (look instanceof BoxRoom room) {
      json.list("boxRoom", room.orders(), this::left);
    } else {
      json.object("habits", one -> habits(one, (Comparison) look));
    }
  }

  private void simplest(JsonLines json, Simplest simplest) {
    json.number("withinPercent", simplest.within()).yes("sure", simplest.sure());
    if (simplest.plan().isEmpty()) {
      json.nothing("plan");
    }
    simplest.plan().forEach(plan -> json.object("plan", one -> plan(one, plan)));
  }

  private void plan(JsonLines json, Answer.Judged judged) {
    int decimals = world.decimals();
    json.text("cost", judged.standing().money().toText(decimals))
        .text("cash", judged.books().total(Books.Account.CASH).toText(decimals));
    new PlanJsonOrders(world, judged.books()).write(json, judged.plan());
  }

  private void left(JsonLines json, BoxRoom.Left left) {
    json.text("supplier", left.slot().supplier())
        .day("orderBy", left.slot().ordered())
        .list(
            "room",
            left.boxes(),
            (one, boxes) ->
                one.text("unit", Typed.of(boxes.unit()))
                    .number("amount", PlanJsonOrders.decimal(boxes.room())))
        .text("verdict", Typed.of(left.verdict()));
    if (left.addition().isEmpty()) {
      json.nothing("addition");
    }
    left.addition()
        .forEach(
            addition ->
                json.object(
                    "addition",
                    one -> {
                      PlanJsonOrders.contents(one, "packs", addition.packs());
                      new DifferenceJson(world.decimals())
                          .write(one, "difference", addition.difference());
                    }));
  }

  private static void habits(JsonLines json, Comparison comparison) {
    json.list("compared", comparison.habits(), PlanJsonLooks::habit)
        .texts("notWorkedOut", comparison.unfinished());
  }

  private static void habit(JsonLines json, Habit habit) {
    json.text("habit", habit.says());
    DifferenceJson.side(json, "meals", habit.side());
    DifferenceJson.bound(json, "dearerAtLeast", habit.dearerBy().least(), RoundingMode.FLOOR);
    DifferenceJson.bound(json, "dearerAtMost", habit.dearerBy().most(), RoundingMode.CEILING);
  }
}
