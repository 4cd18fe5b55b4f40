package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * On each of four Wednesdays a meal of 40 to 60 g is eaten, best 50 g. The shop sells mice of 50 g
 * at 2.00, and at 1.00 others whose pieces of 34 to 50 g were never weighed, 42 g in the mean. An
 * order is 0.30, so all is fetched on the first day.
 */
class FindOutTest {
  private static final Limits LIMITS = Limits.ofSeconds(600);
  private static final String PRICES =
      "Mouse,mouse,adult,50,50,50,1,2.00\nSmall,mouse,adult,34,42,50,1,1.00\n";
  private final Planner engine = new EnginePlanner();
  @TempDir private Path folder;

  private Solved shown() {
    World read =
        new OneMouseShop(
                PRICES,
                new OneMouseShop.Extras(
                    "",
                    ", \"tailDays\": 0, \"adequacy\": {\"asked\": false},"
                        + " \"charges\": {\"perOrder\": \"0.30\", \"perDeliveryDay\": 0}"),
                new OneMouseShop.Keeping(60, 10))
            .world(folder);
    Scenario scenario = read.scenario();
    Supplier shop = scenario.suppliers().get(0);
    List<Pack> packs = shop.sheet().packs().stream().map(FindOutTest::neverWeighed).toList();
    World world =
        World.of(scenario.withSuppliers(List.of(shop.withSheet(shop.sheet().withPacks(packs)))));
    return new Solved(world, (Answer.WithPlan) engine.plan(world, LIMITS, Watch.NONE));
  }

  private static Pack neverWeighed(Pack pack) {
    Item.Spread grams = pack.item().grams();
    return pack.withItem(
        pack.item()
            .weighing(
                new Item.Spread(grams.least(), grams.mean(), grams.most(), grams.isSortable())));
  }

  private static Guesses of(Planner planner, Solved shown, Limits limits, Watch watch) {
    return new FindOut(planner).of(shown, limits, watch).orElseThrow();
  }

  /**
   * Of 38 g, half way to 34 g, they would not do: four mice at 2.00 in place of four at 1.00, 12.00
   * of packs that differ. Of 46 g they do as before; nothing else makes a difference.
   */
  @Test
  void the_grams_of_the_small_mice_should_be_found_out() {
    Guesses found = of(engine, shown(), LIMITS, Watch.NONE);
    Guesses.Tried first = found.tried().get(0);
    assertThat(first.guess())
        .isEqualTo(new Guess(Guess.Kind.PIECE_GRAMS, "shop/Small", new Guess.Ends(38, 42, 46)));
    assertThat(first.low().moved()).isEqualTo(Money.of(12));
    assertThat(first.low().sure()).isEqualTo(Guesses.Sure.PROVEN);
    assertThat(first.low().changes())
        .singleElement()
        .isInstanceOfSatisfying(
            Changes.Changed.class,
            changed -> {
              assertThat(changed.before().packs()).containsOnly(java.util.Map.entry("Small x1", 4));
              assertThat(changed.after().packs()).containsOnly(java.util.Map.entry("Mouse x1", 4));
              assertThat(changed.after().total()).isEqualTo(Money.of(8));
            });
    assertThat(first.high().moved().isZero()).isTrue();
    assertThat(found.tried().subList(1, found.tried().size()))
        .extracting(it -> it.guess().kind())
        .containsExactlyInAnyOrder(
            Guess.Kind.FREEZER_LITRES, Guess.Kind.PREY_LITRES, Guess.Kind.SKIPPED_MEALS);
    assertThat(found.tried().subList(1, found.tried().size()))
        .allMatch(Guesses.Tried::changesNothing);
    assertThat(found.notTried()).isEmpty();
  }

  @Test
  void with_counted_rounds_it_finds_out_the_same_every_time() {
    Limits rounds = new Limits(Duration.ofMinutes(10), OptionalInt.of(2));
    Solved shown = shown();
    assertThat(of(engine, shown, rounds, Watch.NONE))
        .isEqualTo(of(engine, shown, rounds, Watch.NONE));
  }

  @Test
  void what_is_not_tried_is_said_with_what_matters_most_first() {
    Planner idle = (world, limits, watch) -> new Answer.NothingFound();
    Guesses untried = of(idle, shown(), LIMITS, Watch.NONE);
    assertThat(untried.tried()).isEmpty();
    assertThat(untried.notTried()).hasSize(4);
    assertThat(untried.notTried().get(0).kind()).isEqualTo(Guess.Kind.PIECE_GRAMS);
    assertThat(of(engine, shown(), LIMITS, Watch.stopping(() -> true))).isEqualTo(untried);
  }
}
