package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.report.PlanReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the letter gives as the reason for what is thrown away, left, or not met, in rooms where the
 * reason is plain: a snake takes a mouse of 20 g on each of four Fridays, 10 to 31 January; a shop
 * sells ten for 30.00 on Wednesdays. Ten of them take 0.44 litres.
 */
class TrueReasonsTest {
  private static final String MICE = "Mouse,mouse,18,20,22,10,30\n";
  @TempDir Path folder;

  @BeforeEach
  void room() throws IOException {
    scenario(0);
    animals("Ada,200,2031-01-02,7,2031-01-10,20,40,mouse,must,");
    put("freezers.csv", "name,usable_litres,kind\nChest,20,household\n");
    prices(MICE, "");
  }

  private void scenario(int tailDays) throws IOException {
    put(
        "scenario.json",
        """
        {"name": "Reasons", "from": "2031-01-06", "planningDays": 28, "place": "XF",
         "currency": "EUR", "suppliers": ["shop"], "policy": {"tailDays": %d}}
        """
            .formatted(tailDays));
  }

  private void animals(String... rows) throws IOException {
    put(
        "animals.csv",
        "name,mass_g,weighed,every_days,next_meal,meal_g,largest_piece_g,kinds,importance,until\n"
            + String.join("\n", rows)
            + "\n");
  }

  private void prices(String rows, String delivery) throws IOException {
    put(
        "supplier-profiles/shop/profile.json",
        """
        {"name": "Shop (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "shop", "openWeekdays": ["wed"]%s}}
        """
            .formatted(delivery));
    put(
        "supplier-profiles/shop/prices.csv",
        "item,kind,least_g,mean_g,most_g,pack_count,price\n" + rows);
  }

  private String letter() {
    World world = World.of(((Reading.Accepted) ScenarioFolder.read(folder)).scenario());
    Answer.WithPlan found = (Answer.WithPlan) Engine.solve(world, Limits.ofSeconds(60), Watch.NONE);
    return new PlanReport(
            new Inputs(world, "0123456789abcdef", List.of()),
            found,
            new Solved(world, found).outcome(),
            List.of())
        .text(120)
        .replaceAll("\\s+", " ");
  }

  /**
   * From the 15th to the 25th there is room for two. Of the ten, one is eaten on the 10th, two stay
   * for the 17th and the 24th, seven go; for the 31st ten are bought anew, and nine are left over,
   * which no meal needs.
   */
  @Test
  void what_a_later_meal_could_be_of_is_thrown_away_for_room_alone() throws IOException {
    put("freezer-limits.csv", "freezer,days,litres\nChest,2031-01-15/2031-01-25,0.1\n");
    assertThat(letter())
        .contains(
            "- 7 Mouse from Chest, on Wed 15 Jan 2031, to make room: later meals that could be of"
                + " them get what comes then, or nothing.")
        .doesNotContain("to make room: no meal needs them");
  }

  /** Ten come for four meals, on the 8th; of the six others no meal could be. */
  @Test
  void what_no_meal_needs_is_thrown_away_for_room() throws IOException {
    put("freezer-limits.csv", "freezer,days,litres\nChest,2031-01-15/2031-01-25,0.14\n");
    assertThat(letter()).contains("6 Mouse from Chest, on Wed 15 Jan 2031, to make room: no meal");
  }

  /** One piece in hand, two meals on one day, a shop that sells none of it. */
  @Test
  void what_others_eat_was_there_in_time() throws IOException {
    animals(
        "Ada,200,2031-01-02,60,2031-01-10,20,40,mouse,must,",
        "Zed,200,2031-01-02,60,2031-01-10,20,40,mouse,may-slide,");
    put(
        "stock.csv",
        "lot,kind,least_g,mean_g,most_g,pieces,freezer,arrived\nx,mouse,18,20,22,1,Chest,2031-01-01\n");
    prices("Rat,rat,60,70,80,1,3\n", "");
    assertThat(letter()).contains("Zed 1 10 Jan 2031 16-24 x, 20 g: other meals get what is there");
  }

