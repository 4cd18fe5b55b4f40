package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Agreement;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Cutting;
import io.frostlot.plan.Handed;
import io.frostlot.plan.JointWorld;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Standing;
import io.frostlot.plan.Waiting;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bags of ten mice at 10.00, one box at 20.00 that arrives on 6 January 2031; a piece takes a litre
 * and lasts 30 days. Every optimum is derived by hand beside its check.
 */
class JointWorldTest {
  private static final Agreement WHOLE =
      new Agreement(List.of("ann"), Set.of(), new Cutting(Map.of(), false));
  private static final LocalDate FIRST = LocalDate.parse("2031-01-08");
  private static final LocalDate SECOND = LocalDate.parse("2031-01-15");
  @TempDir Path folder;

  @BeforeEach
  void suppliers() throws IOException {
    put(
        "supplier-profiles/north/profile.json",
        """
        {"name": "North (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "shipping": {"toMe": {"firstBox": 20, "transitEarliestDays": 1}},
         "delivery": {"by": "carrier", "shipWeekdays": ["sun"],
                      "closed": ["2031-01-12/2031-12-31"]}}
        """);
    put(
        "supplier-profiles/north/prices.csv",
        "item,kind,least_g,most_g,pack_count,price,litres_per_piece\nMouse,mouse,20,30,10,10,1\n");
    put(
        "supplier-profiles/corner/profile.json",
        """
        {"name": "Corner (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "shop"}}
        """);
    put(
        "supplier-profiles/corner/prices.csv",
        "item,kind,least_g,most_g,pack_count,price,litres_per_piece\nMouse,mouse,20,30,1,4,1\n");
  }

  /** Alone each pays 10 + 20. */
  @Test
  void a_group_of_one_is_the_plain_plan() throws IOException {
    Keeper ann = keeper("ann", 100, "5,2031-01-10", "north");

    World joint = JointWorld.of(List.of(ann), WHOLE).orElseThrow();

    assertThat(joint).isEqualTo(World.of(ann.scenario()));
    assertThat(cost(joint)).isEqualTo(met(30));
  }

  /** Two bags and one box, 2 x 10 + 20; cut in halves one bag does, 10 + 20. */
  @Test
  void a_bag_that_may_be_cut_serves_two() throws IOException {
    List<Keeper> two =
        List.of(
            keeper("ann", 100, "5,2031-01-10", "north"),
            keeper("bo", 100, "5,2031-01-10", "north"));

    assertThat(cost(two, WHOLE)).isEqualTo(met(40));
    assertThat(cost(two, cutInto(5))).isEqualTo(met(30));
    assertThat(cost(two, cutInto(6))).isEqualTo(met(40));
  }

  /** Three need 4, 3 and 3: portions of three do, of four do not, for 4 + 4 + 2 has a two. */
  @Test
  void a_portion_has_at_least_so_many_pieces() throws IOException {
    List<Keeper> three =
        List.of(
            keeper("ann", 100, "4,2031-01-10", "north"),
            keeper("bo", 100, "3,2031-01-10", "north"),
            keeper("cy", 100, "3,2031-01-10", "north"));

    assertThat(cost(three, cutInto(3))).isEqualTo(met(30));
    assertThat(cost(three, cutInto(4))).isEqualTo(met(40));
  }

  /** Bo has room for three pieces: the other two of its half of a bag go to Ann. */
  @Test
  void nobody_eats_from_another_keepers_freezer() throws IOException {
    List<Keeper> two =
        List.of(
            keeper("ann", 100, "5,2031-01-10", "north"), keeper("bo", 3, "5,2031-01-10", "north"));

    Answer.Judged plan = plan(JointWorld.of(two, cutInto(3)).orElseThrow());

    assertThat(plan.standing()).isEqualTo(new Standing(2, 0, 0, Money.of(30)));
    Handed handed = Handed.of(JointWorld.of(two, cutInto(3)).orElseThrow(), plan.plan()).get(0);
    assertThat(handed.pieces()).isEqualTo(Map.of("ann", 7, "bo", 3));
  }

