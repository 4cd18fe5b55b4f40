package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.frostlot.plan.Answer;
import io.frostlot.plan.BoxFill;
import io.frostlot.plan.BoxRoom;
import io.frostlot.plan.BudgetPrice;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.Habit;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Order;
import io.frostlot.plan.Outline;
import io.frostlot.plan.SecondLook;
import io.frostlot.plan.Simplest;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is looked for once a plan is known, in its JSON. */
class PlanJsonLooksTest {
  private final World world = HandmadeRoom.world();
  private final Inputs inputs = HandmadeRoom.inputs(world);
  private final Answer found =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95.123456));

  @TempDir Path folder;

  /** The plan shown stands in for a simpler one. */
  @Test
  void second_looks_follow_the_schema_and_are_read_over() {
    Answer.Judged judged = HandmadePlan.judged(world);
    Solved shown = new Solved(world, (Answer.WithPlan) found);
    Habit habit = new Habit("one order a month", judged.standing(), 1, Interval.between(-1.5, 4));
    Order order = judged.plan().orders().get(0);
    BoxFill.Fill boxes = new BoxFill.Fill(BoxFill.Unit.KILOGRAMS, 1.025, 2);
    BoxRoom.Addition addition =
        new BoxRoom.Addition(
            List.of(new Order.Content(order.lines().get(0).pack(), 2)),
            Difference.between(shown, shown));
    BoxRoom.Left filled =
        new BoxRoom.Left(
            order.slot(), List.of(boxes), BoxRoom.Verdict.CANNOT_TELL, List.of(addition));
    BoxRoom.Left full =
        new BoxRoom.Left(order.slot(), List.of(boxes), BoxRoom.Verdict.NO_PACK_FITS, List.of());
    Outline.Ordered second =
        new Outline.Ordered(
            "hillside",
            LocalDate.parse("2031-01-12"),
            LocalDate.parse("2031-01-15"),
            new TreeMap<>(),
            Money.of(60));
    Guess grams =
        new Guess(Guess.Kind.PIECE_GRAMS, "hillside/Hopper", new Guess.Ends(8.5, 10, 11.5));
    Guesses.Tried tried =
        new Guesses.Tried(
            grams,
            new Guesses.End(
                Difference.Side.of(shown), List.of(new Changes.Added(second)), Money.of(6), true),
            new Guesses.End(Difference.Side.of(shown), List.of(), Money.ZERO, false));
    List<SecondLook> looks =
        List.of(
            new Simplest(2, List.of(judged), true),
            new BudgetPrice(Difference.between(shown, shown)),
            new BoxRoom(List.of(filled, full)),
            new Guesses(List.of(tried), List.of(tried.guess())),
            new Comparison(List.of(habit), List.of("everything from Far Hatch")));
    String text = PlanJson.text(inputs, found, List.of(), looks);
    JsonNode plan = PlanJsonTest.tree(text);

    assertThat(PlanJsonTest.breaches(plan)).isEmpty();
    assertThat(plan.at("/simplest/plan/cost").asText()).isEqualTo("103.215");
    assertThat(plan.at("/simplest/plan/orders")).isEqualTo(plan.get("orders"));
    // the bound is 95.123456, the cost 103.215: at most 8.091544 either way
    assertThat(plan.at("/withoutBudget/savesAtMost").asText()).isEqualTo("8.0916");
    assertThat(plan.at("/boxRoom/0/room/0/amount").decimalValue()).isEqualByComparingTo("0.975");
    assertThat(plan.at("/boxRoom/0/addition/packs/0/packs").asInt()).isEqualTo(2);
    assertThat(plan.at("/boxRoom/1/verdict").asText()).isEqualTo("no-pack-fits");
    assertThat(plan.at("/boxRoom/1/addition").isNull()).isTrue();
    assertThat(plan.at("/guesses/tried/0/kind").asText()).isEqualTo("piece-grams");
    assertThat(plan.at("/guesses/tried/0/atLow/orders/0/change").asText()).isEqualTo("added");
    assertThat(plan.at("/guesses/tried/0/atHigh/proven").asBoolean()).isFalse();
    assertThat(plan.at("/guesses/notTried/0/high").decimalValue()).isEqualByComparingTo("11.5");
    assertThat(plan.at("/habits/compared/0/dearerAtLeast").asText()).isEqualTo("-1.5000");
    assertThat(PlanFileTest.value(PlanFileTest.read(folder, text)).digest())
        .isEqualTo(inputs.digest());
    Simplest none = new Simplest(2, List.of(), false);
    JsonNode alone = PlanJsonTest.tree(PlanJson.text(inputs, found, List.of(), List.of(none)));
    assertThat(PlanJsonTest.breaches(alone)).isEmpty();
    assertThat(alone.at("/simplest/plan").isNull()).isTrue();
  }
}
