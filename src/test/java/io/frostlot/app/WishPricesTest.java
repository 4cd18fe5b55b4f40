package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What rules cost, each derived by hand: a mouse of 50 g at 1.00 is eaten on each of four
 * Wednesdays (1, 8, 15, 22 January), on which the shop is open, and on 26 of the days after; a
 * piece in the freezer is reckoned at 0.10 a night.
 */
class WishPricesTest {
  private static final String HELD =
      ", \"adequacy\": {\"asked\": false}, \"charges\": {\"perOrder\": 0, \"perDeliveryDay\": 0,"
          + " \"holdingPerPieceNight\": \"0.10\"}";
  @TempDir private Path folder;

  private void shop(String prices, String profile) {
    new OneMouseShop(
            prices, new OneMouseShop.Extras(profile, HELD), new OneMouseShop.Keeping(182, 10))
        .write(folder);
  }

  private void put(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
  }

  private void change(String file, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(from);
    put(file, text.replace(from, to));
  }

  private Wish wish(String says) {
    World world = World.of(((Reading.Accepted) ScenarioFolder.read(folder)).scenario());
    return Wish.of(world, Money.of(100)).stream()
        .filter(it -> it.says().equals(says))
        .findFirst()
        .orElseThrow();
  }

  private static Standing best(World world) {
    Answer answer = new EnginePlanner().plan(world, Limits.ofSeconds(600), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan().standing();
  }

  private void saves(String says, String money, ExplainFinding.Sake sake) {
    Wish wish = wish(says);
    assertThat(wish.bearing().wished().sake()).isEqualTo(sake);
    Standing with = best(wish.with());
    Standing without = best(wish.without());
    assertThat(without.sameBeforeMoney(with)).isTrue();
    assertThat(with.money().minus(without.money())).isEqualTo(Money.of(money));
  }

  /** Handled on 16 January: the meal of the 15th comes on that day, after a night. */
  @Test
  void a_meal_that_keeps_clear_of_handling_waits_a_night() throws IOException {
    shop(OneMouseShop.SINGLES, "");
    put("events.csv", "days,animal,what\n2031-01-16,Ash,a show\n");
    saves(
        "no meal on the three days before an animal is handled",
        "0.10",
        ExplainFinding.Sake.ANIMAL);
  }

  /** Nobody feeds on the 15th: the day before is as near as the day after, six nights in all. */
  @Test
  void a_meal_moved_from_a_day_away_is_bought_a_week_before() throws IOException {
    shop(OneMouseShop.SINGLES, "");
    change("scenario.json", "\"place\"", "\"noFeeding\": [\"2031-01-15\"], \"place\"");
    saves("days away on which nobody feeds", "0.60", ExplainFinding.Sake.KEEPER);
  }

  /** Two are fetched on the 8th, and one is held for seven nights. */
  @Test
  void a_day_on_which_nobody_receives_costs_a_week_in_the_freezer() throws IOException {
    shop(OneMouseShop.SINGLES, "");
    change("scenario.json", "\"place\"", "\"away\": [\"2031-01-15\"], \"place\"");
    saves("days away on which nobody receives", "0.70", ExplainFinding.Sake.KEEPER);
  }

  /** Four meals on Thursdays, a night after they were fetched. */
  @Test
  void a_rack_that_is_fed_on_thursdays_costs_a_night_a_meal() throws IOException {
    shop(OneMouseShop.SINGLES, "");
    change(
        "scenario.json",
        "\"place\"",
        "\"rooms\": [{\"name\": \"Rack\", \"feedingWeekdays\": [\"thu\"]}], \"place\"");
    change("animals.csv", "late_days", "late_days,room");
    change("animals.csv", "mouse,0", "mouse,0,Rack");
    saves("feeding weekdays of rooms and racks", "0.40", ExplainFinding.Sake.KEEPER);
  }

  /**
   * The shop opens on Thursdays: the first meal is lost and the other three are held for six nights
   * (30 - 1 + 1.80), unless each may come a day late.
   */
  @Test
  void an_animal_that_is_fed_on_wednesdays_eats_what_came_six_days_before() throws IOException {
    shop(OneMouseShop.SINGLES, "");
    change("supplier-profiles/shop/profile.json", "[\"wed\"]", "[\"thu\"]");
    change(
        "scenario.json",
        "\"holdingPerPieceNight\"",
        "\"lateMealPerDay\": 0, \"holdingPerPieceNight\"");
    Wish wish = wish("feeding weekdays of animals, against any day nearest to them");
    assertThat(best(wish.with()).unmetOther()).isEqualTo(1);
    assertThat(best(wish.with()).money()).isEqualTo(Money.of("30.80"));
    assertThat(best(wish.without()).unmet()).isZero();
    assertThat(best(wish.without()).money()).isEqualTo(Money.of("30.00"));
  }

  /** A bag whose heaviest piece is above 60 g costs 0.20 less a piece, over 30 meals. */
  @Test
  void a_largest_piece_forbids_the_cheaper_bag() {
    shop(OneMouseShop.SINGLES + "Big,mouse,adult,40,50,70,1,0.80\n", "");
    saves("the largest piece of each animal", "6.00", ExplainFinding.Sake.ANIMAL);
  }

  /** 37 g are less than 80 % of 50 g, but not less than 70 %; 0.10 less in each of 30 meals. */
  @Test
  void wider_grams_allow_a_lighter_mouse() {
    shop(OneMouseShop.SINGLES + "Light,mouse,adult,37,37,37,1,0.90\n", "");
    saves(
        "the least and most grams of a meal, against a tenth of its target less and more",
        "3.00",
        ExplainFinding.Sake.ANIMAL);
  }

  /** Two of 25 g at 0.30 are a meal. */
  @Test
  void two_small_pieces_are_cheaper_than_one() {
    shop(OneMouseShop.SINGLES + "Small,mouse,hopper,25,25,25,1,0.30\n", "");
    saves("the most pieces of a meal, against one more", "12.00", ExplainFinding.Sake.KEEPER);
  }

  /**
   * Of a bag of two for 0.80 the lighter half, 40 to 50 g, would do: 0.80 a meal in place of 1.00,
   * the other half held for a night until it is thrown away, and 0.40 a piece for the days after.
   */
  @Test
  void bags_are_looked_at_as_if_they_were_sorted() throws IOException {
    shop(OneMouseShop.SINGLES + "Mixed,mouse,adult,40,50,70,2,0.80\n", "");
    assertThat(wish("bags sorted at home into two halves").asked()).isFalse();
    saves("bags sorted at home into two halves", "-16.00", ExplainFinding.Sake.KEEPER);
    change("scenario.json", "\"place\"", "\"sortBags\": true, \"place\"");
    assertThat(wish("bags sorted at home into two halves").asked()).isTrue();
    saves("bags sorted at home into two halves", "-16.00", ExplainFinding.Sake.KEEPER);
  }

  private void eatsRatsToo(String columns, String cells) throws IOException {
    shop(OneMouseShop.SINGLES + "Rat,rat,pup,50,50,50,1,0.80\n", "");
    change("animals.csv", "late_days", "late_days," + columns);
    change("animals.csv", "mouse,0", "mouse rat,0," + cells);
  }

  @Test
  void what_never_changes_pays_for_thirty_mice() throws IOException {
    eatsRatsToo("last_kind,last_piece_g,changes", "mouse,50,never");
    saves(
        "nothing but what animals had last, where they never change",
        "6.00",
        ExplainFinding.Sake.ANIMAL);
  }

  /** Of the days after nothing is asked. */
  @Test
  void what_keeps_to_its_last_size_pays_for_four_mice() throws IOException {
    eatsRatsToo("last_kind,last_piece_g,changes", "mouse,50,keep");
    saves(
        "what animals have had before kept to, or seldom changed",
        "0.80",
        ExplainFinding.Sake.ANIMAL);
  }

  @Test
  void a_preferred_kind_costs_as_much() throws IOException {
    eatsRatsToo("preferred_kind", "mouse");
    saves("largest shares of other kinds of prey", "0.80", ExplainFinding.Sake.KEEPER);
  }

  /** Room for one in the chest, and for one beside food; each trip is 5.00. */
  @Test
  void beside_food_is_looked_at_whether_allowed_or_not() throws IOException {
    shop(OneMouseShop.SINGLES, ", \"orderCharges\": [{\"amount\": \"5.00\"}]");
    change("scenario.json", "\"0.10\"", "0");
    put(
        "freezers.csv",
        "name,usable_litres,kind,holds_food\nChest,1,deep,no\nKitchen,1,household,yes\n");
    String beside = "new prey in freezers that hold food too";
    assertThat(wish(beside).asked()).isFalse();
    saves(beside, "-10.00", ExplainFinding.Sake.PEOPLE);
    change("scenario.json", "\"endValue\"", "\"preySealedFromFood\": true, \"endValue\"");
    assertThat(wish(beside).asked()).isTrue();
    saves(beside, "-10.00", ExplainFinding.Sake.PEOPLE);
    saves(
        "the room that prey may take in freezers that hold food too",
        "5.00",
        ExplainFinding.Sake.PEOPLE);
  }
}
