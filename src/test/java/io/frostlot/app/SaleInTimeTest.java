package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Deal;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.report.SaleReport;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.Sale;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SaleInTimeTest {
  private static final Deal.OnPacks DEAL =
      new Deal.OnPacks(
          "shop",
          new Sale(
              "s",
              Period.ALWAYS,
              DateBasis.ORDER,
              Set.of(),
              new Sale.PercentOff(Percent.of("5")),
              Sale.Limits.NONE,
              false));
  @TempDir Path folder;

  /** Time is over as soon as something is told. */
  @Test
  void what_was_asked_for_and_is_not_known_in_the_time_is_said() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    List<SaleFinding> found = new ArrayList<>();
    Watch stop =
        new Watch() {
          @Override
          public boolean stop() {
            return !found.isEmpty();
          }

          @Override
          public void found(Answer.WithPlan best) {}
        };
    try (Questions questions = new Questions(new EnginePlanner(), Limits.ofSeconds(1200), stop)) {
      new CheckSale(
              questions,
              world,
              new CheckSale.Request(
                  List.of(DEAL, DEAL), Percent.of("10"), List.of(Percent.of("50"))),
              found::add)
          .run();
    }
    assertThat(found)
        .contains(
            new SaleFinding.NotKnown(SaleFinding.Asked.APART),
            new SaleFinding.NotKnown(SaleFinding.Asked.WORSE_CASE));
    assertThat(new SaleReport(world, 80).text(found.get(found.size() - 2), false))
        .contains("IF MORE MEALS ARE SKIPPED", "Not known in the time");
  }

  /** With the sale only a plan of sixty mice too many was found when time was over. */
  @Test
  void a_sale_is_never_told_to_cost_more_than_the_plan_without_it() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    World given = World.of(Deal.in(world.scenario(), List.of(DEAL)));
    try (Questions questions =
        new Questions(new EnginePlanner(), Limits.ofSeconds(600), Watch.NONE)) {
      questions.looser(given, world);
      Solved dear = wasteful(world);
      questions.learn(dear.plan());
      assertThat(questions.ask(given, 0).orElseThrow().cost()).isEqualTo(dear.cost());

      Solved without = questions.ask(world, 1).orElseThrow();
      assertThat(without.cost()).isLessThan(dear.cost());
      assertThat(questions.answer(given).orElseThrow().cost()).isEqualTo(without.cost());
    }
  }

  /** The best plan with the sale is proven; without it one might be as good that is not found. */
  @Test
  void a_curve_turns_for_sure_only_where_it_is_known_that_the_sale_pays() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    try (Questions questions =
        new Questions(new EnginePlanner(), Limits.ofSeconds(600), Watch.NONE)) {
      questions.learn(wasteful(world).plan());
      questions.ask(world, 0);
      questions.ask(World.of(Deal.in(world.scenario(), List.of(DEAL.atMost(1)))), 1);
      assertThat(curve(questions, world).turn()).isEqualTo(1);
      assertThat(curve(questions, world).sure()).isFalse();

      questions.again(world, 1);
      assertThat(curve(questions, world).sure()).isTrue();
    }
  }

  private static SaleFinding.Curve curve(Questions questions, World world) {
    SaleCurve curve =
        new SaleCurve(
            questions,
            DEAL.atMost(1),
            (deal, instead) -> World.of(Deal.in(world.scenario(), instead)));
    return (SaleFinding.Curve) curve.find(0).orElseThrow();
  }

  private static Solved wasteful(World world) {
    try (Questions questions =
        new Questions(new EnginePlanner(), Limits.ofSeconds(600), Watch.NONE)) {
      Plan best = questions.ask(world, 1).orElseThrow().plan();
      int packs =
          best.orders().stream()
              .flatMap(order -> order.lines().stream())
              .mapToInt(Order.Line::packs)
              .sum();
      Pledge pledge = DEAL.pledge(world, Pledge.Packs.atLeast(packs + 60));
      return questions.ask(world.withPledges(List.of(pledge)), 1).orElseThrow();
    }
  }
}
