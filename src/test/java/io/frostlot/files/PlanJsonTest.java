package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Changes;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written of a plan, judged by another implementation of JSON Schema, and read back. */
class PlanJsonTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private final World world = HandmadeRoom.world();
  private final Inputs inputs = HandmadeRoom.inputs(world);
  private final Answer found =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95.123456));

  @TempDir Path folder;

  private static JsonNode tree(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError(text, e);
    }
  }

  private static List<String> breaches(JsonNode plan) {
    JsonNode schema;
    try {
      schema =
          MAPPER.readTree(
              PlanJsonTest.class.getResourceAsStream("/io/frostlot/schema/plan.schema.json"));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(schema)
        .validate(plan)
        .stream()
        .map(Object::toString)
        .toList();
  }

  private PlanFile.Reading<PlanFile> read(String text) {
    Path file = folder.resolve("plan.json");
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return PlanFile.read(file);
  }

  private static <T> T value(PlanFile.Reading<T> reading) {
    if (reading instanceof PlanFile.Refused<T> refused) {
      throw new AssertionError(refused.problems().toString());
    }
    return ((PlanFile.Read<T>) reading).value();
  }

  private static List<String> messages(PlanFile.Reading<?> reading) {
    return reading instanceof PlanFile.Refused<?> refused
        ? refused.problems().stream().map(Problem::toString).toList()
        : List.of();
  }

  @Test
  void every_status_follows_the_schema() {
    List<Answer> answers =
        List.of(
            new Answer.Proven(HandmadePlan.judged(world), 103.2),
            found,
            new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.empty()),
            new Answer.Impossible(List.of("Chest holds 3 l."), true),
            new Answer.NothingFound());
    List<String> statuses = new ArrayList<>();
    for (Answer answer : answers) {
      JsonNode plan = tree(PlanJson.text(inputs, answer));
      assertThat(breaches(plan)).isEmpty();
      statuses.add(plan.get("status").asText());
    }
    assertThat(statuses)
        .containsExactly("proven", "best-found", "best-found", "impossible", "none");
  }

  @Test
  void changes_follow_the_schema_and_are_read_over() {
    Outline before =
        new Outline(
            "0".repeat(64),
            new Outline.Totals(Money.of(90), Money.of(88)),
            List.of(order("hillside", "2031-01-12", 60), order("valley", "2031-01-12", 5)),
            List.of(new Outline.Unmet("Amber", LocalDate.parse("2031-01-17"))));
    Outcome outcome = Outcome.of(world, HandmadePlan.plan(world));
    Outline after = Outline.of(HandmadeRoom.DIGEST, HandmadePlan.judged(world), outcome);
    String text = PlanJson.text(inputs, found, List.of(Changes.between(before, after)));
    JsonNode changes = tree(text).get("changes");

    assertThat(breaches(tree(text))).isEmpty();
    assertThat(changes.get("orders").findValuesAsText("change"))
        .containsExactly("changed", "dropped", "added");
    assertThat(changes.at("/nowMet/0/animal").asText()).isEqualTo("Amber");
    assertThat(changes.at("/before/cost").asText()).isEqualTo("90.00");
    assertThat(value(read(text)).outline()).isEqualTo(after);
  }

  private static Outline.Ordered order(String supplier, String day, long total) {
    LocalDate orderBy = LocalDate.parse(day);
    return new Outline.Ordered(
        supplier, orderBy, orderBy.plusDays(3), new TreeMap<>(), Money.of(total));
  }

  @Test
  void money_is_text_and_the_bill_sums_to_the_cost() {
    JsonNode plan = tree(PlanJson.text(inputs, found));
    BigDecimal sum = BigDecimal.ZERO;
    for (JsonNode charge : plan.get("bill")) {
      sum = sum.add(new BigDecimal(charge.get("amount").asText()));
    }
    // 95.40 + 4.40 in cash, 2.345 + 0.25 reckoned, 0.82 in the tail
    assertThat(plan.get("cost").asText()).isEqualTo("103.215");
    assertThat(sum).isEqualByComparingTo("103.215");
    assertThat(plan.get("cash").asText()).isEqualTo("99.80");
    JsonNode order = plan.get("orders").get(0);
    // 46.16 - 0 + 43 + 6.24
    assertThat(order.get("total").asText()).isEqualTo("95.40");
    assertThat(order.get("goods").asText()).isEqualTo("46.16");
    assertThat(order.get("shipping").asText()).isEqualTo("43.00");
  }

  @Test
  void a_bound_is_rounded_down_and_left_out_where_there_is_none() {
    assertThat(tree(PlanJson.text(inputs, found)).get("bound").asText()).isEqualTo("95.1234");
    Answer boundless = new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.empty());
    assertThat(tree(PlanJson.text(inputs, boundless)).get("bound").isNull()).isTrue();
    Answer proven = new Answer.Proven(HandmadePlan.judged(world), 103.2150001);
    assertThat(tree(PlanJson.text(inputs, proven)).get("bound").asText()).isEqualTo("103.215");
  }

  @Test
  void boxes_say_what_is_in_them_and_how_full_they_are() {
    JsonNode boxes = tree(PlanJson.text(inputs, found)).get("orders").get(0).get("boxes");
    assertThat(boxes).hasSize(2);
    // 25 x 21 g + 25 x 10 g = 0.775 kg of 1 kg
    assertThat(boxes.get(0).get("used").decimalValue()).isEqualByComparingTo("0.775");
    assertThat(boxes.get(0).get("unit").asText()).isEqualTo("kilograms");
    assertThat(boxes.get(1).get("contents").get(0).get("item").asText()).isEqualTo("Hopper");
  }

  @Test
  void a_plan_read_back_is_the_same_plan() {
    PlanFile file = value(read(PlanJson.text(inputs, found)));
    Plan plan = HandmadePlan.plan(world);

    assertThat(value(file.plan(world))).isEqualTo(plan);
    assertThat(file.digest()).isEqualTo(HandmadeRoom.DIGEST);
    assertThat(file.outline())
        .isEqualTo(
            Outline.of(HandmadeRoom.DIGEST, HandmadePlan.judged(world), Outcome.of(world, plan)));
  }

  @Test
  void the_same_answer_is_written_in_the_same_bytes() {
    assertThat(PlanJson.text(HandmadeRoom.inputs(HandmadeRoom.world()), found))
        .isEqualTo(PlanJson.text(inputs, found))
        .endsWith("}\n")
        .doesNotContain("\r");
  }

  @Test
  void an_answer_without_a_plan_cannot_be_compared_with() {
    assertThat(messages(read(PlanJson.text(inputs, new Answer.NothingFound()))))
        .singleElement()
        .asString()
        .startsWith("plan.json line 7, column ")
        .endsWith("(status): found \"none\", expected an answer with a plan.");
  }

  @Test
  void names_that_the_world_does_not_have_are_refused_together() {
    String text =
        PlanJson.text(inputs, found)
            .replace("\"supplier\": \"corner\"", "\"supplier\": \"comer\"")
            .replace("\"freezer\": \"Kitchen\"", "\"freezer\": \"Kitchn\"")
            .replace("\"meal\": \"Bark 2031-01-16\"", "\"meal\": \"Bark 2031-01-15\"");
    assertThat(messages(value(read(text)).plan(world)))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains(
                        "found \"comer\", expected a supplier of the scenario. Maybe corner was"
                            + " meant."))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains(
                        "found \"Kitchn\", expected a freezer of the scenario. Maybe Kitchen was"
                            + " meant."))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains("found \"Bark 2031-01-15\", expected a meal of the scenario."));
  }

  @Test
  void what_is_no_plan_is_refused_with_its_place() {
    String text =
        PlanJson.text(inputs, found)
            .replace("\"total\": \"95.40\"", "\"total\": 95.40")
            .replace(
                "\"orderBy\": \"2031-02-10\",\n      \"ships\"",
                "\"orderBy\": \"2031-02-30\",\n      \"ships\"")
            .replace("\"status\"", "\"stat\"");
    assertThat(messages(read(text)))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains("(orders[0].total): found 95.40, expected a decimal in quotes"))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains("(orders[1].orderBy): found \"2031-02-30\", expected a date"))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains(
                        "found a field \"stat\", expected only known fields. Maybe status was"
                            + " meant."))
        .anySatisfy(it -> assertThat(it).contains("no field \"status\""));
    assertThat(messages(read("{}"))).isNotEmpty();
    assertThat(messages(read("[1]"))).isNotEmpty();
    assertThat(messages(PlanFile.read(folder.resolve("nowhere.json"))))
        .containsExactly(
            "nowhere.json: found no such file, expected a file. Maybe its name is misspelt.");
  }

  @Test
  void a_plan_cut_short_anywhere_is_refused() {
    String text = PlanJson.text(inputs, found);
    for (int end = 0; end < text.length() - 2; end += 97) {
      assertThat(messages(read(text.substring(0, end)))).as("cut at " + end).isNotEmpty();
    }
  }
}
