package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Fed;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import java.util.stream.Collectors;

/** What a rule that gives way costs, and what animals are fed with adequacy and without it. */
record WishText(World world) {
  private Wording wording() {
    return new Wording(world.scenario().currency());
  }

  void write(ExplainFinding.WishCost wish, Page page) {
    page.gap();
    page.say(
        "%s%s (%s): %s."
            .formatted(
                Character.toUpperCase(wish.says().charAt(0)),
                wish.says().substring(1),
                wish.asked() ? "asked for" : "not asked for",
                new Differences(wording())
                    .verdict(wish.difference())
                    .replaceFirst("and it", "and without it the plan")));
    page.point("with it: " + standing(wish.with()));
    page.point("without it: " + standing(wish.without()));
  }

  /** Such as "2 orders, 88.00 EUR to pay, 120.40 EUR in all, proven best; budget short by 3". */
  private String standing(Solved solved) {
    Wording wording = wording();
    Books books = solved.answer().plan().books();
    String lacking =
        books.shortfalls().stream()
            .map(it -> "; " + Differences.rule(it.rule()) + " short by " + Wording.amount(it))
            .collect(Collectors.joining());
    return "%s, %s to pay, %s in all (%s)%s."
        .formatted(
            Wording.count(solved.plan().orders().size(), "order", "orders"),
            wording.money(books.total(Books.Account.CASH)),
            wording.money(solved.standing().money().rounded(world.decimals())),
            bound(solved),
            lacking);
  }

  private String bound(Solved solved) {
    if (solved.answer() instanceof Answer.Proven) {
      return "proven best";
    }
    return solved.answer().bound().isEmpty()
        ? "no bound known"
        : "bound " + wording().atLeast(solved.answer().bound().getAsDouble());
  }

  static void write(ExplainFinding.FedWithout fed, Page page) {
    page.gap();
    Table table =
        Table.of("grams in %", ">programme, g", ">with", ">any four", ">without", ">any four");
    for (int i = 0; i < fed.with().size(); i++) {
      Fed with = fed.with().get(i);
      Fed without = fed.without().get(i);
      table.row(
          with.animal(),
          Wording.decimal(with.grams().target().toDouble()),
          percent(with),
          EachAnimal.inAnyFour(with),
          percent(without),
          EachAnimal.inAnyFour(without));
    }
    page.table(table);
  }

  private static String percent(Fed fed) {
    return EachAnimal.rounded(100 * fed.grams().share());
  }
}
