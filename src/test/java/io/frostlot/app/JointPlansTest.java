package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.GroupFolder;
import io.frostlot.files.GroupReading;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Group;
import io.frostlot.plan.JointWorld;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.PutTogether;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a joint order costs, held to trying every way to buy it. */
class JointPlansTest {
  private static final Limits ROUNDS = new Limits(Duration.ofMinutes(10), OptionalInt.of(50));
  @TempDir Path folder;

  @BeforeEach
  void suppliers() throws IOException {
    new GroupSamples(folder).suppliers();
  }

  /** What the members would order alone. */
  private static Answer.Judged putTogether(Group group) {
    Map<Keeper, Plan> alone = new LinkedHashMap<>();
    for (Keeper keeper : group.keepers()) {
      alone.put(keeper, plan(World.of(keeper.scenario())).plan().plan());
    }
    World world = JointWorld.of(group.keepers(), group.agreement()).orElseThrow();
    return Engine.judge(world, PutTogether.of(world, alone).orElseThrow()).orElseThrow();
  }

  /** 10 + 20 and 10 + 20 alone; in one order both bags lie in one box of 20.00: 40. */
  @Test
  void orders_of_one_day_put_together_share_a_box() throws IOException {
    Group group = group("mouse,20,30,10,2031-01-10", "rabbit,900,1100,10,2031-01-10");
    Answer.Judged judged = putTogether(group);

    assertThat(judged.standing().money()).isEqualTo(Money.of(40));
    assertThat(judged.standing().unmetMust()).isZero();
  }

  /** Of 95 mice five are thrown away for a bag of rabbits, in 100 litres: together too. */
  @Test
  void what_is_thrown_away_alone_is_thrown_away_together() throws IOException {
    new GroupSamples(folder)
        .put(
            "ann/stock.csv",
            """
            lot,supplier,item,pieces,freezer,arrived,use_by
            a,north,Mouse,95,Box,2030-12-20,2031-03-01
            """);
    Group group = group("rabbit,900,1100,10,2031-01-10", "rabbit,900,1100,10,2031-01-10");
    Answer.Judged judged = putTogether(group);

    assertThat(judged.standing().money()).isEqualTo(Money.of(40));
    assertThat(judged.standing().unmetMust()).isZero();
  }

  /** Only one bag of mice in a delivery: 10 + 20, and ten of twenty mice are not there. */
  @Test
  void what_is_not_there_for_all_is_left_out() throws IOException {
    new GroupSamples(folder)
        .put(
            "supplier-profiles/north/prices.csv",
            """
            item,kind,least_g,most_g,pack_count,price,litres_per_piece,available_per_delivery
            Mouse,mouse,20,30,10,10,1,1
            """);
    Group group = group("mouse,20,30,10,2031-01-10", "mouse,20,30,10,2031-01-10");
    Answer.Judged judged = putTogether(group);

    assertThat(judged.standing().money()).isEqualTo(Money.of(30));
    assertThat(judged.standing().unmetMust()).isEqualTo(10);
  }

  /**
   * Every number of bags up to six of each kind, and every way to hand bags of rabbits, which are
   * never cut, to two or three members; mice, by fives, may be cut.
   */
  @Test
  void a_joint_order_costs_what_trying_everything_finds() throws IOException {
    Random random = new Random(11);
    for (int i = 0; i < 4; i++) {
      int members = 2 + i % 2;
      int[] mice = random.ints(members, 0, 4).map(n -> 5 * n).toArray();
      int[] rabbits = random.ints(members, 1, 13).toArray();
      String[] needs = new String[members];
      for (int member = 0; member < members; member++) {
        needs[member] = "rabbit,900,1100," + rabbits[member] + ",2031-01-10";
        needs[member] += mice[member] > 0 ? "\nmouse,20,30," + mice[member] + ",2031-01-10" : "";
      }
      Group group = group(needs);
      World world = JointWorld.of(group.keepers(), group.agreement()).orElseThrow();

      Answer.WithPlan joint = plan(world);

      assertThat(joint).isInstanceOf(Answer.Proven.class);
      assertThat(joint.plan().standing().money())
          .as(String.join(" and ", needs))
          .isEqualTo(Money.of(cheapest(mice, rabbits)));
    }
  }

  private static int cheapest(int[] mice, int[] rabbits) {
    int least = Integer.MAX_VALUE;
    for (int bags = 0; bags <= 6; bags++) {
      for (int whole = 0; whole <= 6; whole++) {
        boolean enough = 10 * bags >= IntStream.of(mice).sum();
        if (enough && canHandOut(whole, rabbits, 0)) {
          int boxes = (bags + whole + 1) / 2;
          least = Math.min(least, 10 * (bags + whole) + 20 * boxes);
        }
      }
    }
    return least;
  }

  private static boolean canHandOut(int bags, int[] rabbits, int member) {
    if (member == rabbits.length) {
      return true;
    }
    for (int some = 0; some <= bags; some++) {
      if (10 * some >= rabbits[member] && canHandOut(bags - some, rabbits, member + 1)) {
        return true;
      }
    }
    return false;
  }

  private static Answer.WithPlan plan(World world) {
    return (Answer.WithPlan) Engine.solve(world, ROUNDS, Watch.stopping(() -> false));
  }

  private Group group(String... needs) throws IOException {
    GroupSamples samples = new GroupSamples(folder);
    List<String> names = List.of("ann", "bo", "cy").subList(0, needs.length);
    for (int i = 0; i < needs.length; i++) {
      samples.member(names.get(i), needs[i]);
    }
    samples.group("", names.toArray(String[]::new));
    GroupReading reading = GroupFolder.read(folder, folder.resolve("supplier-profiles"));
    return ((GroupReading.Accepted) reading).group();
  }
}
