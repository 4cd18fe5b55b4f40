package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.PieceLimit;
import io.frostlot.keeping.Schedule;
import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.MovesPolicy;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What was typed in the good folder arrives as it was meant; values worked out by hand. */
class GoodFolderTest {
  private final Reading.Accepted reading =
      Samples.accepted(ScenarioFolder.read(Samples.folder("good")));
  private final Scenario scenario = reading.scenario();

  private static Period period(String from, String to) {
    return new Period(LocalDate.parse(from), LocalDate.parse(to));
  }

  private Supplier supplier(String id) {
    return scenario.suppliers().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  private Pack pack(String supplier, String id) {
    return supplier(supplier).sheet().packs().stream()
        .filter(pack -> pack.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Animal animal(String name) {
    return scenario.collection().animals().stream()
        .filter(animal -> animal.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void counts_planning_days_from_the_first() {
    assertThat(scenario.planning()).isEqualTo(period("2031-01-06", "2031-03-30"));
    assertThat(scenario.away()).containsExactly(period("2031-02-10", "2031-02-16"));
  }

  @Test
  void reads_the_policy() {
    assertThat(scenario.policy())
        .isEqualTo(
            new Policy(
                Policy.Demand.BEST_EFFORT,
                new Policy.Tail(91),
                Policy.FreezerCheck.AFTER_DELIVERY,
                new Policy.Charges(
                    new HoldingCharge(Money.of("0.001"), Money.of("0.002")),
                    Money.of(5),
                    Money.of("2.5"),
                    Money.of("0.25"),
                    Money.ZERO),
                new Policy.Safety(3, Percent.of("5"), new Policy.SecondFreezer(7)),
                new Policy.Adequacy(true, Percent.of("97"), Percent.of("105")),
                new Policy.Ordering(
                    new Policy.Budget(Money.of(80), Money.of("120.50"), Money.of(30)),
                    new Policy.Calm(14, Money.of(5))),
                new MovesPolicy(28, Money.of("0.1"))));
  }

  @Test
  void warns_of_prices_older_than_the_keeper_wants() {
    assertThat(reading.warnings())
        .containsExactly(
            "fair: the prices are of 2030-08-01, more than 120 days before 2031-01-06.");
  }

  @Test
  void reads_a_programme_by_interval_and_share_of_mass() {
    Animal amber = animal("Amber");

    assertThat(amber.growth()).isEqualTo(new Curve.Constant(Grams.of(420)));
    assertThat(amber.programme().schedule())
        .isEqualTo(new Schedule.Every(14, LocalDate.parse("2031-01-10")));
    // 5 % of 420 g is 21 g; 80 % of it 16.8 g, 125 % of it 26.25 g
    assertThat(amber.programme().size().windowFor(Grams.of(420)))
        .isEqualTo(new MealSize.Window(Grams.of(16.8), Grams.of(21), Grams.of(26.25)));
    assertThat(amber.diet()).isEqualTo(new Animal.Diet(Set.of("mouse", "gerbil"), Grams.of(30), 2));
    assertThat(amber.fasts())
        .containsExactly(period("2031-01-20", "2031-02-02"), period("2031-03-01", "2031-03-01"));
  }

  @Test
  void reads_a_programme_by_weekday_and_table() {
    Animal bark = animal("Bark");

    assertThat(bark.growth()).isEqualTo(new Curve.Logistic(Grams.of(11), Grams.of(180), 0.012));
    assertThat(bark.programme().schedule())
        .isEqualTo(new Schedule.Weekdays(Set.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY)));
    assertThat(bark.programme().size().windowFor(Grams.of(20)))
        .isEqualTo(new MealSize.Window(Grams.of(2), Grams.of(2.5), Grams.of(3)));
    assertThat(bark.diet().largest()).isEqualTo(new PieceLimit.ShareOfMass(Percent.of("20")));
    assertThat(bark.programme().importance()).isEqualTo(Importance.MUST);
    assertThat(bark.programme().days()).isEqualTo(new Animal.Leeway(0, 1));
  }

  @Test
  void takes_the_percentage_of_a_mass_aimed_at() {
    // 6 % of 1400 g is 84 g, whatever the animal weighs
    assertThat(animal("Cinder").programme().size().windowFor(Grams.of(9)).target())
        .isEqualTo(Grams.of(84));
    assertThat(animal("Cinder").present().to()).isEqualTo(LocalDate.parse("2031-03-15"));
  }

  @Test
  void prices_a_pack_by_its_mean_mass() {
    // ten pieces of (50 + 85) / 2 = 67.5 g are 0.675 kg; at 18.50 a kilogram 12.4875, rounded 12.49
    assertThat(pack("hillside", "Small rat x10").price()).isEqualTo(Money.of("12.49"));
    // 0.9 to 1.1 kg are 1 kg at 60.00; the lightest pack holds 900 / 1.8 = 500 pieces
    assertThat(pack("hillside", "Pinky by weight x500").price()).isEqualTo(Money.of(60));
  }

  @Test
  void guesses_the_grams_of_a_size_word_and_says_so() {
    // hopper mouse, common practice: 7 to 13 g
    Item hopper = pack("hillside", "Hopper x25").item();
    assertThat(hopper.grams())
        .isEqualTo(new Item.Spread(Grams.of(7), Grams.of(10), Grams.of(13), true));
    // 10 g / 450 g per litre
    assertThat(hopper.litres()).isEqualTo(new Litres(22_222));
    assertThat(pack("hillside", "Adult mouse x25").item().grams().guessed()).isFalse();
  }

  @Test
  void reads_what_a_pack_takes_of_a_box_and_how_many_there_are() {
    assertThat(pack("hillside", "Small rat x10").packed())
        .isEqualTo(new Pack.Packed(Grams.of(720), new Litres(1_500_000)));
    assertThat(pack("hillside", "Adult mouse x25").packed())
        .isEqualTo(new Pack.Packed(Grams.of(525), new Litres(25 * 46_667L)));
    assertThat(pack("hillside", "Hopper x25").available())
        .isEqualTo(new Pack.Availability(10, 30, period("2031-01-01", "2031-02-28")));
  }

  @Test
  void reads_promotions() {
    Supplier.PriceSheet sheet = supplier("hillside").sheet();

    assertThat(sheet.breaks())
        .singleElement()
        .satisfies(
            it -> {
              assertThat(it.packId()).isEqualTo("Adult mouse x25");
              assertThat(it.counting()).isEqualTo(PriceBreak.Counting.ALL_UNITS);
              assertThat(it.steps())
                  .containsExactly(
                      new PriceBreak.Step(4, Money.of(19)),
                      new PriceBreak.Step(8, Money.of("18.2")));
            });
    assertThat(sheet.sales())
        .extracting(Sale::terms)
        .containsExactly(new Sale.TakeAndPay(3, 2), new Sale.PercentOff(Percent.of("12.5")));
    assertThat(supplier("hillside").terms().discounts().get(0).tiers())
        .containsExactly(
            new OrderTerms.Tier(Money.of(150), Percent.of("3"), Money.ZERO),
            new OrderTerms.Tier(Money.of(300), Percent.of("5"), Money.of(2)));
    assertThat(supplier("hillside").terms().tax())
        .isEqualTo(new OrderTerms.Tax(Percent.of("7"), true));
  }

  @Test
  void takes_the_zone_of_the_longest_postal_prefix() {
    Supplier hillside = supplier("hillside");

    assertThat(hillside.shipping().rate())
        .isEqualTo(new Shipping.Rate(Money.ZERO, Money.of(29), Money.of("21.5")));
    assertThat(((Delivery.Shipped) hillside.delivery()).transit())
        .isEqualTo(new Delivery.Transit(1, 2));
    assertThat(hillside.boxing())
        .isEqualTo(
            new Boxing(
                Boxing.Way.WHOLE_PACKS,
                new Boxing.Limits(Grams.of(9000), new Litres(24_000_000), Pack.UNLIMITED),
                6));
  }

  @Test
  void reads_pick_ups() {
    assertThat(((Delivery.Shop) supplier("corner").delivery()).openWeekdays())
        .doesNotContain(DayOfWeek.SUNDAY)
        .hasSize(6);
    assertThat(((Delivery.Show) supplier("fair").delivery()).dates())
        .containsExactly(LocalDate.parse("2031-03-08"), LocalDate.parse("2031-03-09"));
  }

  @Test
  void gives_stock_the_life_of_its_freezer() {
    // household freezer, common practice 91 days, the day of arrival included: 1 December + 90 days
    assertThat(scenario.larder().stock().get(0).useBy()).isEqualTo(LocalDate.parse("2031-03-01"));
    assertThat(scenario.larder().stock().get(0).item())
        .isEqualTo(pack("hillside", "Adult mouse x25").item());
    assertThat(scenario.larder().stock().get(1).item().id()).isEqualTo("stock/A2");
  }

  @Test
  void counts_the_pieces_of_packs_under_way() {
    assertThat(scenario.larder().placed()).extracting(lot -> lot.pieces()).containsExactly(50, 10);
  }

  @Test
  void labels_needs_that_have_no_label() {
    assertThat(scenario.collection().needs())
        .extracting(need -> need.label())
        .containsExactly("Open day", "rat 2031-03-01 60-120 g");
  }

  @Test
  void changes_the_digest_with_any_value_that_planning_can_see() {
    Scenario changed = scenario.withSuppliers(scenario.suppliers().subList(0, 2));

    assertThat(reading.digest()).matches("[0-9a-f]{64}").isEqualTo(Digest.of(scenario));
    assertThat(Digest.of(changed)).isNotEqualTo(reading.digest());
  }
}
