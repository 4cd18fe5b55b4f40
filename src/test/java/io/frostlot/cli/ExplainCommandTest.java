package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import io.frostlot.app.EnginePlanner;
import io.frostlot.app.OneMouseShop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code explain}, with the engine itself: four meals on four Wednesdays, a mouse of one litre at
 * 1.00, a trip at 5.00; 26 meals of the days after at 1.00.
 */
class ExplainCommandTest {
  private static final String TRIP = ", \"orderCharges\": [{\"amount\": \"5.00\"}]";
  @TempDir Path folder;

  private CommandRun explain(OneMouseShop shop, String... options) {
    shop.write(folder);
    List<String> all = new ArrayList<>(List.of("explain", folder.toString(), "--seconds", "600"));
    all.addAll(List.of(options));
    return CommandRun.of(new EnginePlanner(), false, all.toArray(String[]::new));
  }

  private static OneMouseShop shop(String policy, int litres) {
    return new OneMouseShop(
        OneMouseShop.SINGLES,
        new OneMouseShop.Extras(TRIP, policy),
        new OneMouseShop.Keeping(182, litres));
  }

  /** Room for one: four trips. One litre more: two trips, 10.00 less; any room: one, 15.00 less. */
  @Test
  void says_what_is_tight_and_what_a_rule_or_one_unit_of_it_costs() {
    CommandRun run = explain(shop("", 1));
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains(
            "50.00 EUR",
            "WHAT IS TIGHT",
            "100 %",
            "With any room in the freezers: the same meals, and it saves 15.00 EUR.",
            "With one litre more in each freezer: the same meals, and it saves 10.00 EUR.",
            "With prey that keeps a week longer: the same meals for the same money.",
            "two of them away together");
  }

  /**
   * Four mice and a trip cost 9.00 in January, half as much again as the budget of 6.00; that
   * nothing falls short without it makes the meals no better.
   */
  @Test
  void what_the_rule_itself_falls_short_of_is_no_worse_meal() throws IOException {
    OneMouseShop poor = shop(", \"budget\": {\"perMonth\": \"6.00\"}", 4);
    assertThat(explain(poor).out().replaceAll("\\s+", " "))
        .contains(
            "- Without the budget; not kept in full: 50 percent short: the same meals for the same"
                + " money.");
    assertThat(explain(poor, "--wishes").out().replaceAll("\\s+", " "))
        .contains(
            "The budget (asked for; not kept in full: 50 percent short): the same meals for the same"
                + " money.");
    JsonNode rules =
        new ObjectMapper().readTree(explain(poor, "--format", "json").out()).at("/rules/3");
    assertThat(rules.at("/changed").asText()).isEqualTo("without the budget");
    assertThat(rules.at("/ownShortfall").asInt()).isEqualTo(50);
    assertThat(rules.at("/difference/sameMeals").asBoolean()).isTrue();
  }

  private static Set<ValidationMessage> breaches(JsonNode json) {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(
            ExplainCommandTest.class.getResourceAsStream("/io/frostlot/schema/explain.schema.json"))
        .validate(json);
  }

  /** Nobody else sells the mouse, and the first meal is on the first day. */
  @Test
  void json_follows_its_schema_and_says_why_here_and_why_now() throws IOException {
    JsonNode json = new ObjectMapper().readTree(explain(shop("", 4), "--format", "json").out());
    assertThat(breaches(json)).isEmpty();
    assertThat(json.at("/nextOrder/orderBy").asText()).isEqualTo("2031-01-01");
    assertThat(json.at("/nextOrder/onlyLater/after/unmetOther").asInt()).isEqualTo(1);
    assertThat(json.at("/suppliers/0/notFromThere/after/unmetOther").asInt()).isEqualTo(4);
  }

  @Test
  void where_nothing_fits_it_names_the_clash() {
    OneMouseShop none =
        new OneMouseShop(
            "Mouse,mouse,adult,150,150,150,1,1.00\n",
            new OneMouseShop.Extras("", ", \"meals\": \"all\""),
            new OneMouseShop.Keeping(182, 4));
    CommandRun run = explain(none);
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).contains("No plan can keep all of these at once", "Ash");
  }

  /**
   * One trip for all is 9.00; held to nine tenths of it an order takes at most three mice: two
   * trips, 5.00 more.
   */
  @Test
  void wishes_are_looked_at_with_and_without() throws IOException {
    assertThat(explain(shop("", 4), "--wishes").out().replaceAll("\\s+", " "))
        .contains(
            "At most 8.10 EUR an order, nine tenths of the dearest (not asked for): the same meals, and"
                + " going without it saves"
                + " 5.00 EUR. - with it: 2 orders, 14.00 EUR to pay, 40.00 EUR in all (proven"
                + " best). - without it: 1 order, 9.00 EUR to pay, 35.00 EUR in all (proven"
                + " best).",
            "Effort reckoned at 0.45 EUR an order, a twentieth of the dearest (not asked for): the same"
                + " meals, and leaving it out"
                + " saves 0.45 EUR. It stands on no invoice: 9.00 EUR to pay either way. -",
            "3 days of cover (not asked for; not kept in full: 3 piece-days short): the same meals"
                + " for the same money. -",
            "The largest piece of each animal (asked for): the same meals for the same money. It is"
                + " there for the animals' sake: no saving is a reason to drop it; ask a vet. - with"
                + " it and without it: 1 order,",
            "Ash 200 100 100-100 100 100-100");
    JsonNode json =
        new ObjectMapper().readTree(explain(shop("", 4), "--wishes", "--format", "json").out());
    assertThat(breaches(json)).isEmpty();
    assertThat(json.at("/wishes").findValuesAsText("wish"))
        .hasSize(13)
        .contains("a margin of 10 %", "adequacy, 97 % to 105 %");
    assertThat(json.at("/wishes/0/sake").asText()).isEqualTo("animal");
    assertThat(json.at("/wishes/1/ownShortfall").asInt()).isEqualTo(3);
    assertThat(json.at("/adequacy/with/0/plannedGrams").asInt()).isEqualTo(200);
    assertThat(explain(shop("", 4), "--wishes", "--format", "csv").out())
        .contains("\"at most 8.10 EUR an order, nine tenths of the dearest\",false,with,2,14,40,");
  }

  @Test
  void wishes_stand_under_a_heading_of_their_own() {
    String out = explain(shop("", 4), "--wishes").out();
    assertThat(out).containsOnlyOnce("WITH EACH WISH AND WITHOUT IT\n");
    assertThat(out.indexOf("WITH EACH WISH"))
        .isBetween(out.indexOf("WHAT IS TIGHT"), out.indexOf("(not asked for"));
  }

  @Test
  void csv_is_what_rules_cost() {
    assertThat(explain(shop("", 1), "--format", "csv").out())
        .startsWith("changed,saves,saves_at_least,saves_at_most\r\n")
        .contains("with any room in the freezers,15,");
  }
}
