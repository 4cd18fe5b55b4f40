package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.frostlot.files.DealsFile;
import io.frostlot.plan.Deal;
import io.frostlot.plan.Excess;
import io.frostlot.plan.Interval;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sales whose break-even follows by hand: a piece bought on the first day keeps for its life, and
 * one is eaten every seven days; pieces are 1.00 each at any other time.
 */
class CheckSaleTest {
  @TempDir Path folder;

  private List<SaleFinding> check(World world, String sale, int skipped, int chance) {
    return checkDeals(world, "\"sales\": [" + sale + "]", skipped, chance);
  }

  private List<SaleFinding> checkDeals(World world, String deal, int skipped, int chance) {
    String text = "{\"supplier\": \"shop\", " + deal + "}";
    DealsFile deals = new DealsFile(world.scenario()).read(text, "here");
    assertThat(deals.problems()).isEmpty();
    List<SaleFinding> found = new ArrayList<>();
    Questions questions = new Questions(new EnginePlanner(), Limits.ofSeconds(1200), Watch.NONE);
    List<Percent> chances = chance == 0 ? List.of() : List.of(Percent.of(String.valueOf(chance)));
    CheckSale.Request request =
        new CheckSale.Request(deals.deals(), Percent.of(String.valueOf(skipped)), chances);
    new CheckSale(questions, world, request, found::add).run();
    return found;
  }

  private static <T> T last(List<SaleFinding> found, Class<T> type) {
    List<T> all = found.stream().filter(type::isInstance).map(type::cast).toList();
    assertThat(all).isNotEmpty();
    return all.get(all.size() - 1);
  }

  private static String firstDay(String terms) {
    return "{\"id\": \"s\", \"when\": \"2031-01-01/2031-01-01\", %s}".formatted(terms);
  }

  /**
   * Days 0, 7, ... up to the last on which a piece of day 0 is usable: 26 meals in 182 days, 13 in
   * 91. Each piece taken saves its discount; one more is thrown away on the day after its use-by.
   */
  @ParameterizedTest
  @CsvSource({"182, 26, 90", "182, 26, 5", "91, 13, 90", "91, 13, 5"})
  void never_more_is_worth_taking_than_is_eaten_in_its_life(int life, int meals, int percent) {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(life, 100)).world(folder);
    List<SaleFinding> found = check(world, firstDay("\"percentOff\": " + percent), 0, 0);

