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

/** Published optima, each written as an ordinary scenario folder. */
class PublishedOptimaTest {
  @TempDir Path folder;

  /**
   * H. M. Wagner, T. M. Whitin, "Dynamic Version of the Economic Lot Size Model", Management
   * Science 5(1), 1958, 89-96: optimum 864. With a shelf life of two periods 901, of one 1234
   * (derived by a dynamic program, not published).
   */
  @Test
  void wagner_and_whitin_1958() throws IOException {
    int[] demand = {69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56};
    int[] charge = {85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114};
    write(demand, charge, 365, "1");
    assertThat(optimum()).isEqualTo(Money.of(864));
    write(demand, charge, 2, "1");
    assertThat(optimum()).isEqualTo(Money.of(901));
    write(demand, charge, 1, "1");
    assertThat(optimum()).isEqualTo(Money.of(1234));
  }

  /**
   * E. A. Silver, D. F. Pyke, R. Peterson, "Inventory Management and Production Planning and
   * Scheduling", chapter on time-varying demand: optimum 501.20.
   */
  @Test
  void silver_pyke_and_peterson() throws IOException {
    int[] demand = {10, 62, 12, 130, 154, 129, 88, 52, 124, 160, 238, 41};
    int[] charge = {54, 54, 54, 54, 54, 54, 54, 54, 54, 54, 54, 54};
    write(demand, charge, 365, "0.4");
    assertThat(optimum()).isEqualTo(Money.of("501.2"));
  }

  private Money optimum() {
    Reading reading = ScenarioFolder.read(folder);
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    Answer answer =
        Engine.solve(
            World.of(((Reading.Accepted) reading).scenario()), Limits.ofSeconds(60), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan().standing().money();
  }

  private void write(int[] demand, int[] charge, int lifeDays, String holding) throws IOException {
    StringBuilder needs = new StringBuilder("kind,least_g,most_g,pieces,date\n");
    StringBuilder charges = new StringBuilder();
    for (int t = 0; t < demand.length; t++) {
      String day = java.time.LocalDate.of(2031, 1, 1).plusDays(t).toString();
      needs.append("mouse,20,30,").append(demand[t]).append(',').append(day).append('\n');
      charges
          .append(t == 0 ? "" : ",")
          .append("{\"orderDates\": \"%1$s/%1$s\", \"amount\": %2$d}".formatted(day, charge[t]));
    }
    put("needs.csv", needs.toString());
    put("freezers.csv", "name,usable_litres,kind,life_days\nBig,100000,deep," + lifeDays + "\n");
    put(
        "scenario.json",
        """
        {"name": "Published", "from": "2031-01-01", "planningDays": 12, "place": "XF",
         "currency": "EUR", "suppliers": ["source"],
         "policy": {"endValue": "none", "charges": {"holdingPerPieceNight": "%s"}}}
        """
            .formatted(holding));
    put(
        "supplier-profiles/source/profile.json",
        """
        {"name": "Source", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "orderCharges": [%s],
         "delivery": {"by": "shop", "openWeekdays": ["mon","tue","wed","thu","fri","sat","sun"]}}
        """
            .formatted(charges));
    put(
        "supplier-profiles/source/prices.csv",
        """
        item,kind,size_word,least_g,mean_g,most_g,pack_count,price
        Mouse,mouse,adult,25,25,25,1,0
        """);
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
