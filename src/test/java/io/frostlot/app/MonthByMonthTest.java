package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Order;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two months, boxes that come the day after they are ordered, shipping 5.00 a box, packs of five at
 * 6.00 and of ten at 10.00; prey keeps for ever.
 */
class MonthByMonthTest {
  private static final Limits LIMITS = Limits.ofSeconds(100);
  @TempDir Path folder;

  /** Five in each month: one pack of ten and one box are 15, two packs of five and two boxes 22. */
  @Test
  void a_keeper_who_does_not_look_ahead_pays_two_boxes() throws IOException {
    World world = world("mouse,20,30,5,2031-01-20\nmouse,20,30,5,2031-02-20", "one");
    assertThat(best(world)).isEqualTo(new Standing(0, 0, 0, Money.of(15)));
    Answer.Judged habit = habit(world, Set.of("one"), Set.of());
    assertThat(habit.standing()).isEqualTo(new Standing(0, 0, 0, Money.of(22)));
    assertThat(habit.plan().orders())
        .extracting(order -> order.slot().ordered().getMonthValue())
        .containsExactly(1, 2);
  }

  /** Seven, then three: the pack of ten (15) is less than two of five (17), and three are left. */
  @Test
  void what_is_left_of_one_month_is_eaten_in_the_next() throws IOException {
    World world = world("mouse,20,30,7,2031-01-20\nmouse,20,30,3,2031-02-20", "one");
    Answer.Judged habit = habit(world, Set.of("one"), Set.of());
    assertThat(habit.standing()).isEqualTo(new Standing(0, 0, 0, Money.of(15)));
    assertThat(habit.plan().orders()).hasSize(1);
  }

  /** The other one ships for 4.00: 2 x (6 + 4) = 20. */
  @Test
  void the_supplier_of_least_cost_is_taken() throws IOException {
    World world = world("mouse,20,30,5,2031-01-20\nmouse,20,30,5,2031-02-20", "one", "two");
    Answer.Judged habit = habit(world, Set.of("one", "two"), Set.of());
    assertThat(habit.standing()).isEqualTo(new Standing(0, 0, 0, Money.of(20)));
    assertThat(habit.plan().orders())
        .extracting(order -> order.slot().supplier())
        .containsOnly("two");
  }

  /** Eaten on the first day, before any box: two of the shop at 3.00; then 22 as before. */
  @Test
  void a_gap_is_filled_at_the_shop() throws IOException {
    World world =
        world(
            "mouse,20,30,2,2031-01-01\nmouse,20,30,5,2031-01-20\nmouse,20,30,5,2031-02-20",
            "one",
            "shop");
    Answer.Judged habit = habit(world, Set.of("one"), Set.of("shop"));
    assertThat(habit.standing()).isEqualTo(new Standing(0, 0, 0, Money.of(28)));
    assertThat(habit.plan().orders())
        .extracting(order -> order.slot().supplier())
        .containsExactly("shop", "one", "one");
  }

  /** Three meals four weeks apart, the third in the tail: five of a pack, 6 + 5, serve all. */
  @Test
  void what_is_left_is_eaten_in_the_tail() throws IOException {
    world("mouse,20,30,1,2031-01-21", "one");
    put(
        "animals.csv",
        """
        name,mass_g,weighed,every_days,next_meal,meal_g,largest_piece_g,kinds
        Ash,500,2031-01-01,28,2031-01-20,25,30,mouse
        """);
    put("scenario.json", scenario("{\"endValue\": \"tail\", \"tailDays\": 28}", "one"));
    Answer.Judged habit = habit(read(), Set.of("one"), Set.of());
    assertThat(habit.standing()).isEqualTo(new Standing(0, 0, 0, Money.of(11)));
    assertThat(habit.plan().feedings())
        .extracting(feeding -> feeding.day().toString())
        .containsExactly("2031-01-20", "2031-01-21", "2031-02-17", "2031-03-17");
  }

  /** Animals that grow, deliveries on one of two days, prey in hand and under way, a tail. */
  @Test
  void a_habit_keeps_every_rule_and_is_never_better_than_the_best() {
    World world = HandmadeRoom.world();
    Answer.Judged habit = habit(world, Set.of("hillside"), Set.of());
    assertThat(habit.plan().orders()).extracting(Order::slot).doesNotHaveDuplicates();
    assertThat(best(world)).isLessThanOrEqualTo(habit.standing());
  }

  @Test
  void without_an_answer_for_one_month_there_is_none() throws IOException {
    World world = world("mouse,20,30,5,2031-01-20\nmouse,20,30,5,2031-02-20", "one");
    assertThat(
            new MonthByMonth(world, Set.of("one"), Set.of())
                .follow((part, left) -> left > 2 ? solve(part) : Optional.empty()))
        .isEmpty();
  }

  private static Answer.Judged habit(World world, Set<String> regular, Set<String> shops) {
    return new MonthByMonth(world, regular, shops)
        .follow((part, left) -> solve(part))
        .orElseThrow();
  }

  private static Standing best(World world) {
    Answer answer = Engine.solve(world, LIMITS, Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan().standing();
  }

  private static Optional<Answer.WithPlan> solve(World part) {
    return Optional.of(Engine.solve(part, LIMITS, Watch.NONE))
        .filter(Answer.WithPlan.class::isInstance)
        .map(Answer.WithPlan.class::cast);
  }

  private World world(String needs, String... suppliers) throws IOException {
    put("needs.csv", "kind,least_g,most_g,pieces,date\n" + needs + "\n");
    put("freezers.csv", "name,usable_litres,kind,life_days\nChest,100,deep,999\n");
    put("scenario.json", scenario("{\"endValue\": \"none\"}", suppliers));
    put("supplier-profiles/one/profile.json", shipped("One", 5));
    put("supplier-profiles/two/profile.json", shipped("Two", 4));
    put(
        "supplier-profiles/shop/profile.json",
        """
        {"name": "Shop", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "shop"}}
        """);
    put("supplier-profiles/one/prices.csv", prices("5,6\n", "10,10\n"));
    put("supplier-profiles/two/prices.csv", prices("5,6\n", "10,10\n"));
    put("supplier-profiles/shop/prices.csv", prices("1,3\n"));
    return read();
  }

  private World read() {
    return World.of(((Reading.Accepted) ScenarioFolder.read(folder)).scenario());
  }

  private static String scenario(String policy, String... suppliers) {
    return """
        {"name": "Months", "from": "2031-01-01", "to": "2031-02-28", "place": "XF",
         "currency": "EUR", "suppliers": ["%s"], "policy": {
          "charges": {"perOrder": 0, "perDeliveryDay": 0}, %s}
        """
        .formatted(String.join("\", \"", suppliers), policy.substring(1));
  }

  private static String shipped(String name, int box) {
    return """
        {"name": "%s", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "shipping": {"toMe": {"firstBox": "%d", "transitEarliestDays": 1}},
         "delivery": {"by": "carrier"}}
        """
        .formatted(name, box);
  }

  private static String prices(String... packs) {
    StringBuilder sheet =
        new StringBuilder("item,kind,size_word,least_g,mean_g,most_g,pack_count,price\n");
    for (String pack : packs) {
      sheet.append("Mouse,mouse,adult,25,25,25,").append(pack);
    }
    return sheet.toString();
  }

  private void put(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }
}
