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

/** One shop, single pieces, one day: each step of the price ladder with its optimum by hand. */
class PriceLadderTest {
  @TempDir Path folder;

  /** Ten pieces at 2.00 are 20.00; twelve at the step price of 1.50 are 18.00. */
  @Test
  void more_packs_can_cost_less_in_all() throws IOException {
    assertThat(optimum(10, "2.00", breaks("all-units", 12, "1.50"))).isEqualTo(Money.of("18"));
  }

  /** One piece fewer than pays: eight at 2.00 are 16.00, twelve at 1.50 are 18.00. */
  @Test
  void a_step_that_does_not_pay_is_left() throws IOException {
    assertThat(optimum(8, "2.00", breaks("all-units", 12, "1.50"))).isEqualTo(Money.of("16"));
  }

  /** The first four at 2.00, six more at 1.00. */
  @Test
  void each_pack_at_the_price_of_its_own_step() throws IOException {
    assertThat(optimum(10, "2.00", breaks("incremental", 5, "1.00"))).isEqualTo(Money.of("14"));
  }

  /** Three are needed; below 10.00 nothing is sold, so five are bought. */
  @Test
  void a_minimum_order_is_filled_up() throws IOException {
    assertThat(optimum(3, "2.00", ", \"minimumOrder\": {\"from\": 10}")).isEqualTo(Money.of("10"));
  }

  /** 3 x 2.15 = 6.45; 7.7 % of it 0.49665, so 0.50. */
  @Test
  void tax_is_rounded_to_the_minor_unit() throws IOException {
    assertThat(optimum(3, "2.15", ", \"tax\": {\"percent\": 7.7}")).isEqualTo(Money.of("6.95"));
  }

  /** 5 % of 0.50 is 0.025: half a cent goes up. */
  @Test
  void half_a_minor_unit_goes_up() throws IOException {
    assertThat(optimum(1, "0.50", ", \"tax\": {\"percent\": 5}")).isEqualTo(Money.of("0.53"));
  }

  /** Goods 3.00 and 5.00 for the trip, both taxed at 10 %. */
  @Test
  void tax_on_charges_too() throws IOException {
    String terms =
        ", \"orderCharges\": [{\"amount\": 5}], \"tax\": {\"percent\": 10, \"onCharges\": true}";
    assertThat(optimum(3, "1.00", terms)).isEqualTo(Money.of("8.80"));
  }

  /** 2.15 less 12.5 % is 1.88125, so 1.88 a pack. */
  @Test
  void a_sale_is_rounded_per_pack() throws IOException {
    assertThat(optimum(3, "2.15", sale("\"percentOff\": 12.5"))).isEqualTo(Money.of("5.64"));
  }

  /** Two groups of three, two paid in each, and one more: five are paid. */
  @Test
  void three_for_the_price_of_two() throws IOException {
    assertThat(optimum(7, "2.00", sale("\"take\": 3, \"pay\": 2"))).isEqualTo(Money.of("10"));
  }

  /** Eight are needed: paying for six of eight, or the ninth for nothing. */
  @Test
  void a_group_is_filled_where_that_costs_nothing() throws IOException {
    assertThat(optimum(8, "2.00", sale("\"take\": 3, \"pay\": 2"))).isEqualTo(Money.of("12"));
  }

  /** Two at 1.00, the third at 2.00. */
  @Test
  void no_more_packs_under_a_sale_than_its_limit() throws IOException {
    assertThat(optimum(3, "2.00", sale("\"price\": 1, \"mostPacksPerOrder\": 2")))
        .isEqualTo(Money.of("4"));
    assertThat(optimum(3, "2.00", sale("\"price\": 1, \"mostPacksInTotal\": 1")))
        .isEqualTo(Money.of("5"));
  }

  /** All three packs at the step price of 1.50, less 33 %: 1.005, half-up 1.01. */
  @Test
  void a_sale_follows_a_break() throws IOException {
    String terms = breaks("all-units", 3, "1.50") + sale("\"percentOff\": 33");
    assertThat(optimum(3, "2.00", terms)).isEqualTo(Money.of("3.03"));
  }

