package io.frostlot.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.LinearSolver;
import io.frostlot.program.Glop;
import java.util.Map;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Games whose shares are in print. */
class PublishedGamesTest {
  private static final Offset<Double> CLOSE = Offset.offset(1e-6);
  private static final LinearSolver SOLVER = new Glop();

  /**
   * S. C. Littlechild, G. Owen, "A Simple Expression for the Shapley Value in a Special Case",
   * Management Science 20(3), 1973: a group costs its dearest member. The nucleolus is computed.
   */
  @Test
  void a_runway_is_shared_by_four_kinds_of_aircraft() {
    double[] alone = {8, 11, 13, 18};
    Game runway =
        Games.exactly(
            4, some -> some.members().stream().mapToDouble(i -> alone[i]).max().orElse(0));

    assertThat(Shapley.of(runway)).containsExactly(new double[] {2, 3, 4, 9}, CLOSE);
    assertThat(Nucleolus.of(runway, SOLVER))
        .containsExactly(new double[] {3.25, 3.25, 3.25, 8.25}, CLOSE);
    assertThat(LeastPain.core(runway, SOLVER)).isEqualTo(LeastPain.Core.THERE);
  }

  /**
   * Four players of the documentation of the R package CoopGame, as savings on 30 each: the Shapley
   * value is not in the core, because the first, third and fourth get 15.75 together and could have
   * 16.
   */
  @Test
  void what_each_adds_may_give_some_a_reason_to_leave() {
    Map<Integer, Double> savings =
        Map.ofEntries(
            Map.entry(0b0011, 5.0),
            Map.entry(0b0101, 5.0),
            Map.entry(0b1001, 8.0),
            Map.entry(0b0110, 9.0),
            Map.entry(0b1010, 10.0),
            Map.entry(0b1100, 8.0),
            Map.entry(0b0111, 13.0),
            Map.entry(0b1011, 15.0),
            Map.entry(0b1101, 16.0),
            Map.entry(0b1110, 17.0),
            Map.entry(0b1111, 21.0));
    Game game = Games.exactly(4, some -> 30 * some.size() - savings.getOrDefault(some.bits(), 0.0));

    double[] shapley = {30 - 47 / 12.0, 30 - 21 / 4.0, 30 - 21 / 4.0, 30 - 79 / 12.0};
    assertThat(Shapley.of(game)).containsExactly(shapley, CLOSE);
    assertThat(Leaving.of(game, shapley, 0).better()).contains(new Subgroup(0b1101));
    double[] nucleolus = Nucleolus.of(game, SOLVER);
    assertThat(nucleolus).containsExactly(new double[] {26.5, 25.5, 24.5, 22.5}, CLOSE);
    assertThat(Leaving.of(game, nucleolus, 0).isNobody()).isTrue();
  }

  /**
   * R. J. Aumann, M. Maschler, Journal of Economic Theory 36, 1985: estates divided among claims of
   * 100, 200 and 300; the one of 300 as read there, those of 100 and 200 from memory.
   */
  @Test
  void an_estate_is_divided_as_in_the_talmud() {
    assertThat(estate(300)).containsExactly(new double[] {50, 100, 150}, CLOSE);
    assertThat(estate(200)).containsExactly(new double[] {50, 75, 75}, CLOSE);
    assertThat(estate(100)).containsExactly(new double[] {100 / 3.0, 100 / 3.0, 100 / 3.0}, CLOSE);
  }

  private static double[] estate(double estate) {
    double[] claims = {100, 200, 300};
    Game game =
        Games.exactly(3, some -> -Math.max(0, estate - Subgroup.all(3).without(some).sum(claims)));
    double[] shares = Nucleolus.of(game, SOLVER);
    return IntStream.range(0, 3).mapToDouble(i -> -shares[i]).toArray();
  }

  /** H. P. Young, "Cost allocation", Handbook of Game Theory 2, 1994, ch. 34 (from memory). */
  @Test
  void two_towns_halve_what_they_save() {
    double[] cost = {0, 11, 7, 15};
    Game towns = Games.exactly(2, some -> cost[some.bits()]);

    assertThat(Shapley.of(towns)).containsExactly(new double[] {9.5, 5.5}, CLOSE);
    assertThat(Nucleolus.of(towns, SOLVER)).containsExactly(new double[] {9.5, 5.5}, CLOSE);
  }
}
