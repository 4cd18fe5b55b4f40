package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Fed;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.stream.Collectors;

/** What a rule costs, and what animals are fed with adequacy and without it. */
record WishText(World world) {
  private static final String ANIMAL =
      " It is there for the animals' sake: no saving is a reason to drop it; ask a vet.";
  private static final String FOR_ANIMALS =
      " It would be for the animals' sake: no saving is a reason to go without it; ask a vet.";

  /** Health authorities on feeder rodents, as in {@link Cautions}. */
  private static final String PEOPLE =
      " Frozen rodents can carry Salmonella and have made people ill: what it saves is no reason"
          + " to put prey beside food. Keep it sealed in a closed box of its own, and keep to the"
          + " rules of your place.";

  private Wording wording() {
    return new Wording(world.scenario().currency());
  }

  void write(ExplainFinding.WishCost wish, Page page) {
    page.say(
        "%s (%s%s): %s.%s"
            .formatted(
                Wording.capital(wish.wish().says()),
                wish.wish().asked() ? "asked for" : "not asked for",
                lacking(wish.lacking()),
                new Differences(wording()).verdict(wish.difference(), going(wish.wish())),
                onNoInvoice(wish) + sake(wish.wish())));
    String with = standing(wish.with());
    String without = standing(wish.without());
    if (with.equals(without)) {
      page.point("with it and without it: " + with);
    } else {
      page.point("with it: " + with);
      page.point("without it: " + without);
    }
  }

  /** What the rule itself falls short of, such as "; not kept: 3 percent short"; else nothing. */
  static String lacking(List<Shortfall> own) {
    return own.isEmpty()
        ? ""
        : own.stream()
            .map(it -> Wording.amount(it) + " short")
            .collect(Collectors.joining(", ", "; not kept in full: ", ""));
  }

  /** What is done without it: a charge is only left out, all else may be had all the same. */
  private static String going(ExplainFinding.Wished wish) {
    return wish.kind() == ExplainFinding.Kind.CHARGE ? "leaving it out" : "going without it";
  }

  /** Of a charge: what is paid, since a plan is cheaper without it where nothing else changes. */
  private String onNoInvoice(ExplainFinding.WishCost wish) {
    if (wish.wish().kind() != ExplainFinding.Kind.CHARGE) {
      return "";
    }
    Money with = toPay(wish.with());
    Money without = toPay(wish.without());
    return " It stands on no invoice: "
        + (with.equals(without)
            ? wording().money(with) + " to pay either way."
            : "%s to pay with it, %s without it."
                .formatted(wording().money(with), wording().money(without)));
  }

  private static Money toPay(Solved solved) {
    return solved.answer().plan().books().total(Books.Account.CASH);
  }

  private static String sake(ExplainFinding.Wished wish) {
    return switch (wish.sake()) {
      case KEEPER -> "";
      case ANIMAL -> wish.asked() ? ANIMAL : FOR_ANIMALS;
      case PEOPLE -> PEOPLE;
    };
  }

  /** Such as "2 orders, 88.00 EUR to pay, 120.40 EUR in all, proven best; budget short by 3". */
  private String standing(Solved solved) {
    Wording wording = wording();
    Books books = solved.answer().plan().books();
    String lacking =
        books.shortfalls().stream()
            .map(it -> "; " + Differences.shortBy(it))
            .collect(Collectors.joining());
    return "%s, %s to pay, %s in all (%s)%s."
        .formatted(
            Wording.count(solved.plan().orders().size(), "order", "orders"),
            wording.money(toPay(solved)),
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
