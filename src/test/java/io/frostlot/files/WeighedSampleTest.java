package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bag that the keeper has weighed stands above what the seller says. */
class WeighedSampleTest {
  @TempDir Path folder;

  private Reading.Accepted weighed(String column, String cells) throws IOException {
    Samples.goodCopy(folder);
    Files.writeString(
        folder.resolve("supplier-profiles/hillside/prices.csv"),
        """
        item,kind,size_word,least_g,most_g,pack_count,price,sample_pieces,sample_g
        Adult mouse,mouse,adult,17,26,25,20.50,,
        Adult mouse,mouse,adult,17,26,50,39.00,,
        Hopper,mouse,hopper,,,25,14.25,%s
        Small rat,rat,small,50,85,10,12.49,%s
        Pinky by weight,mouse,pinky,1,3,500,60,,
        """
            .formatted(
                column.equals("Hopper") ? cells : ",", column.equals("Small rat") ? cells : ","));
    return Samples.accepted(ScenarioFolder.read(folder));
  }

  private static Item.Spread grams(Reading.Accepted read, String item) {
    return read.scenario().suppliers().stream()
        .flatMap(supplier -> supplier.sheet().packs().stream())
        .map(pack -> pack.item())
        .filter(it -> it.name().equals(item))
        .findFirst()
        .orElseThrow()
        .grams();
  }

  /** The word hopper means 7 to 13 g, common practice; 82 g over 10 pieces are 8.2 of 10 g. */
  @Test
  void scales_the_band_of_a_size_word() throws IOException {
    Reading.Accepted read = weighed("Hopper", "10,82");

    assertThat(grams(read, "Hopper"))
        .isEqualTo(new Item.Spread(Grams.of(5.74), Grams.of(8.2), Grams.of(10.66), false));
    assertThat(read.warnings())
        .contains(
            "hillside/prices.csv: Hopper runs 18 % small: 8.2 g a piece by your sample of 10, 10 g"
                + " by what the seller says. Pieces of 5.74 g to 10.66 g are reckoned with; type"
                + " least_g and most_g if you know better.");
  }

  /** What was weighed is not to be weighed again; what has a size word only is. */
  @Test
  void what_was_weighed_is_no_guess() throws IOException {
    assertThat(grams(weighed("Hopper", ","), "Hopper").guessed()).isTrue();
    assertThat(grams(weighed("Hopper", "10,103"), "Hopper").guessed()).isFalse();
  }

  /** 50 to 85 g have the middle 67.5 g; 432 g over 10 pieces are 43.2 g, a factor of 0.64. */
  @Test
  void scales_what_is_stated_where_the_sample_does_not_fit_in() throws IOException {
    assertThat(grams(weighed("Small rat", "10,432"), "Small rat"))
        .isEqualTo(new Item.Spread(Grams.of(32), Grams.of(43.2), Grams.of(54.4), false));
  }

  @Test
  void keeps_the_lightest_and_heaviest_that_are_stated_where_it_fits_in() throws IOException {
    assertThat(grams(weighed("Small rat", "10,720"), "Small rat"))
        .isEqualTo(new Item.Spread(Grams.of(50), Grams.of(72), Grams.of(85), false));
  }

  @Test
  void says_nothing_of_a_small_difference() throws IOException {
    assertThat(weighed("Hopper", "10,103").warnings()).noneMatch(it -> it.contains("runs"));
  }
}
