package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import io.frostlot.app.EnginePlanner;
import io.frostlot.app.OneMouseShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code sale}, with the engine itself, on one mouse a week. */
class SaleCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void write() {
    new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).write(folder);
  }

  private CommandRun sale(String... options) {
    List<String> all = new ArrayList<>(List.of("sale", folder.toString(), "--seconds", "600"));
    all.addAll(List.of(options));
    return CommandRun.of(new EnginePlanner(), false, all.toArray(String[]::new));
  }

  @Test
  void says_what_it_is_worth_and_where_it_turns() {
    CommandRun run =
        sale("--supplier", "shop", "--percent", "40", "--to", "2031-01-01", "--skipped", "0");
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith("Frostlot: is it worth it for One mouse?\n")
        .contains(
            "40 % off everything",
            "Yes: the same meals, and it saves 10.40 EUR.",
            "It pays up to 26 packs. Beyond that:",
            "too old: pieces of Mouse are left over on Wed 2 Jul 2031.");
  }

  @Test
  void json_follows_its_schema_and_is_alone() throws IOException {
    Path deals =
        Files.writeString(
            folder.resolve("deals.json"),
            """
            {"supplier": "shop",
             "sales": [{"id": "b", "when": "2031-01-08/2031-01-08", "take": 3, "pay": 2}],
             "orderDiscounts": [{"id": "spend", "tiers": [{"from": 5, "amountOff": 1}]}]}
            """);
    CommandRun run = sale("--deals", deals.toString(), "--chance", "50", "--format", "json");
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(
                    SaleCommandTest.class.getResourceAsStream(
                        "/io/frostlot/schema/sale.schema.json"))
                .validate(json))
        .isEmpty();
    assertThat(json.at("/worth/sameMeals").asBoolean()).isTrue();
    assertThat(json.at("/apart")).hasSize(2);
    assertThat(json.has("worseCase")).isTrue();
    assertThat(json.has("waiting")).isFalse();
  }

  /** Every option by its own name, as it was typed; none is left out in silence. */
  @Test
  void what_is_typed_wrong_is_said_by_its_option() {
    String percent = "--supplier shop --percent 4 ";
    Map.ofEntries(
            Map.entry("--supplier far --percent 4", "--supplier: found \"far\""),
            Map.entry(percent + "--item Mous", "--item: found \"Mous\", expected an item of"),
            Map.entry(percent + "--follows moon", "--follows: found \"moon\", expected one of"),
            Map.entry(percent + "--most-an-order 0", "--most-an-order: found 0"),
            Map.entry(percent + "--most-in-all few", "--most-in-all: found \"few\""),
            Map.entry(percent + "--price 3", "the sale typed: found --percent and --price"),
            Map.entry(percent + "--from today", "--from: found \"today\", expected a date"),
            Map.entry(percent + "--to 2031-02-30", "--to: found \"2031-02-30\", expected a date"),
            Map.entry(percent + "--to 2030-01-01", "expected no day before 2031-01-01"),
            Map.entry(percent + "--save 3", "--save goes with --spend"),
            Map.entry("--supplier shop --take 3 --pay 4", "--pay: found 4, expected less than"),
            Map.entry("--supplier shop --price -1", "--price: found \"-1\""),
            Map.entry("--supplier shop --spend 40", "--spend goes with --percent"),
            Map.entry("--supplier shop --spend x --save 3", "--spend: found \"x\""),
            Map.entry("--supplier shop --free-shipping --save 3", "--free-shipping goes with"))
        .forEach(
            (typed, said) -> {
              CommandRun run = sale(typed.split(" "));
              assertThat(run.exitCode()).as(typed).isEqualTo(ExitCode.INPUT_PROBLEMS);
              assertThat(run.err()).as(typed).contains(said).doesNotContain("[0]", "line 1");
            });
  }

  @Test
  void a_sale_outside_the_planning_days_is_refused() throws IOException {
    Path deals =
        Files.writeString(
            folder.resolve("deals.json"),
            """
            {"supplier": "shop", "freeShipping": [{"when": "2030-01-01/2030-12-31", "from": 5}]}
            """);
    String days = "expected a day or more of the planning days 2031-01-01/";
    String outside = "It lies outside the planning days";
    assertThat(sale("--deals", deals.toString()).err())
        .contains("deals.json line 1, column ", "(freeShipping[0].when)", days, outside);
    CommandRun run = sale("--supplier=shop", "--percent=4", "--from=2040-01-01", "--to=2040-02-01");
    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("--from and --to: found \"2040-01-01/2040-02-01\"", days, outside);
  }

  @Test
  void csv_is_the_curve() {
    CommandRun run =
        sale("--supplier", "shop", "--price", "0.5", "--to", "2031-01-01", "--format", "csv");
    assertThat(run.out())
        .startsWith("deal,packs,at_least,saves,saves_at_least,saves_at_most\r\n")
        .containsPattern("the sale asked for,26,no,13,1[0-9.]+,13[0-9.]+\r\n");
  }

  /** The shop sells one mouse that is too heavy for anybody, at any price. */
  @Test
  void where_no_plan_can_be_had_it_names_the_clash() {
    new OneMouseShop(
            "Mouse,mouse,adult,150,150,150,1,1.00\n",
            new OneMouseShop.Extras("", ", \"meals\": \"all\""),
            new OneMouseShop.Keeping(182, 3))
        .write(folder);
    CommandRun run = sale("--supplier", "shop", "--percent", "40");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).contains("No plan can keep all of these at once", "Ash");
  }

  @Test
  void what_is_typed_wrong_is_said_where() {
    assertThat(sale("--supplier", "shop", "--percent", "400").err())
        .contains("--percent: found 400, expected a number of at most 100.");
    assertThat(sale("--supplier", "shop").err())
        .contains("the sale typed: found no terms, expected exactly one of --percent, --price");
    assertThat(sale("--percent", "40").err()).contains("needs --supplier");
    assertThat(sale("--from", "2031-01-05").err()).contains("needs --supplier");
    assertThat(sale().err()).contains("What sale?");
    assertThat(sale("--supplier", "shop", "--percent", "4", "--to", "2030-01-01").exitCode())
        .isEqualTo(2);
    assertThat(sale("--supplier", "shop", "--percent", "4", "--chance", "101").err())
        .contains("--chance: found 101, expected 0 to 100");
  }
}