  /** Four at 2.40 are 9.60; a fifth makes 12.00, less a quarter 9.00. */
  @Test
  void padding_reaches_a_discount() throws IOException {
    String terms =
        ", \"orderDiscounts\": [{\"id\": \"d\", \"tiers\": [{\"from\": 10, \"percentOff\": 25}]}]";
    assertThat(optimum(4, "2.40", terms)).isEqualTo(Money.of("9"));
    assertThat(optimum(3, "2.40", terms)).isEqualTo(Money.of("7.20"));
  }

  /** Of the tiers reached the highest counts, even where it gives less: 20.00 - 1.00. */
  @Test
  void the_highest_tier_counts() throws IOException {
    String terms =
        """
        , "orderDiscounts": [{"id": "d", "tiers": [
          {"from": 10, "percentOff": 20}, {"from": 20, "amountOff": 1}]}]
        """;
    assertThat(optimum(10, "2.00", terms)).isEqualTo(Money.of("19"));
    assertThat(optimum(9, "2.00", terms)).isEqualTo(Money.of("14.40"));
  }

  /** Four are 8.00 and 5.00 for the trip; five are 10.00 and the trip is free. */
  @Test
  void padding_reaches_free_shipping() throws IOException {
    String terms =
        """
        , "orderCharges": [{"amount": 5}], "freeShipping": [{"from": 10, "waives": ["order-charge"]}]
        """;
    assertThat(optimum(4, "2.00", terms)).isEqualTo(Money.of("10"));
    assertThat(optimum(2, "2.00", terms)).isEqualTo(Money.of("9"));
  }

  /** Alone the sale gives 7.20 and the discount 6.00; together 7.20 less a quarter. */
  @Test
  void the_better_of_two_that_may_not_be_combined() throws IOException {
    assertThat(optimum(4, "2.00", both(false))).isEqualTo(Money.of("6"));
    assertThat(optimum(4, "2.00", both(true))).isEqualTo(Money.of("5.40"));
  }

  /** Four at 2.00 and six at 1.00; half off three of them, the dearest: 14.00 - 3.00. */
  @Test
  void a_sale_takes_the_dearest_packs_of_a_line() throws IOException {
    String terms =
        breaks("incremental", 5, "1.00") + sale("\"percentOff\": 50, \"mostPacksPerOrder\": 3");
    assertThat(optimum(10, "2.00", terms)).isEqualTo(Money.of("11"));
  }

  private static String both(boolean combinable) {
    return """
        , "sales": [{"id": "s", "when": "2031-01-01/2031-01-02", "percentOff": 10, "combinable": %1$s}],
          "orderDiscounts": [{"id": "d", "combinable": %1$s,
            "tiers": [{"from": 7, "percentOff": 25}]}]
        """
        .formatted(combinable);
  }

  private static String sale(String terms) {
    return ", \"sales\": [{\"id\": \"s\", \"when\": \"2031-01-01/2031-01-02\", %s}]"
        .formatted(terms);
  }

  private static String breaks(String counting, int from, String price) {
    return """
        , "breaks": [{"item": "Mouse", "packCount": 1, "counting": "%s",
          "steps": [{"fromPacks": %d, "price": "%s"}]}]
        """
        .formatted(counting, from, price);
  }

  private Money optimum(int pieces, String price, String terms) throws IOException {
    put("needs.csv", "kind,least_g,most_g,pieces,date\nmouse,20,30," + pieces + ",2031-01-01\n");
    put("freezers.csv", "name,usable_litres,kind\nBig,100000,deep\n");
    put(
        "scenario.json",
        """
        {"name": "Ladder", "from": "2031-01-01", "planningDays": 1, "place": "XF",
         "currency": "EUR", "suppliers": ["source"], "policy": {"endValue": "none",
          "charges": {"perOrder": 0, "perDeliveryDay": 0}}}
        """);
    put(
        "supplier-profiles/source/profile.json",
        """
        {"name": "Source", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "shop", "openWeekdays": ["wed"]}%s}
        """
            .formatted(terms));
    put(
        "supplier-profiles/source/prices.csv",
        "item,kind,size_word,least_g,mean_g,most_g,pack_count,price\nMouse,mouse,adult,25,25,25,1,"
            + price
            + "\n");
    Reading reading = ScenarioFolder.read(folder);
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    Answer answer =
        Engine.solve(
            World.of(((Reading.Accepted) reading).scenario()), Limits.ofSeconds(60), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    Answer.Proven proven = (Answer.Proven) answer;
    assertThat(proven.plan().standing().unmetMust()).isZero();
    return proven.plan().standing().money();
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
