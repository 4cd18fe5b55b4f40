package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Changes;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.io.IOException;
import java.math.BigDecimal;
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

  static JsonNode tree(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError(text, e);
    }
  }

  static List<String> breaches(JsonNode plan) {
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

  /** The money is counted in OutcomeTest. */
  @Test
  void freezers_say_what_is_at_risk_on_their_worst_day() {
    JsonNode chest = tree(PlanJson.text(inputs, found)).get("freezers").get(0);
    assertThat(chest.get("name").asText()).isEqualTo("Chest");
    assertThat(chest.get("atRisk").toString())
        .isEqualTo("{\"day\":\"2031-02-10\",\"pieces\":78,\"money\":\"53.97\"}");
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
    String text = PlanJson.text(inputs, found, List.of(Changes.between(before, after)), List.of());
    JsonNode changes = tree(text).get("changes");

    assertThat(breaches(tree(text))).isEmpty();
    assertThat(changes.get("orders").findValuesAsText("change"))
        .containsExactly("changed", "dropped", "added");
    assertThat(changes.at("/nowMet/0/animal").asText()).isEqualTo("Amber");
    assertThat(changes.at("/before/cost").asText()).isEqualTo("90.00");
    assertThat(PlanFileTest.value(PlanFileTest.read(folder, text)).outline()).isEqualTo(after);
  }

  @Test
  void what_gave_way_follows_the_schema() {
    Books books = HandmadePlan.books(world);
    Period week = new Period(LocalDate.parse("2031-01-06"), LocalDate.parse("2031-01-12"));
    books.shortfall(
        new Shortfall(
            "adequacy",
            Shortfall.Unit.PERCENT,
            3,
            List.of(new Shortfall.Part("Amber", week, new BigDecimal("2.3456")))));
    books.shortfall(Shortfall.counted("safety-margin", Shortfall.Unit.PIECES, List.of()));
    JsonNode plan =
        tree(
            PlanJson.text(
                inputs,
                new Answer.Proven(new Answer.Judged(HandmadePlan.plan(world), books), 103.215)));

    assertThat(breaches(plan)).isEmpty();
    assertThat(plan.get("gaveWay")).hasSize(1);
    JsonNode adequacy = plan.get("gaveWay").get(0);
    assertThat(adequacy.get("amount").asInt()).isEqualTo(3);
    assertThat(adequacy.get("unit").asText()).isEqualTo("percent");
    assertThat(adequacy.at("/parts/0").toString())
        .isEqualTo(
            "{\"of\":\"Amber\",\"from\":\"2031-01-06\",\"to\":\"2031-01-12\",\"amount\":2.346}");
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
  void the_same_answer_is_written_in_the_same_bytes() {
    assertThat(PlanJson.text(HandmadeRoom.inputs(HandmadeRoom.world()), found))
        .isEqualTo(PlanJson.text(inputs, found))
        .endsWith("}\n")
        .doesNotContain("\r");
  }
}
