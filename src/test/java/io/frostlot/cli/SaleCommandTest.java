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

  @Test
  void csv_is_the_curve() {
    CommandRun run =
        sale("--supplier", "shop", "--price", "0.5", "--to", "2031-01-01", "--format", "csv");
    assertThat(run.out())
        .startsWith("deal,packs,at_least,saves,saves_at_least,saves_at_most\r\n")
        .containsPattern("the sale asked for,26,no,13,1[0-9.]+,13[0-9.]+\r\n");
  }

  @Test
  void what_is_typed_wrong_is_said_where() {
    assertThat(sale("--supplier", "shop", "--percent", "400").err())
        .contains("the command line", "percentOff", "400");
    assertThat(sale("--supplier", "shop").err()).contains("exactly one of percentOff, price");
    assertThat(sale("--percent", "40").err()).contains("needs --supplier");
    assertThat(sale().err()).contains("What sale?");
    assertThat(sale("--supplier", "shop", "--percent", "4", "--to", "2030-01-01").exitCode())
        .isEqualTo(2);
    assertThat(sale("--supplier", "shop", "--percent", "4", "--chance", "101").err())
        .contains("--chance: found 101, expected 0 to 100");
  }
}