    SaleFinding.Worth worth = last(found, SaleFinding.Worth.class);
    Money saved = Money.of("0.01").times((long) percent * meals);
    assertThat(worth.difference().found()).isEqualTo(saved);
    assertThat(worth.difference().saves().least().getAsDouble())
        .isGreaterThan(saved.toDouble() - 0.01);
    SaleFinding.Curve curve = last(found, SaleFinding.Curve.class);
    assertThat(curve.turn()).isEqualTo(meals);
    assertThat(curve.reasons().get(0))
        .isEqualTo(
            new Excess(
                Excess.Kind.TOO_OLD,
                "shop/Mouse",
                LocalDate.of(2031, 1, 1).plusDays(life),
                Money.ZERO));
    SaleFinding.Point beyond =
        curve.points().stream().filter(SaleFinding.Point::atLeast).findFirst().orElseThrow();
    assertThat(beyond.packs()).isEqualTo(meals + 1);
    // the piece too many costs its price under the sale
    assertThat(beyond.difference().get(0).found())
        .isEqualTo(saved.minus(Money.of("0.01").times(100L - percent)));
  }

  /**
   * A bag of 50 serves 26 meals, 26.00 by the piece: at 60 % off it costs 20.00 and is right though
   * 24 are thrown away, at 40 % off it costs 30.00 and is not.
   */
  @ParameterizedTest
  @CsvSource({"60, 6, 1", "40, 0, 0"})
  void a_whole_bag_can_be_right_though_half_is_thrown_away(int percent, int saved, int bags) {
    String bag = "Mouse bag,mouse,adult,50,50,50,50,50.00\n";
    World world =
        new OneMouseShop(OneMouseShop.SINGLES + bag, new OneMouseShop.Keeping(182, 100))
            .world(folder);
    List<SaleFinding> found =
        check(world, firstDay("\"items\": [\"Mouse bag\"], \"percentOff\": " + percent), 0, 0);

    assertThat(last(found, SaleFinding.Worth.class).difference().found())
        .isEqualTo(Money.of(saved));
    assertThat(last(found, SaleFinding.Curve.class).turn()).isEqualTo(bags);
  }

  /**
   * 8.00 off an order of 20.00 on the first day: twenty mice cost 12.00, thirteen of them are eaten
   * in their 91 days, for 13.00. Nineteen do not reach it, a twenty-first is eaten by nobody.
   */
  @Test
  void money_off_an_order_turns_where_it_is_reached() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(91, 100)).world(folder);
    String spend =
        "\"orderDiscounts\": [{\"id\": \"d\", \"when\": \"2031-01-01/2031-01-01\","
            + " \"tiers\": [{\"from\": 20, \"amountOff\": 8}]}]";
    List<SaleFinding> found = checkDeals(world, spend, 0, 0);

    SaleFinding.Curve curve = last(found, SaleFinding.Curve.class);
    assertThat(curve.turn()).isEqualTo(20);
    assertThat(curve.points())
        .extracting(
            SaleFinding.Point::packs,
            SaleFinding.Point::atLeast,
            point -> point.difference().get(0).found())
        .contains(
            tuple(19, false, Money.ZERO),
            tuple(20, false, Money.of(1)),
            tuple(21, true, Money.ZERO));
  }

  /** Ten fit; the eleventh does not. */
  @Test
  void a_full_freezer_turns_the_curve() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 10)).world(folder);
    List<SaleFinding> found = check(world, firstDay("\"percentOff\": 50"), 0, 0);

    SaleFinding.Curve curve = last(found, SaleFinding.Curve.class);
    assertThat(curve.turn()).isEqualTo(10);
    SaleFinding.Point beyond = curve.points().get(curve.points().size() - 1);
    assertThat(beyond.difference()).isEmpty();
  }

  /**
   * Every second meal skipped, 26 pieces bought all the same: 13 are eaten in their life, and 13
   * are thrown away. Known beforehand, 13 x 0.80 are saved; so 13 x 0.20 less.
   */
  @Test
  void skipped_meals_make_bought_packs_too_many() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    List<SaleFinding> found = check(world, firstDay("\"percentOff\": 80"), 50, 0);

    SaleFinding.WorseCase worse = last(found, SaleFinding.WorseCase.class);
    assertThat(worse.packs()).isEqualTo(26);
    assertThat(worse.best().found()).isEqualTo(Money.of("10.4"));
    assertThat(worse.asTaken().get(0).found()).isEqualTo(Money.of("7.8"));
  }

  /** A shop is always fetched from, so waiting changes nothing; nor does it on the first day. */
  @Test
  void where_nothing_would_wait_there_is_nothing_to_wait_for() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    String later = "{\"id\": \"s\", \"when\": \"2031-01-08/2031-01-08\", \"percentOff\": 50}";

    assertThat(check(world, later, 0, 60))
        .contains(new SaleFinding.NothingToWaitFor(LocalDate.of(2031, 1, 8), false));
    assertThat(check(world, firstDay("\"percentOff\": 50"), 0, 60))
        .contains(new SaleFinding.NothingToWaitFor(LocalDate.of(2031, 1, 1), true));
  }

  @Test
  void two_sales_do_not_add_up() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    String first = firstDay("\"percentOff\": 50, \"combinable\": true");
    String second = first.replace("\"s\"", "\"t\"").replace("50", "40");
    List<SaleFinding> found = check(world, first + "," + second, 0, 0);

    // a pack is bought under one sale: the better one
    assertThat(last(found, SaleFinding.Worth.class).difference().found()).isEqualTo(Money.of("13"));
    assertThat(last(found, SaleFinding.Apart.class).alone())
        .extracting(alone -> alone.difference().found())
        .containsExactly(Money.of("13"), Money.of("10.4"));
  }

  /** At 40 % off a bag that is half thrown away is not worth it: proven, whatever came before. */
  @Test
  void the_last_verdict_says_what_is_proven_in_the_end() {
    String bag = "Mouse bag,mouse,adult,50,50,50,50,50.00\n";
    World world =
        new OneMouseShop(OneMouseShop.SINGLES + bag, new OneMouseShop.Keeping(182, 100))
            .world(folder);
    List<SaleFinding> found =
        check(world, firstDay("\"items\": [\"Mouse bag\"], \"percentOff\": 40"), 0, 0);

    assertThat(last(found, SaleFinding.Worth.class).difference().saves())
        .isEqualTo(Interval.between(0, 0));
  }

  @Test
  void a_deal_that_cannot_be_is_refused_with_its_place() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 100)).world(folder);
    DealsFile wrong =
        new DealsFile(world.scenario())
            .read("{\"supplier\": \"nobody\", \"sales\": []}", "deals.json");
    assertThat(wrong.problems().get(0).toString())
        .contains("deals.json", "nobody", "a supplier of the scenario");
    assertThat(new Deal.OnPacks("shop", none()).atMost(3).sale().limits().inTotal()).isEqualTo(3);
  }

  private static io.frostlot.supply.Sale none() {
    return new io.frostlot.supply.Sale(
        "s",
        io.frostlot.units.Period.ALWAYS,
        io.frostlot.supply.DateBasis.ORDER,
        java.util.Set.of(),
        new io.frostlot.supply.Sale.PercentOff(Percent.of("5")),
        io.frostlot.supply.Sale.Limits.NONE,
        false);
  }
}