  @Test
  void what_may_not_be_put_into_any_freezer_is_not_late() throws IOException {
    put("freezers.csv", "name,usable_litres,kind,holds_food\nKitchen,20,household,yes\n");
    assertThat(letter()).contains("Mouse, 20 g: no freezer may take it");
  }

  /** The shop is closed until the 14th: nothing is there on the 10th, or three days later. */
  @Test
  void what_comes_after_the_meal_is_not_there_in_time() throws IOException {
    prices(MICE, ", \"closed\": [\"2031-01-01/2031-01-14\"]");
    assertThat(letter()).contains("Ada (must) 1 10 Jan 2031 16-24 Mouse, 20 g: not there in time");
  }

  /** It keeps a day, and Friday, with three days to spare, is two days after Wednesday. */
  @Test
  void what_keeps_too_short_is_too_old() throws IOException {
    put("freezers.csv", "name,usable_litres,kind,life_days\nChest,20,household,1\n");
    prices(MICE, ", \"closed\": [\"2031-01-09/2031-02-02\"]");
    assertThat(letter()).contains("Mouse, 20 g: too old by then");
  }

  /** Half a piece finds room. */
  @Test
  void what_finds_no_room_in_an_empty_freezer_is_said_to_find_none() throws IOException {
    put("freezers.csv", "name,usable_litres,kind\nChest,0.02,household\n");
    assertThat(letter()).contains("16-24 Mouse, 20 g: no room in a freezer when it could come");
  }

  /**
   * On the 8th, the one day before the 10th on which the shop is open, ten mice or ten rats of 20 g
   * find room, 0.44 of 0.5 litres; the mice are for Ada, which must eat. A week later there are two
   * mice at most left to eat, which leave room for rats.
   */
  @Test
  void what_finds_no_room_beside_what_others_eat_is_said_to_find_none() throws IOException {
    animals(
        "Ada,200,2031-01-02,7,2031-01-10,20,40,mouse,must,",
        "Rex,200,2031-01-02,60,2031-01-10,20,40,rat,may-slide,");
    prices(MICE + "Rat,rat,18,20,22,10,30\n", "");
    put("freezers.csv", "name,usable_litres,kind\nChest,0.5,household\n");
    assertThat(letter())
        .contains("Rex 1 10 Jan 2031 16-24 Rat, 20 g: no room in a freezer when it could come");
  }

  /** Until the 15th there is room for one mouse, then for two packs. */
  @Test
  void what_finds_room_only_when_it_comes_is_said_to_find_none() throws IOException {
    put("freezer-limits.csv", "freezer,days,litres\nChest,2031-01-09/2031-01-12,0.04\n");
    assertThat(letter())
        .contains("Ada (must) 1 10 Jan 2031 16-24 Mouse, 20 g: no room in a freezer when it");
  }

  /** Two packs reach the least value of an order, and one finds room: what lacks is no one rule. */
  @Test
  void where_no_reason_is_known_none_is_told() throws IOException {
    prices(MICE, "}, \"minimumOrder\": {\"from\": \"60.00\"");
    put("freezers.csv", "name,usable_litres,kind\nChest,0.5,household\n");
    assertThat(letter()).contains("16-24 Mouse, 20 g An animal");
  }

  /** Ada is given away after the 20th: it has not outgrown the eight pieces that are left. */
  @Test
  void who_leaves_has_outgrown_nothing() throws IOException {
    scenario(60);
    animals("Ada,200,2031-01-02,7,2031-01-10,20,40,mouse,must,2031-01-20");
    put(
        "stock.csv",
        "lot,kind,least_g,mean_g,most_g,pieces,freezer,arrived\nx,mouse,18,20,22,10,Chest,2031-01-01\n");
    assertThat(letter())
        .contains("More than is eaten, in hand or ordered before: 8 x in Chest")
        .doesNotContain("Outgrown");
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
