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

  private final Answer.Judged judged = HandmadePlan.judged(world);
  private final Solved shown = new Solved(world, (Answer.WithPlan) found);

  private JsonNode written(SecondLook... looks) {
    String text = PlanJson.text(inputs, found, List.of(), List.of(looks));
    assertThat(PlanJsonTest.breaches(PlanJsonTest.tree(text))).isEmpty();
    assertThat(PlanFileTest.value(PlanFileTest.read(folder, text)).digest())
        .isEqualTo(inputs.digest());
    return PlanJsonTest.tree(text);
  }

  /** The plan shown stands in for a simpler one. */
  @Test
  void the_simplest_plan_is_written_with_its_orders() {
    JsonNode plan = written(new Simplest(2, List.of(judged), true));
    assertThat(plan.at("/simplest/plan/cost").asText()).isEqualTo("103.215");
    assertThat(plan.at("/simplest/plan/orders")).isEqualTo(plan.get("orders"));
    JsonNode alone = written(new Simplest(2, List.of(), false));
    assertThat(alone.at("/simplest/plan").isNull()).isTrue();
  }

  /** The bound is 95.123456, the cost 103.215: at most 8.091544 either way. */
  @Test
  void differences_are_written_with_what_they_are_at_most() {
    Habit habit =
        new Habit(
            "one order a month",
            new Difference.Side(judged.standing(), 1),
            Interval.between(-1.5, 4));
    JsonNode plan =
        written(
            BudgetPrice.between(shown, shown),
            new Comparison(List.of(habit), List.of("everything from Far Hatch")));
    assertThat(plan.at("/withoutBudget/savesAtMost").asText()).isEqualTo("8.0916");
    assertThat(plan.at("/habits/compared/0/dearerAtLeast").asText()).isEqualTo("-1.5000");
  }

  @Test
  void room_in_boxes_is_written_with_the_addition_where_there_is_one() {
    Order order = judged.plan().orders().get(0);
    List<BoxFill.Fill> boxes = List.of(new BoxFill.Fill(BoxFill.Unit.KILOGRAMS, 1.025, 2));
    BoxRoom.Addition addition =
        new BoxRoom.Addition(
            List.of(new Order.Content(order.lines().get(0).pack(), 2)),
            Difference.between(shown, shown));
    JsonNode plan =
        written(
            new BoxRoom(
                List.of(
                    new BoxRoom.Left(
                        order.slot(), boxes, BoxRoom.Verdict.CANNOT_TELL, List.of(addition)),
                    new BoxRoom.Left(
                        order.slot(), boxes, BoxRoom.Verdict.NO_PACK_FITS, List.of()))));
    assertThat(plan.at("/boxRoom/0/room/0/amount").decimalValue()).isEqualByComparingTo("0.975");
    assertThat(plan.at("/boxRoom/0/addition/packs/0/packs").asInt()).isEqualTo(2);
    assertThat(plan.at("/boxRoom/1/verdict").asText()).isEqualTo("no-pack-fits");
    assertThat(plan.at("/boxRoom/1/addition").isNull()).isTrue();
  }

  @Test
  void guesses_are_written_with_both_ends() {
    Outline.Ordered order =
        new Outline.Ordered(
            "hillside",
            LocalDate.parse("2031-01-12"),
            LocalDate.parse("2031-01-15"),
            new TreeMap<>(),
            Money.of(60));
    Difference.Side side = Difference.Side.of(shown);
    Guesses.Tried tried =
        new Guesses.Tried(
            new Guess(Guess.Kind.PIECE_GRAMS, "hillside/Hopper", new Guess.Ends(8.5, 10, 11.5)),
            new Guesses.End(
                side, List.of(new Changes.Added(order)), Money.of(6), Guesses.Sure.PROVEN),
            new Guesses.End(side, List.of(), Money.ZERO, Guesses.Sure.UNKNOWN));
    JsonNode plan = written(new Guesses(List.of(tried), List.of(tried.guess())));
    assertThat(plan.at("/guesses/tried/0/kind").asText()).isEqualTo("piece-grams");
    assertThat(plan.at("/guesses/tried/0/atLow/orders/0/change").asText()).isEqualTo("added");
    assertThat(plan.at("/guesses/tried/0/atHigh/proven").asBoolean()).isFalse();
    assertThat(plan.at("/guesses/tried/0/atHigh/known").asBoolean()).isFalse();
    assertThat(plan.at("/guesses/tried/0/atLow/known").asBoolean()).isTrue();
    assertThat(plan.at("/guesses/notTried/0/high").decimalValue()).isEqualByComparingTo("11.5");
  }
}
