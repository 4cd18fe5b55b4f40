package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import io.frostlot.app.EnginePlanner;
import io.frostlot.app.OneMouseShop;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code compare}, with the engine itself, on one mouse a week. */
class CompareCommandTest {
  private static final String TRIP = ", \"orderCharges\": [{\"amount\": \"5.00\"}]";
  @TempDir Path folder;

  @BeforeEach
  void write() {
    shop("near", 4);
    shop("small", 1);
  }

  private void shop(String name, int litres) {
    shop(name, litres, "");
  }

  private void shop(String name, int litres, String policy) {
    new OneMouseShop(
            OneMouseShop.SINGLES,
            new OneMouseShop.Extras(TRIP, policy),
            new OneMouseShop.Keeping(182, litres))
        .write(folder.resolve(name));
  }

  private CommandRun run(String... arguments) {
    List<String> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("--seconds", "600"));
    return CommandRun.of(new EnginePlanner(), false, all.toArray(String[]::new));
  }

  private Path planned(String name) throws IOException {
    CommandRun plan = run("plan", folder.resolve(name).toString(), "--format", "json");
    return Files.writeString(folder.resolve(name + ".json"), plan.out());
  }

  private static JsonSchema schema() {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(
            CompareCommandTest.class.getResourceAsStream(
                "/io/frostlot/schema/compare.schema.json"));
  }

  /** Four mice in one trip; by habit what January needs is fetched in its one trip too. */
  @Test
  void a_plan_is_put_beside_the_habit_of_one_order_a_month() {
    CommandRun run = run("compare", folder.resolve("near").toString(), "--habit");

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.out()).contains("Before: one order a month", "After: the plan for");
    assertThat(run("compare", "a", "b", "--habit").err()).contains("--habit goes with one");
  }

  @Test
  void three_plans_are_too_many() {
    CommandRun run = run("compare", "a", "b", "c");
    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err()).contains("found 3 plans, expected two, or one scenario folder");
  }

  /** Room for four: one trip; for one: four trips, 15.00 more. */
  @Test
  void the_lines_of_two_plans_sum_to_the_difference() throws IOException {
    String before = planned("near").toString();
    String after = folder.resolve("small").toString();
    JsonNode json =
        new ObjectMapper().readTree(run("compare", before, after, "--format", "json").out());

    assertThat(schema().validate(json)).isEmpty();
    BigDecimal sum = BigDecimal.ZERO;
    for (JsonNode line : json.get("lines")) {
      sum = sum.add(new BigDecimal(line.get("difference").asText()));
    }
    BigDecimal costs =
        new BigDecimal(json.at("/changes/after/cost").asText())
            .subtract(new BigDecimal(json.at("/changes/before/cost").asText()));
    assertThat(sum).isEqualByComparingTo(costs).isEqualByComparingTo("15");
    assertThat(run("compare", before, after).out())
        .contains("ORDERS THAT DIFFER; THE SAME MEALS", "shipping", "15.00");
    assertThat(run("compare", before, after, "--format", "csv").out()).endsWith(",all,,,15\r\n");
  }

  /**
   * Four trips of 6.00 in January pass a budget of 12.00 by 100 percent; one trip, 9.00 with its
   * mice, keeps it. What that saves is not told.
   */
  @Test
  void where_soft_rules_differ_it_is_said_first_and_no_saving_is_drawn() throws IOException {
    String budget = ", \"budget\": {\"perMonth\": \"12.00\"}";
    shop("kept", 4, budget);
    shop("passed", 1, budget);
    String before = planned("passed").toString();
    String after = planned("kept").toString();

    String letter = run("compare", before, after).out().replaceAll("\\s+", " ");
    assertThat(letter)
        .contains(
            "SOFT RULES AND ORDERS THAT DIFFER - Every meal met on its best day; before: every meal"
                + " met on its best day, budget short by 100 percent. - Changed:",
            "Soft rules: not the same in both, so neither is cheaper; the difference in money is no"
                + " saving.")
        .doesNotContain("THE SAME MEALS");
    assertThat(run("compare", folder.resolve("passed").toString(), after).out())
        .contains("SOFT RULES AND ORDERS THAT DIFFER");
    JsonNode json =
        new ObjectMapper().readTree(run("compare", before, after, "--format", "json").out());
    assertThat(schema().validate(json)).isEmpty();
    assertThat(json.at("/standings/before/shortfall").asInt()).isEqualTo(100);
    assertThat(json.at("/standings/sameMeals").asBoolean()).isFalse();
  }

  /** A mouse takes a litre: a bag of fifty does not go into three, and every meal must be met. */
  @Test
  void where_one_of_two_folders_has_no_plan_its_clash_is_named() throws IOException {
    new OneMouseShop(
            "Mouse,mouse,adult,50,50,50,50,50.00\n",
            new OneMouseShop.Extras(TRIP, ", \"meals\": \"all\""),
            new OneMouseShop.Keeping(182, 3))
        .write(folder.resolve("none"));
    String near = folder.resolve("near").toString();
    String none = folder.resolve("none").toString();

    for (List<String> sides : List.of(List.of(near, none), List.of(none, near))) {
      CommandRun run = run("compare", sides.get(0), sides.get(1));
      assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.IMPOSSIBLE);
      assertThat(run.out())
          .contains("No plan can keep all of these at once", "Chest holds 3 l")
          .doesNotContain("--seconds");
      assertThat(run.err()).contains("Nothing is compared: no plan was found for " + none + ".");
    }
    CommandRun habit = run("compare", none, "--habit", "--format", "json");
    assertThat(habit.exitCode()).isEqualTo(ExitCode.IMPOSSIBLE);
    assertThat(new ObjectMapper().readTree(habit.out()).get("status").asText())
        .isEqualTo("impossible");
  }

  @Test
  void a_plan_does_not_differ_from_itself() throws IOException {
    String plan = planned("near").toString();
    assertThat(run("compare", plan, plan).out())
        .contains("Nothing differs: same meals, same orders, same money.");
  }

  @Test
  void a_plan_whose_bill_was_changed_is_refused() throws IOException {
    Path plan = planned("near");
    String text = Files.readString(plan);
    String cost = new ObjectMapper().readTree(text).get("cost").asText();
    Files.writeString(plan, text.replace("\"cost\": \"" + cost + "\"", "\"cost\": \"1.00\""));
    CommandRun run = run("compare", plan.toString(), plan.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("found \"1.00\"", "the sum of its bill");
  }

  /** A mouse of 50 g for 1.00 is 2.00 for 100 g, and at 1.7 kcal/g 1.176 for 100 kcal. */
  @Test
  void price_sheets_stand_side_by_side_by_what_is_delivered() throws IOException {
    CommandRun run = run("compare", folder.resolve("near").toString(), "--format", "json");
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(schema().validate(json)).isEmpty();
    JsonNode price = json.get("prices").get(0);
    assertThat(price.get("per100g").asText()).isEqualTo("2.0000");
    assertThat(price.get("perMeal").asText()).isEqualTo("1.0000");
    assertThat(price.get("per100kcal").asText()).isEqualTo("1.1765");
    assertThat(run("compare", folder.resolve("near").toString()).out())
        .contains("WITH ALL OF THEM", "PRICE SHEETS BY WHAT IS DELIVERED");
  }
}
