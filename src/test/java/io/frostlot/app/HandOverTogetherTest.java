package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.GroupFolder;
import io.frostlot.files.GroupReading;
import io.frostlot.plan.Agreement;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Group;
import io.frostlot.plan.JointWorld;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Waiting;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.PutTogether;
import io.frostlot.program.Watch;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Members' own plans put together where the others collect on one day only, 9 January; all money
 * derived by hand. North delivers on 6, 13 and 20 January; what is ordered waits a week at Ann's.
 */
class HandOverTogetherTest {
  private static final Limits ROUNDS = new Limits(Duration.ofMinutes(10), OptionalInt.of(50));
  @TempDir Path folder;
  private GroupSamples samples = new GroupSamples(Path.of(""));

  @BeforeEach
  void suppliers() throws IOException {
    samples = new GroupSamples(folder);
    samples.suppliers();
    samples.put(
        "supplier-profiles/north/profile.json",
        """
        {"name": "North (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "boxing": {"boxPieces": 20},
         "shipping": {"toMe": {"firstBox": 20, "transitEarliestDays": 1}},
         "delivery": {"by": "carrier", "shipWeekdays": ["sun"],
                      "closed": ["2031-01-20/2031-12-31"]}}
        """);
  }

  private Answer.Judged together(long waitingLitres, String ann, String bo) throws IOException {
    samples.member("ann", ann);
    samples.member("bo", bo);
    samples.group("", "ann", "bo");
    Group read =
        ((GroupReading.Accepted) GroupFolder.read(folder, folder.resolve("supplier-profiles")))
            .group();
    Waiting waiting = new Waiting(new Litres(waitingLitres * 1_000_000), 7);
    List<Keeper> keepers =
        read.keepers().stream().map(it -> new Keeper(it.name(), it.scenario(), waiting)).toList();
    Agreement agreement =
        new Agreement(
            List.of("ann"), Set.of(LocalDate.parse("2031-01-09")), read.agreement().cutting());
    Map<Keeper, Plan> alone = new LinkedHashMap<>();
    for (Keeper keeper : keepers) {
      Answer answer = Engine.solve(World.of(keeper.scenario()), ROUNDS, Watch.NONE);
      alone.put(keeper, ((Answer.WithPlan) answer).plan().plan());
    }
    World world = JointWorld.of(keepers, agreement).orElseThrow();
    return Engine.judge(world, PutTogether.of(world, alone).orElseThrow()).orElseThrow();
  }

  /** Alone 10 + 20 each, Bo's the latest delivery; what he can collect came on the 6th: 40. */
  @Test
  void an_order_moves_to_the_delivery_that_can_be_collected() throws IOException {
    Answer.Judged judged =
        together(50, "rabbit,900,1100,10,2031-01-10", "mouse,20,30,10,2031-01-25");

    assertThat(judged.standing().money()).isEqualTo(Money.of(40));
    assertThat(judged.standing().unmetMust()).isZero();
    assertThat(judged.plan().orders()).hasSize(1);
  }

  /**
   * Bo's mice are needed on the 8th: they come a day too late, and the bag is there all the same.
   */
  @Test
  void what_comes_too_late_is_not_eaten() throws IOException {
    Answer.Judged judged =
        together(50, "rabbit,900,1100,10,2031-01-10", "mouse,20,30,10,2031-01-08");

    assertThat(judged.standing().money()).isEqualTo(Money.of(40));
    assertThat(judged.standing().unmetMust()).isEqualTo(10);
  }

  /** Ten litres of Bo's do not fit into five: only Ann's bag is ordered, 10 + 20. */
  @Test
  void what_does_not_fit_at_the_hosts_is_not_ordered() throws IOException {
    Answer.Judged judged =
        together(5, "rabbit,900,1100,10,2031-01-10", "mouse,20,30,10,2031-01-25");

    assertThat(judged.standing().money()).isEqualTo(Money.of(30));
    assertThat(judged.standing().unmetMust()).isEqualTo(10);
  }

  /**
   * Bo has one mouse that keeps until March and needs one on the 8th and one on the 12th: alone he
   * may eat the bag's first, together only what is in hand is there on the 8th.
   */
  @Test
  void who_waits_for_the_box_leaves_what_is_in_hand_to_who_cannot() throws IOException {
    samples.put(
        "bo/stock.csv",
        """
            lot,supplier,item,pieces,freezer,arrived,use_by
            a,north,Mouse,1,Box,2030-12-20,2031-03-01
            """);

    Answer.Judged judged =
        together(
            50,
            "rabbit,900,1100,10,2031-01-10",
            "mouse,20,30,1,2031-01-08\nmouse,20,30,1,2031-01-12");

    assertThat(judged.standing().unmetMust()).isZero();
    assertThat(judged.plan().feedings())
        .filteredOn(feeding -> feeding.mealId().startsWith("bo"))
        .extracting(Feeding::day)
        .containsExactly(LocalDate.parse("2031-01-08"), LocalDate.parse("2031-01-12"));
  }
}
