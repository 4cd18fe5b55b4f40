package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Shared;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Glop;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnPlansTest {
  private static final String TEN_MICE = "mouse,20,30,10,2031-01-10";
  @TempDir Path folder;

  /**
   * Of one member it knows no better than to go to the shop, unless there is nothing but the box.
   */
  private static final class ShopOnly implements Planner {
    @Override
    public Answer plan(World world, Limits limits, Watch watch) {
      World seen =
          world.slots().size() > 1 && world.keepers().size() < 2
              ? world.withSlots(
                  world.slots().stream().filter(it -> it.supplier().equals("corner")).toList())
              : world;
      return Engine.solve(seen, limits, watch) instanceof Answer.WithPlan found
          ? new Answer.BestFound(found.plan(), OptionalDouble.empty())
          : new Answer.NothingFound();
    }
  }

  /** Ten mice are 43 from the shop and 30 by the box, which is what both order together, 40. */
  @Test
  void own_plans_are_looked_for_with_deliveries_like_those_of_the_joint_plan() throws IOException {
    GroupSamples samples = new GroupSamples(folder);
    samples.suppliers();
    samples.trips();
    samples.member("ann", TEN_MICE, "north", "corner");
    samples.member("bo", TEN_MICE, "north", "corner");
    samples.group("", "ann", "bo");
    ShareBox box = new ShareBox(new ShopOnly(), new Glop());
    ShareBox.Ready ready =
        (ShareBox.Ready) box.prepare(folder, List.of(folder.resolve("supplier-profiles")));
    ShareBox.Work work = new ShareBox.Work(Limits.ofSeconds(6), Optional.empty());

    Shared shared = box.share(ready.group(), work, new NobodyLooksOn()).orElseThrow();

    assertThat(shared.parts()).hasSize(1);
    assertThat(shared.sheets())
        .allSatisfy(
            sheet -> {
              assertThat(sheet.account().alone()).isEqualTo(Money.of(30));
              assertThat(sheet.account().saving()).isEqualTo(Money.of(10));
              assertThat(sheet.account().sureSaving()).isEmpty();
            });
  }
}
