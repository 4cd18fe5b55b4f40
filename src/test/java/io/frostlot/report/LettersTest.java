package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Habit;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole letters as they are printed. After a wanted change of the layout, run with {@code
 * -Dletters.write=true} and look at what changed.
 */
class LettersTest {
  private static final Path FOLDER = Path.of("src/test/resources/io/frostlot/report");
  private final World world = HandmadeRoom.world();
  private final Plan plan = HandmadePlan.plan(world);
  private final Outcome outcome = Outcome.of(world, plan);
  private final Answer.Judged judged = HandmadePlan.judged(world);

  private PlanReport full() {
    Outline before =
        new Outline(
            "another",
            new Outline.Totals(Money.of("90.10"), Money.of("88.00")),
            List.of(
                new Outline.Ordered(
                    "hillside",
                    HandmadeRoom.FIRST.plusDays(6),
                    HandmadeRoom.FIRST.plusDays(9),
                    new TreeMap<>(Map.of("Hopper x25", 1)),
                    Money.of("60.00"))),
            List.of(new Outline.Unmet("Amber", HandmadeRoom.FIRST.plusDays(11))));
    return new PlanReport(
        HandmadeRoom.inputs(world),
        new Answer.BestFound(judged, OptionalDouble.of(95)),
        outcome,
        List.of(Changes.between(before, Outline.of(HandmadeRoom.DIGEST, judged, outcome))));
  }

  private static Comparison habits() {
    List<Habit> habits =
        List.of(
            habit("month by month from the least-cost supplier", 5, 1, Interval.between(34.1, 41)),
            habit("everything from Hillside Hatch (invented)", 5, 1, Interval.between(-1.2, 4)),
            habit("everything from Corner Shop (invented)", 3, 0, Interval.between(34.1, 41)));
    return new Comparison(habits, List.of("everything from Far Hatch (invented)"));
  }

  private static Habit habit(String says, int unmetMust, int late, Interval dearerBy) {
    return new Habit(
        says, new Difference.Side(new Standing(unmetMust, 0, 0, Money.of(140)), late), dearerBy);
  }

  /** Nothing to order, nothing to complain of. */
  private PlanReport empty() {
    Plan nothing = new Plan(List.of(), plan.lots().subList(0, 1), List.of(), List.of());
    Outcome nothingMissed =
        new Outcome(
            Outcome.of(world, nothing).freezers(),
            Outcome.of(world, nothing).dearest(),
            Outcome.of(world, nothing).stock(),
            List.of(),
            List.of(),
            List.of());
    return new PlanReport(
        new Inputs(world, HandmadeRoom.DIGEST, List.of()),
        new Answer.Proven(new Answer.Judged(nothing, new Books()), 0),
        nothingMissed,
        List.of());
  }

  private static void same(String name, String letter) throws IOException {
    if (Boolean.getBoolean("letters.write")) {
      Files.writeString(FOLDER.resolve(name), letter);
    }
    String golden = Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
    assertThat(letter).isEqualTo(golden);
  }

  @Test
  void a_plan_with_everything_in_eighty_columns() throws IOException {
    same("everything-80.txt", full().text(80) + full().text(habits(), 80));
  }

  @Test
  void a_plan_with_everything_in_a_wide_window() throws IOException {
    same("everything-120.txt", full().text(200) + full().text(habits(), 200));
  }

  @Test
  void a_plan_that_orders_nothing() throws IOException {
    same("nothing-80.txt", empty().text(80));
  }

  @ParameterizedTest
  @ValueSource(ints = {72, 73, 80, 99, 119, 120})
  void no_line_is_wider_than_the_page_or_has_anything_but_plain_characters(int width) {
    assertThat((full().text(width) + full().text(habits(), width)).lines())
        .allSatisfy(
            line -> {
              assertThat(line.length()).as(line).isLessThanOrEqualTo(width);
              assertThat(line).matches("[\\x20-\\x7e]*").doesNotEndWith(" ");
            });
  }

  @Test
  void every_sum_that_is_shown_is_one_of_the_books() {
    // 46.16 + 4.40 goods, 43 charges, 6.24 tax = 99.80
    assertThat(full().text(80))
        .containsPattern("packs at list price \\.+ 50\\.56\n")
        .containsPattern("charges \\(shipping, packing, trips\\) \\.+ 43\\.00\n")
        .containsPattern("tax \\.+ 6\\.24\n")
        .containsPattern("cash in all \\.+ 99\\.80\n")
        .containsPattern("all together, which the plan makes least \\.+ 103\\.215\n");
  }

  @Test
  void the_page_says_what_the_letter_says_in_the_same_order() {
    String page = full().html(List.of(habits()));

    assertThat(ParsedPage.of(page).words())
        .isEqualTo(ParsedPage.words(full().text(120) + full().text(habits(), 120)));
    assertThat(ParsedPage.of(empty().html(List.of())).words())
        .isEqualTo(ParsedPage.words(empty().text(120)));
  }

  /** Key messages of the US Centers for Disease Control and Prevention on feeder rodents. */
  @Test
  void cautions_stand_in_every_letter() {
    for (String letter : List.of(full().text(80), empty().text(80))) {
      assertThat(letter.replaceAll("\\s+", " "))
          .contains("Freezing does not kill the germs")
          .contains("Wash hands with soap right after")
          .contains("Never thaw it in the microwave or the kitchen sink")
          .contains("Children of 5 and under, pregnant women and people with weakened immunity")
          .contains("ask a vet who knows your animals, and keep to the rules of your place");
    }
    assertThat(full().text(80)).contains("dry ice (-78.5 C)");
  }
}
