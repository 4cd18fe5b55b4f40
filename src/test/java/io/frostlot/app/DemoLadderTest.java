package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
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

/** The price ladder of each invented supplier that comes with the project, worked by hand. */
class DemoLadderTest {
  @TempDir Path folder;

  /**
   * 100 adult mice: 4 packs, all at the step price, 4 x 18.90 = 75.60. 40 small rats: 4 packs, two
   * at 22.00 and from the third on 19.50, 83.00. Goods 158.60, below free shipping at 260.00. 100 x
   * 24 g + 40 x 70 g = 5.2 kg in boxes of 5 kg: two, 24.00 + 17.00 to a place near by.
   */
  @Test
  void frostmere_breaks_and_two_boxes() throws IOException {
    write("frostmere", "2031-01-12", "2031-01-15", "mouse,20,28,100,", "rat,55,85,40,");
    assertThat(optimum()).isEqualTo(Money.of("199.60"));
  }

  /**
   * 200 small rats: 20 packs, 2 x 22.00 + 18 x 19.50 = 395.00; 14 kg, three boxes, whose 24.00 +
   * 17.00 + 17.00 are waived from 260.00 on.
   */
  @Test
  void frostmere_ships_a_large_order_for_nothing() throws IOException {
    write("frostmere", "2031-01-12", "2031-01-15", "rat,55,85,200,");
    assertThat(optimum()).isEqualTo(Money.of("395"));
  }

  /**
   * 50 adult mice in the sale, 41.00 less 15 % = 34.85, and 100 medium rats, 10 x 31.00. Pack sizes
   * at 0.45 kg per litre: mice 1.45 kg, 3.222 l; rats 1.55 kg, 3.444 l. All of it would fill 37.7
   * of the 40 litres of two boxes, but six packs in one box would be at least 3.222 + 5 x 3.444 =
   * 20.4 of 20 litres: three boxes, 33.00 + 2 x 25.00, packing 3 x 3.50. Tax 7 % of 344.85 + 83.00
   * + 10.50 = 438.35 is 30.6845, so 30.68.
   */
  @Test
  void umberfell_sale_whole_packs_and_tax() throws IOException {
    write("umberfell", "2031-02-17", "2031-02-26", "mouse,25,34,50,", "rat,130,180,100,");
    assertThat(optimum()).isEqualTo(Money.of("469.03"));
  }

  /**
   * Before the sale, 50 weaned rats: 3 packs x 29.00 = 87.00; one box 33.00 + 3.50; tax 7 % of
   * 123.50 is 8.645, half a cent goes up: 8.65.
   */
  @Test
  void umberfell_tax_is_rounded_half_up() throws IOException {
    write("umberfell", "2031-01-08", "2031-01-15", "rat,38,55,50,");
    assertThat(optimum()).isEqualTo(Money.of("132.15"));
  }

  /**
   * 300 adult mice, 6 x 29.00 = 174.00, and 60 small rats, 6 x 14.50 = 87.00: 261.00 reaches the
   * second tier, less 7 % = 18.27. 5.85 kg + 3.48 kg in one box of 12 kg, 46.00 to a place far off.
   */
  @Test
  void saltgrave_discount_by_value() throws IOException {
    write("saltgrave", "2031-01-09", "2031-01-16", "mouse,16,23,300,", "rat,48,68,60,");
    assertThat(optimum()).isEqualTo(Money.of("288.73"));
  }

  /**
   * 75 adult mice, 3 x 19.50, and 10 large rats, 2 x 23.00, with 14.00 for the way and the ticket.
   */
  @Test
  void thaw_fair_and_the_way_there() throws IOException {
    write("thaw-fair", "2031-03-22", "2031-03-23", "mouse,20,30,75,", "rat,200,260,10,");
    assertThat(optimum()).isEqualTo(Money.of("118.50"));
  }

  /** 25 adult mice at 2.20 are 55.00; the shop has 20 at a time, so two trips at 3.00. */
  @Test
  void lantern_corner_and_two_trips() throws IOException {
    write("lantern-corner", "2031-01-08", "2031-01-15", "mouse,20,28,25,");
    assertThat(optimum()).isEqualTo(Money.of("61"));
  }

  private Money optimum() {
    Reading reading = ScenarioFolder.read(folder, Path.of("supplier-profiles"));
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    World world = World.of(((Reading.Accepted) reading).scenario());
    Answer answer = Engine.solve(world, Limits.ofSeconds(60), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    Answer.Proven proven = (Answer.Proven) answer;
    assertThat(proven.plan().standing().unmetMust()).isZero();
    return proven.plan().standing().money();
  }

  /** Needs on the last day; each is kind, least and most grams, pieces. */
  private void write(String supplier, String from, String to, String... needs) throws IOException {
    put(
        "needs.csv",
        "kind,least_g,most_g,pieces,date\n" + String.join(to + "\n", needs) + to + "\n");
    put("freezers.csv", "name,usable_litres,kind\nBig,100000,deep\n");
    put(
        "scenario.json",
        """
        {"name": "Ladder", "from": "%s", "to": "%s", "place": "XF-01", "postalCode": "4103",
         "currency": "EUR", "suppliers": ["%s"], "policy": {"endValue": "none",
          "charges": {"perOrder": 0, "perDeliveryDay": 0}}}
        """
            .formatted(from, to, supplier));
  }

  private void put(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }
}
