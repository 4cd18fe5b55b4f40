package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.OneMouseShop;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Difference;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Costs and bounds of a litre each; what a litre is worth follows by subtraction. */
class FreezerCurveTextTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  @TempDir Path folder;
  private World world;
  private Freezer freezer;

  @BeforeEach
  void write() {
    world = new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 3)).world(folder);
    freezer = world.scenario().larder().freezers().get(0);
  }

  private Solved solved(int cost, OptionalDouble bound) {
    return solved(cost, bound, 0);
  }

  private Solved solved(int cost, OptionalDouble bound, int unmet) {
    Books books = new Books();
    books.tail("tail", Money.of(cost));
    books.unmet(unmet, false);
    Answer.Judged judged =
        new Answer.Judged(new Plan(List.of(), List.of(), List.of(), List.of()), books);
    return new Solved(
        world,
        bound.orElse(-1) == cost
            ? new Answer.Proven(judged, cost)
            : new Answer.BestFound(judged, bound));
  }

  private static Litres litres(int litres) {
    return Litres.of(BigDecimal.valueOf(litres));
  }

  /** Of one litre, two, three and any. */
  private String text(int enough, Solved... plans) {
    List<FreezerFinding.Point> points = new ArrayList<>();
    for (int i = 0; i < plans.length; i++) {
      Litres room = i + 1 < plans.length ? litres(i + 1) : litres(100_000);
      points.add(new FreezerFinding.Point(room, plans[i], Difference.between(plans[2], plans[i])));
    }
    FreezerFinding.Curve curve = new FreezerFinding.Curve(freezer, points, litres(enough));
    Page page = new TextPage(100);
    new FreezerCurveText(new Wording(Currency.getInstance("EUR")), 2).write(curve, page);
    return page.toString().replaceAll(" +", " ").replace(Wording.NO_BREAK, ' ');
  }

  private static OptionalDouble at(double bound) {
    return OptionalDouble.of(bound);
  }

  @Test
  void where_all_is_proven_it_is_said_plainly() {
    assertThat(
            text(
                2,
                solved(140, at(140)),
                solved(100, at(100)),
                solved(100, at(100)),
                solved(100, at(100))))
        .contains(
            "1.0 140.00 140.00 40.00\n",
            "2.0 100.00 100.00 0.00 <- flat from here on\n",
            "3.0 100.00 100.00 0.00 <- as it is\n",
            "any 100.00 100.00\n",
            "From 2 l on more room gains nothing.");
  }

  /** 140 - 100 and 130 - 100 at one end; at two litres 100 - 90 is all that may be gained. */
  @Test
  void what_bounds_leave_open_is_an_interval_and_no_kink() {
    String text =
        text(
            2, solved(140, at(130)), solved(100, at(90)), solved(100, at(90)), solved(100, at(90)));
    assertThat(text)
        .contains(
            "1.0 140.00 130.00 30.00 to 50.00\n",
            "2.0 100.00 90.00 0.00 to 10.00 <- enough, as far as was found\n",
            "3.0 100.00 90.00 cannot tell <- as it is\n",
            "From 2 l on no more room was found to gain anything. It may gain at most 10.00 EUR.")
        .doesNotContain("flat", "kink", "gains nothing");
  }

  @Test
  void a_kink_is_only_where_the_slopes_are_sure_to_differ() {
    assertThat(
            text(
                3,
                solved(150, at(150)),
                solved(110, at(110)),
                solved(100, at(100)),
                solved(100, at(100))))
        .contains("2.0 110.00 110.00 10.00 <- a kink");
    assertThat(
            text(
                3,
                solved(150, at(115)),
                solved(110, at(100)),
                solved(100, at(100)),
                solved(100, at(100))))
        .contains("2.0 110.00 100.00 0.00 to 10.00\n");
  }

  @Test
  void without_a_bound_nothing_is_told_of_a_litre() {
    assertThat(text(1, solved(341, NONE), solved(341, NONE), solved(341, NONE), solved(341, NONE)))
        .contains(
            "1.0 341.00 ? ? <- enough, as far as was found\n",
            "What it may gain is not known.",
            "?: not known, and perhaps better meals can be had");
  }

  @Test
  void meals_that_the_room_there_is_leaves_unmet_are_told() {
    assertThat(
            text(
                3,
                solved(341, at(341), 3),
                solved(341, at(341), 2),
                solved(341, at(341), 2),
                solved(400, at(400))))
        .contains("1.0 341.00 341.00 meals 3 other meals unmet")
        .contains("3.0 341.00 341.00 meals <- as it is: 2 other meals unmet")
        .contains("any 400.00 400.00 every meal met on its best day");
  }
}
