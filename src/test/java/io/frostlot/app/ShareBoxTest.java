package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Payment;
import io.frostlot.plan.Shared;
import io.frostlot.program.Engine;
import io.frostlot.program.Glop;
import io.frostlot.program.Limits;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who pays what, each amount derived by hand beside its check. */
class ShareBoxTest {
  private static final String FIVE_MICE = "mouse,20,30,5,2031-01-10";
  private static final String TEN_MICE = "mouse,20,30,10,2031-01-10";
  private static final String TEN_RABBITS = "rabbit,900,1100,10,2031-01-10";
  @TempDir Path folder;

  @BeforeEach
  void suppliers() throws IOException {
    new GroupSamples(folder).suppliers();
  }

  /** Alone 10 + 20; nothing to share. */
  @Test
  void a_group_of_one_pays_its_own_plan() throws IOException {
    Shared shared = share("", FIVE_MICE);

    assertThat(pays(shared)).containsExactly(Money.of(30));
    assertThat(shared.sheets().get(0).account().saving()).isEqualTo(Money.ZERO);
    assertThat(shared.sheets().get(0).account().sureSaving()).contains(Money.ZERO);
    assertThat(shared.payments()).isEmpty();
  }

  /**
   * Fifteen mice are two bags, 20 + 20; of the 40 each has five mice, 5.00, and a third of 25.00,
   * whoever keeps the five that nobody wants. Two of them would pay 10 + 20.
   */
  @Test
  void three_with_the_same_needs_pay_the_same() throws IOException {
    Shared shared = share("", FIVE_MICE, FIVE_MICE, FIVE_MICE);

    assertThat(shared.ways()).hasSize(8);
    for (Shared.WayRow way : shared.ways()) {
      assertThat(way.pays())
          .as(way.way())
          .containsExactly(Money.of("13.34"), Money.of("13.33"), Money.of("13.33"));
    }
    assertThat(shared.payments())
        .containsExactlyInAnyOrder(
            new Payment("bo", "ann", Money.of("13.33")),
            new Payment("cy", "ann", Money.of("13.33")));
    assertThat(shared.findings().contentment().get(0).better()).isEmpty();
    assertThat(shared.findings().contentment().get(0).unsettled()).isEmpty();
    assertThat(shared.findings().contentment().get(0).pain()).isZero();
    int handed =
        shared.sheets().stream()
            .flatMap(sheet -> sheet.collected().stream())
            .mapToInt(some -> some.portion().pieces())
            .sum();
    assertThat(handed).isEqualTo(20);
  }

  @Test
  void the_host_gets_its_credit_from_the_others() throws IOException {
    Shared shared = share(", \"sharing\": {\"hostCredit\": 3}", FIVE_MICE, FIVE_MICE, FIVE_MICE);

    assertThat(pays(shared))
        .containsExactly(Money.of("10.34"), Money.of("14.83"), Money.of("14.83"));
  }

  /**
   * Ten mice and ten rabbits fill one box of twenty: 20 + 20. Half of the 20 equally, half by
   * grams: mice 250 g, rabbits 10,000 g; 10 + 5 + 10 x 250 / 10,250 = 15.24.
   */
  @Test
  void half_of_a_box_is_shared_equally_and_half_by_grams() throws IOException {
    Shared shared = share("", TEN_MICE, TEN_RABBITS);

    assertThat(pays(shared)).containsExactly(Money.of("15.24"), Money.of("24.76"));
  }

  /** Twenty mice fill a box; the ten rabbits take a second one, 20.00. */
  @Test
  void it_is_said_who_tipped_the_order_into_one_more_box() throws IOException {
    Shared shared = share("", TEN_MICE, TEN_MICE, TEN_RABBITS);

    List<Shared.Tipped> tipped = shared.findings().tipped();
    assertThat(tipped).hasSize(2);
    assertThat(tipped.get(1).lines().get(0).pack().item().name()).isEqualTo("Rabbit");
    assertThat(tipped.get(1).grams().toDouble()).isEqualTo(10_000);
    assertThat(tipped.get(1).boxesLess()).isEqualTo(1);
    assertThat(tipped.get(1).less()).isEqualTo(Money.of(20));
  }

  /** Nobody collects before the 20th, so each orders alone. */
  @Test
  void the_group_pays_no_more_than_its_parts() throws IOException {
    Shared shared = share(", \"handOvers\": [\"2031-01-20\"]", FIVE_MICE, FIVE_MICE);

    assertThat(shared.parts()).hasSize(2);
    assertThat(pays(shared)).containsExactly(Money.of(30), Money.of(30));
    assertThat(shared.payments()).isEmpty();
  }

  /**
   * Nine with five mice each: 45 mice are five bags of 10.00 in three boxes of 20.00, 110 in all,
   * 12.22 each; alone each would pay 30. The sample knows it but for its standard error.
   */
  @Test
  void many_members_have_a_sampled_shapley_value_with_its_standard_error() throws IOException {
    String[] needs = new String[9];
    Arrays.fill(needs, FIVE_MICE);

    Shared shared = share("", needs);

    assertThat(shared.ways()).hasSize(7).noneMatch(way -> way.way().equals("nucleolus"));
    Shared.WayRow sampled =
        shared.ways().stream().filter(way -> way.way().equals("shapley")).findFirst().orElseThrow();
    assertThat(sampled.pays().stream().reduce(Money.ZERO, Money::plus)).isEqualTo(Money.of(110));
    for (int i = 0; i < 9; i++) {
      double error = sampled.known().standardErrors().get(i);
      assertThat(sampled.pays().get(i).toDouble())
          .isCloseTo(110 / 9.0, Offset.offset(5 * error + 0.01));
    }
    assertThat(sampled.known().standardErrors()).anyMatch(error -> error > 0);
    assertThat(shared.findings().contentment()).isEmpty();
  }

  private static List<Money> pays(Shared shared) {
    return shared.sheets().stream().map(sheet -> sheet.account().pays().total()).toList();
  }

  private Shared share(String more, String... needs) throws IOException {
    GroupSamples samples = new GroupSamples(folder);
    List<String> names =
        List.of("ann", "bo", "cy", "dee", "ed", "flo", "gus", "hal", "ida")
            .subList(0, needs.length);
    for (int i = 0; i < needs.length; i++) {
      samples.member(names.get(i), needs[i]);
    }
    samples.group(more, names.toArray(String[]::new));
    ShareBox box = new ShareBox(Engine::solve, new Glop());
    ShareBox.Prepared prepared = box.prepare(folder, List.of(folder.resolve("supplier-profiles")));
    assertThat(prepared).isInstanceOf(ShareBox.Ready.class);
    Limits limits = new Limits(Duration.ofMinutes(10), OptionalInt.of(50));
    return box.share(
            ((ShareBox.Ready) prepared).group(),
            new ShareBox.Work(limits, Optional.of(limits)),
            new NobodyLooksOn())
        .orElseThrow();
  }
}