  /** The box comes on the 6th and bo collects on the 8th, which ann must keep for two days. */
  @Test
  void what_is_collected_later_waits_at_the_hosts() throws IOException {
    Agreement collected = new Agreement(List.of("ann"), Set.of(FIRST), cutInto(5).cutting());

    assertThat(cost(collecting(new Waiting(litres("5"), 2)), collected)).isEqualTo(met(30));
    assertThat(cost(collecting(new Waiting(litres("5"), 1)), collected).unmetMust()).isEqualTo(5);
    assertThat(cost(collecting(new Waiting(litres("4.999"), 2)), collected).unmetMust())
        .isEqualTo(5);
  }

  private List<Keeper> collecting(Waiting waiting) throws IOException {
    Keeper ann = keeper("ann", 100, "5,2031-01-10", "north");
    return List.of(
        new Keeper("ann", ann.scenario(), waiting), keeper("bo", 100, "5,2031-01-10", "north"));
  }

  /** Bo eats three on the 10th and three on the 17th but has room for three: it collects twice. */
  @Test
  void a_tiny_freezer_is_filled_at_two_hand_overs() throws IOException {
    Agreement collected =
        new Agreement(List.of("ann"), Set.of(FIRST, SECOND), cutInto(1).cutting());
    Keeper ann = keeper("ann", 100, "4,2031-01-10", "north");
    Keeper bo = keeper("bo", 3, "3,2031-01-10\nmouse,20,30,3,2031-01-17", "north");

    assertThat(
            cost(
                List.of(new Keeper("ann", ann.scenario(), new Waiting(litres("6"), 9)), bo),
                collected))
        .isEqualTo(met(30));
    assertThat(
            cost(
                    List.of(new Keeper("ann", ann.scenario(), new Waiting(litres("6"), 8)), bo),
                    collected)
                .unmetMust())
        .isEqualTo(3);
  }

  /** One more piece at the shop for 4 beats a second bag for 10: ann needs 5, bo 6. */
  @Test
  void a_member_may_fetch_for_itself() throws IOException {
    List<Keeper> two =
        List.of(
            keeper("ann", 100, "5,2031-01-10", "north"),
            keeper("bo", 100, "6,2031-01-10", "north\", \"corner"));

    assertThat(cost(two, cutInto(5))).isEqualTo(met(34));
  }

  @Test
  void without_a_host_nothing_is_ordered_together() throws IOException {
    List<Keeper> two =
        List.of(
            keeper("bo", 100, "5,2031-01-10", "north"), keeper("cy", 100, "5,2031-01-10", "north"));

    assertThat(JointWorld.of(two, WHOLE)).isEmpty();
  }

  private static Agreement cutInto(int pieces) {
    return new Agreement(List.of("ann"), Set.of(), new Cutting(Map.of("Mouse x10", pieces), false));
  }

  private static Standing met(long money) {
    return new Standing(0, 0, 0, Money.of(money));
  }

  private static Litres litres(String litres) {
    return Litres.of(new BigDecimal(litres));
  }

  private static Standing cost(List<Keeper> keepers, Agreement agreement) {
    return cost(JointWorld.of(keepers, agreement).orElseThrow());
  }

  private static Standing cost(World world) {
    return plan(world).standing();
  }

  private static Answer.Judged plan(World world) {
    Limits limits = new Limits(Duration.ofMinutes(10), OptionalInt.of(100));
    return ((Answer.WithPlan) Engine.solve(world, limits, Watch.NONE)).plan();
  }

  /**
   * A keeper.
   *
   * @param needs pieces and day, further rows in full
   */
  private Keeper keeper(String name, int litres, String needs, String suppliers)
      throws IOException {
    put(name + "/needs.csv", "kind,least_g,most_g,pieces,date\nmouse,20,30," + needs + "\n");
    put(name + "/freezers.csv", "name,usable_litres,kind,life_days\nBox," + litres + ",deep,30\n");
    put(
        name + "/scenario.json",
        """
        {"name": "Test", "from": "2031-01-01", "planningDays": 30, "currency": "EUR",
         "policy": {"endValue": "none",
          "charges": {"perOrder": 0, "perDeliveryDay": 0}}, "suppliers": ["%s"]}
        """
            .formatted(suppliers));
    Reading reading =
        ScenarioFolder.read(folder.resolve(name), folder.resolve("supplier-profiles"));
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    return new Keeper(name, ((Reading.Accepted) reading).scenario(), Waiting.NONE);
  }

  private void put(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }
}
