package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Four meals on four Wednesdays, mice of one litre at 1.00, a trip at 5.00, 26 meals of the tail at
 * 1.00: room for four needs one trip, for two or three two, for one four. Holding is so little that
 * it only keeps what is not needed from being bought: never 0.10 in all.
 */
class SizeFreezersTest {
  @TempDir Path folder;

  private World world(int litres) {
    return new OneMouseShop(
            OneMouseShop.SINGLES,
            new OneMouseShop.Extras(
                ", \"orderCharges\": [{\"amount\": \"5.00\"}]",
                ", \"charges\": {\"perOrder\": 0, \"perDeliveryDay\": 0, \"holdingPerPieceNight\": \"0.001\"}"),
            new OneMouseShop.Keeping(182, litres))
        .world(folder);
  }

  private static List<FreezerFinding> find(World world, int moreLitres) {
    List<FreezerFinding> found = new ArrayList<>();
    Questions questions = new Questions(new EnginePlanner(), Limits.ofSeconds(1200), Watch.NONE);
    SizeFreezers.Request request =
        new SizeFreezers.Request(
            List.of(),
            Litres.of(BigDecimal.valueOf(moreLitres)),
            new FreezerFinding.Purchase(Money.of(100), Money.of(20)),
            List.of(LocalDate.of(2031, 1, 1)));
    new SizeFreezers(questions, world, found::add).run(request);
    return found;
  }

  private static <T> T only(List<FreezerFinding> found, Class<T> type) {
    List<T> all = found.stream().filter(type::isInstance).map(type::cast).toList();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  @Test
  void the_curve_falls_by_trips_and_is_flat_from_the_least_peak_on() {
    FreezerFinding.Curve curve = only(find(world(2), 0), FreezerFinding.Curve.class);

    assertThat(curve.enough()).isEqualTo(Litres.of(BigDecimal.valueOf(4)));
    for (FreezerFinding.Point point : curve.points()) {
      double litres = point.litres().toDouble();
      int trips = litres >= 4 ? 1 : litres >= 2 ? 2 : 4;
      if (litres >= 1) {
        assertThat(point.plan().cost()).isBetween(30 + 5.0 * trips, 30.1 + 5 * trips);
      }
    }
    for (int i = 1; i < curve.points().size(); i++) {
      assertThat(curve.points().get(i).plan().standing())
          .isLessThanOrEqualTo(curve.points().get(i - 1).plan().standing());
    }
  }

  @Test
  void what_fits_beside_the_plan_and_what_a_failure_would_cost() {
    List<FreezerFinding> found = find(world(4), 0);
    FreezerFinding.Use use = only(found, FreezerFinding.Use.class);
    // four come on the first day, before the first meal; one is eaten a week
    assertThat(use.free())
        .extracting(free -> free.thatDay().toDouble())
        .containsExactly(0.0, 1.0, 2.0, 3.0);
    assertThat(use.free().get(1).lasting().toDouble()).isEqualTo(1);

    FreezerFinding.Loss loss = only(found, FreezerFinding.Loss.class);
    assertThat(loss.pieces()).isEqualTo(4);
    assertThat(loss.money()).isEqualTo(Money.of(4));
    // a full freezer holds about 48 hours: extension services on power cuts
    assertThat(loss.hours()).isEqualTo(48);
    FreezerFinding.AtRisk mice = loss.contents().get(0);
    assertThat(mice.fitElsewhere()).isZero();
    assertThat(mice.eatFirst()).isEqualTo(1);
    assertThat(only(found, FreezerFinding.Fit.class).unlimited().found().isZero()).isTrue();
  }

  /** Three trips fewer in 28 days are 15.00, 195.54 a year; 175.54 after the running cost. */
  @Test
  void one_more_freezer_pays_back_its_price() {
    FreezerFinding.OneMore more = only(find(world(1), 3), FreezerFinding.OneMore.class);

    assertThat(more.difference().found().toDouble()).isBetween(14.9, 15.0);
    assertThat(more.netPerYear()).isBetween(174.0, 175.54);
    assertThat(more.payBackYears()).isBetween(0.569, 0.575);
  }

  /** Time is over as soon as there is a plan, by a watch that says so. */
  @Test
  void what_was_asked_for_and_is_not_known_in_the_time_is_said() {
    List<FreezerFinding> found = new ArrayList<>();
    Watch stop =
        new Watch() {
          @Override
          public boolean stop() {
            return found.stream().anyMatch(FreezerFinding.Loss.class::isInstance);
          }

          @Override
          public void found(Answer.WithPlan best) {}
        };
    try (Questions questions = new Questions(new EnginePlanner(), Limits.ofSeconds(1200), stop)) {
      new SizeFreezers(questions, world(2), found::add)
          .run(
              new SizeFreezers.Request(
                  List.of(),
                  Litres.of(BigDecimal.TEN),
                  new FreezerFinding.Purchase(Money.of(100), Money.of(20)),
                  List.of(LocalDate.of(2031, 1, 1))));
    }
    assertThat(found)
        .filteredOn(FreezerFinding.NotKnown.class::isInstance)
        .containsExactly(
            new FreezerFinding.NotKnown(FreezerFinding.Asked.CURVE),
            new FreezerFinding.NotKnown(FreezerFinding.Asked.FIT),
            new FreezerFinding.NotKnown(FreezerFinding.Asked.ONE_MORE));
  }
}
