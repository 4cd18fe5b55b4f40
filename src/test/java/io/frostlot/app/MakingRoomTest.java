package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Discard;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Old pieces that could still be eaten make room for a delivery. */
class MakingRoomTest {
  @TempDir Path folder;

  /**
   * Ten pieces fill the freezer. Five are needed on day 4 and five on day 8; the old ten go bad
   * after day 5, and the only delivery is on day 3: all ten old ones must go then, and both meals
   * come out of one new pack of ten at 8.00.
   */
  @Test
  void all_that_is_old_goes_where_the_delivery_needs_the_whole_freezer() throws IOException {
    put(
        "needs.csv",
        """
        kind,least_g,most_g,pieces,date
        mouse,20,30,5,2031-01-04
        mouse,20,30,5,2031-01-08
        """);
    put("freezers.csv", "name,usable_litres,kind\nSmall,10,deep\n");
    put(
        "stock.csv",
        """
        lot,supplier,item,pieces,freezer,arrived,use_by
        old,source,Mouse,10,Small,2030-12-01,2031-01-05
        """);
    put(
        "scenario.json",
        """
        {"name": "Room", "from": "2031-01-01", "planningDays": 8, "place": "XF",
         "currency": "EUR", "suppliers": ["source"], "policy": {"endValue": "none"}}
        """);
    put(
        "supplier-profiles/source/profile.json",
        """
        {"name": "Source", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "show", "dates": ["2031-01-03"]}}
        """);
    put(
        "supplier-profiles/source/prices.csv",
        """
        item,kind,size_word,least_g,mean_g,most_g,pack_count,price,litres_per_piece
        Mouse,mouse,adult,25,25,25,10,8,1
        """);
    Reading reading = ScenarioFolder.read(folder);
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    Answer answer =
        Engine.solve(
            World.of(((Reading.Accepted) reading).scenario()), Limits.ofSeconds(60), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    Answer.Judged judged = ((Answer.Proven) answer).plan();
    assertThat(judged.standing().unmetMust()).isZero();
    assertThat(judged.standing().money()).isEqualTo(Money.of(8));
    assertThat(judged.plan().discards())
        .extracting(Discard::day, Discard::pieces)
        .containsExactly(tuple(LocalDate.of(2031, 1, 3), 10));
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
