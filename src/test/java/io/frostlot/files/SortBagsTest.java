package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Scenario;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From scenario.json and stock.csv to halves of bags. */
class SortBagsTest {
  @TempDir Path folder;

  private Scenario with(String sortBags, String stock) throws IOException {
    Samples.goodCopy(folder);
    Path json = folder.resolve("scenario.json");
    String field = "\"sortBags\": " + sortBags + ", \"oldPricesAfterDays\"";
    Files.writeString(json, Files.readString(json).replace("\"oldPricesAfterDays\"", field));
    Path file = folder.resolve("stock.csv");
    Files.writeString(file, Files.readString(file).replace("Adult mouse", stock));
    return Samples.accepted(ScenarioFolder.read(folder)).scenario();
  }

  private static Stream<Pack> mice(Scenario scenario) {
    return scenario.suppliers().stream()
        .flatMap(supplier -> supplier.sheet().packs().stream())
        .filter(pack -> pack.id().equals("Adult mouse x25"));
  }

  /** Adult mice of 17 to 26 g weigh 21 g: half of the smaller of 4 and 5 g is 2 g. */
  @Test
  void bags_are_sorted_where_the_keeper_says_so() throws IOException {
    assertThat(mice(with("true", "Adult mouse")))
        .singleElement()
        .satisfies(
            pack -> {
              assertThat(pack.piecesOf(pack.item())).isZero();
              assertThat(pack.items().map(Item::grams))
                  .containsExactly(
                      new Item.Spread(Grams.of(17), Grams.of(19), Grams.of(21), false),
                      new Item.Spread(Grams.of(21), Grams.of(23), Grams.of(26), false));
            });
    assertThat(mice(with("false", "Adult mouse")))
        .singleElement()
        .satisfies(pack -> assertThat(pack.piecesOf(pack.item())).isEqualTo(25));
  }

  @Test
  void what_is_in_hand_may_be_a_half() throws IOException {
    Scenario scenario = with("true", "\"Adult mouse, lighter half\"");
    assertThat(scenario.larder().stock().get(0).item())
        .isEqualTo(mice(scenario).findFirst().orElseThrow().parts().get(0).item());
  }
}
