package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.files.PlanFile;
import io.frostlot.files.PlanJson;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Plan;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo solved, written as JSON, and read back: the same plan, so judged the same. */
class ReadBackTest {
  private static final Limits LIMITS = new Limits(Duration.ofSeconds(60), OptionalInt.empty());

  @TempDir Path folder;

  private static MakePlan.Ready ready(MakePlan makePlan, List<Path> since) {
    return (MakePlan.Ready)
        makePlan.prepare(new MakePlan.Request(Path.of("scenarios/small-room"), List.of(), since));
  }

  @Test
  void a_solved_plan_comes_back_as_it_was() throws IOException {
    MakePlan makePlan = new MakePlan(Engine::solve);
    MakePlan.Ready ready = ready(makePlan, List.of());
    Answer.WithPlan found = (Answer.WithPlan) makePlan.plan(ready, LIMITS, Watch.NONE);
    Path file =
        Files.writeString(folder.resolve("plan.json"), PlanJson.text(ready.inputs(), found));

    PlanFile read = ((PlanFile.Read<PlanFile>) PlanFile.read(file)).value();
    assertThat(read.plan(ready.inputs().world()))
        .isEqualTo(new PlanFile.Read<Plan>(found.plan().plan()));

    Outcome outcome = Outcome.of(ready.inputs().world(), found.plan().plan());
    assertThat(ready(makePlan, List.of(file)).changes(found, outcome).map(Changes::isEmpty))
        .contains(true);
  }

  private static BigDecimal sum(JsonNode list, String field) {
    BigDecimal sum = BigDecimal.ZERO;
    for (JsonNode entry : list) {
      sum = sum.add(new BigDecimal(entry.get(field).asText()));
    }
    return sum;
  }

  @Test
  void orders_sum_to_the_cash_and_the_bill_to_the_cost() throws IOException {
    MakePlan makePlan = new MakePlan(Engine::solve);
    MakePlan.Ready ready = ready(makePlan, List.of());
    Answer answer = makePlan.plan(ready, LIMITS, Watch.NONE);
    JsonNode plan = new ObjectMapper().readTree(PlanJson.text(ready.inputs(), answer));

    assertThat(plan.get("orders")).isNotEmpty();
    assertThat(sum(plan.get("orders"), "total")).isEqualByComparingTo(plan.get("cash").asText());
    assertThat(sum(plan.get("bill"), "amount")).isEqualByComparingTo(plan.get("cost").asText());
    for (JsonNode order : plan.get("orders")) {
      assertThat(new BigDecimal(order.get("total").asText()))
          .isEqualByComparingTo(
              new BigDecimal(order.get("goods").asText())
                  .subtract(new BigDecimal(order.get("discount").asText()))
                  .add(new BigDecimal(order.get("shipping").asText()))
                  .add(new BigDecimal(order.get("tax").asText())));
    }
  }
}
