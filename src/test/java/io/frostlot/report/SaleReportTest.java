package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.OneMouseShop;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Excess;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.OrderTerms;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of a sale where little is proven. */
class SaleReportTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  @TempDir Path folder;
  private World world;
  private Deal deal;

  @BeforeEach
  void write() {
    world = new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 3)).world(folder);
    deal =
        new Deal.OnShipping(
            "shop",
            new OrderTerms.FreeShipping(
                Period.ALWAYS, DateBasis.ORDER, OrderTerms.Threshold.NONE, Set.of()));
  }

  private Solved solved(int cost, OptionalDouble bound) {
    Books books = new Books();
    books.tail("tail", Money.of(cost));
    Answer.Judged judged =
        new Answer.Judged(new Plan(List.of(), List.of(), List.of(), List.of()), books);
    return new Solved(world, new Answer.BestFound(judged, bound));
  }

  private String worth(Solved without, Solved with) {
    Outline none =
        new Outline("", new Outline.Totals(Money.ZERO, Money.ZERO), List.of(), List.of());
    SaleFinding.Worth worth =
        new SaleFinding.Worth(
            List.of(deal),
            without,
            with,
            Difference.between(without, with),
            List.of(),
            Changes.between(none, none));
    return text(worth);
  }

  private String text(SaleFinding finding) {
    return new SaleReport(world, 100)
        .text(finding, false)
        .replace(Wording.NO_BREAK, ' ')
        .replaceAll("\\s+", " ");
  }

  @Test
  void yes_and_no_are_said_only_as_far_as_bounds_allow() {
    assertThat(worth(solved(100, NONE), solved(100, NONE))).contains("Not known yet: the same");
    assertThat(worth(solved(100, OptionalDouble.of(100)), solved(100, OptionalDouble.of(100))))
        .contains("No: the same meals");
    assertThat(worth(solved(100, NONE), solved(90, NONE)))
        .contains("Yes, as far as was found: the same");
    assertThat(worth(solved(100, OptionalDouble.of(95)), solved(90, NONE)))
        .contains("Yes: the same");
  }

  private String curve(int turn, boolean sure, Solved without, Solved with) {
    SaleFinding.Point point =
        new SaleFinding.Point(turn, false, List.of(Difference.between(without, with)));
    return text(new SaleFinding.Curve(deal, List.of(point), turn, sure, List.of(), 0));
  }

  /** Without 100.00 to 95.00, with 90.00 to 80.00: 95 - 90 to 100 - 80. */
  @Test
  void where_it_turns_is_said_only_where_it_is_proven() {
    Solved without = solved(100, OptionalDouble.of(95));
    Solved with = solved(90, OptionalDouble.of(80));
    assertThat(curve(3, true, without, with))
        .contains("<- here it turns", "It pays up to 3 packs.")
        .doesNotContain("as far as was found");
    assertThat(curve(3, false, without, with))
        .contains(
            "<- best found",
            "As far as was found it pays up to 3 packs; whether fewer or more are better cannot be"
                + " told yet. With so many, and both plans at their best, it saves between 5.00 EUR"
                + " and 20.00 EUR.")
        .doesNotContain("here it turns");
    assertThat(curve(0, true, without, without)).contains("No pack of it is worth taking.");
    assertThat(curve(0, false, without, without))
        .contains("No plan was found in which a pack of it is worth taking; whether any is cannot")
        .doesNotContain("No pack of it");
  }

  /** One more pack costs 10.00 more in the plan found, which is not proven, then is. */
  @Test
  void reasons_of_a_plan_that_is_not_proven_are_as_far_as_was_found() {
    Solved base = solved(100, OptionalDouble.of(100));
    assertThat(beyond(base, solved(110, NONE)))
        .contains("Beyond that, as far as was found: - further packs only replace");
    assertThat(beyond(base, solved(110, OptionalDouble.of(110))))
        .contains("Beyond that: - further packs only replace");
  }

  private String beyond(Solved base, Solved more) {
    List<SaleFinding.Point> points =
        List.of(
            new SaleFinding.Point(1, false, List.of(Difference.between(base, base))),
            new SaleFinding.Point(2, true, List.of(Difference.between(base, more))));
    Excess reason =
        new Excess(
            Excess.Kind.REPLACES_AS_CHEAP, "", world.scenario().planning().from(), Money.ZERO);
    return text(new SaleFinding.Curve(deal, points, 1, true, List.of(reason), 0));
  }
}
