package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Five pieces are eaten on day 3 and five on day 7; packs of five at 8.00 come on days 2 and 6, and
 * last five days, so that the second meal needs the second delivery.
 */
class MarginTest {
  @TempDir Path folder;

  @Test
  void no_margin_two_packs() throws IOException {
    assertThat(optimum(0, 100)).isEqualTo(new Standing(0, 0, 0, Money.of(16)));
  }

  /** A fifth of five is one: it takes a second pack on day 2. */
  @Test
  void a_margin_takes_one_pack_more() throws IOException {
    assertThat(optimum(20, 100)).isEqualTo(new Standing(0, 0, 0, Money.of(24)));
  }

  /** Two hundredths of five are rounded up to one piece. */
  @Test
  void a_margin_is_rounded_up() throws IOException {
    assertThat(optimum(2, 100)).isEqualTo(new Standing(0, 0, 0, Money.of(24)));
  }

  /** With room for five pieces the margin of one gives way, and both meals are met. */
  @Test
  void a_margin_gives_way_before_a_meal() throws IOException {
    assertThat(optimum(20, 5)).isEqualTo(new Standing(0, 0, 1, Money.of(16)));
  }

  private Standing optimum(int marginPercent, int litres) throws IOException {
    put(
        "needs.csv",
        """
        kind,least_g,most_g,pieces,date
        mouse,20,30,5,2031-01-03
        mouse,20,30,5,2031-01-07
        """);
    put("freezers.csv", "name,usable_litres,kind,life_days\nOne," + litres + ",deep,5\n");
    put(
        "scenario.json",
        """
        {"name": "Margin", "from": "2031-01-01", "planningDays": 8, "place": "XF",
         "currency": "EUR", "suppliers": ["source"],
         "policy": {"endValue": "none", "safety": {"marginPercent": %d}}}
        """
            .formatted(marginPercent));
    put(
        "supplier-profiles/source/profile.json",
        """
        {"name": "Source", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "show", "dates": ["2031-01-02", "2031-01-06"]}}
        """);
    put(
        "supplier-profiles/source/prices.csv",
        """
        item,kind,size_word,least_g,mean_g,most_g,pack_count,price,litres_per_piece
        Mouse,mouse,adult,25,25,25,5,8,1
        """);
    Reading reading = ScenarioFolder.read(folder);
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    Answer answer =
        Engine.solve(
            World.of(((Reading.Accepted) reading).scenario()), Limits.ofSeconds(60), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan().standing();
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
