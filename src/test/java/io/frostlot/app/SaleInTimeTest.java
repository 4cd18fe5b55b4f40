package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Deal;
import io.frostlot.plan.SaleFinding;
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
  @TempDir Path folder;

  /** Time is over as soon as something is told. */
  @Test
  void what_was_asked_for_and_is_not_known_in_the_time_is_said() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    Deal deal =
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
                  List.of(deal, deal), Percent.of("10"), List.of(Percent.of("50"))),
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
}
