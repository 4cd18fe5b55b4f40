package io.frostlot.sharing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.program.Glop;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each way satisfies the axioms of its table on every random bill, and breaks each other one. */
class AxiomsTest {
  private static final double CLOSE = 1e-5;
  private static final long SEED = 20_310_106;
  private static final int BILLS = Integer.getInteger("frostlot.bills", 60);
  private static final Sharing SHARING = new Sharing(Percent.of("50"), new Glop());

  @ParameterizedTest
  @EnumSource(Way.class)
  void a_way_keeps_its_axioms_and_breaks_the_others(Way way) {
    Random random = new Random(SEED);
    Set<Axiom> kept = EnumSet.allOf(Axiom.class);
    for (int i = 0; i < BILLS; i++) {
      int members = 2 + random.nextInt(3);
      Game game = Games.random(members, random);
      List<Burden> burdens = burdens(members, random);
      kept.removeIf(axiom -> !holds(axiom, way, new Bill(game, burdens), random));
    }
    assertThat(kept).as("seed %d", SEED).isEqualTo(way.axioms());
  }

  private static List<Burden> burdens(int members, Random random) {
    return IntStream.range(0, members)
        .mapToObj(
            i ->
                new Burden(
                    Money.of(random.nextInt(20)),
                    Money.of(1 + random.nextInt(20)),
                    Grams.of(1.0 + random.nextInt(500)),
                    new Litres(1 + random.nextInt(1000))))
        .toList();
  }

  private static boolean holds(Axiom axiom, Way way, Bill bill, Random random) {
    return switch (axiom) {
      case EFFICIENCY -> efficient(way, bill);
      case SYMMETRY -> symmetric(way, bill);
      case NULL_MEMBER -> nothingForNothing(way, bill);
      case ADDITIVITY -> additive(way, bill, random);
      case STAND_ALONE -> noneAboveAlone(way, bill);
    };
  }

  private static boolean efficient(Way way, Bill bill) {
    double[] shares = SHARING.of(bill, way);
    double sum = IntStream.range(0, shares.length).mapToDouble(i -> shares[i]).sum();
    Money total = Money.of((long) bill.game().toShare());
    Money settled = Rounding.settle(shares, total, 2).stream().reduce(Money.ZERO, Money::plus);
    return Math.abs(sum - bill.game().toShare()) < CLOSE && settled.equals(total);
  }

  private static boolean symmetric(Way way, Bill bill) {
    Game game = bill.game();
    Game alike =
        Games.exactly(
            bill.members(),
            some ->
                game.cost(new Subgroup(Math.min(some.bits(), Games.exchanged(some).bits())))
                    .least());
    List<Burden> burdens = new ArrayList<>(bill.burdens());
    burdens.set(1, burdens.get(0));
    double[] shares = SHARING.of(new Bill(alike.splitting(), burdens), way);
    return Math.abs(shares[0] - shares[1]) < CLOSE;
  }

  private static boolean nothingForNothing(Way way, Bill bill) {
    Game game = bill.game();
    Game last =
        Games.exactly(
            bill.members() + 1,
            some -> game.cost(some.without(Subgroup.of(bill.members()))).least());
    List<Burden> burdens = new ArrayList<>(bill.burdens());
    burdens.add(new Burden(Money.ZERO, Money.ZERO, Grams.ZERO, Litres.ZERO));
    return Math.abs(SHARING.of(new Bill(last, burdens), way)[bill.members()]) < CLOSE;
  }

  /** Two bills over the same goods: what each adds up to, and what both add up to. */
  private static boolean additive(Way way, Bill bill, Random random) {
    Game other = Games.random(bill.members(), random);
    List<Burden> others = new ArrayList<>();
    List<Burden> sums = new ArrayList<>();
    for (Burden burden : bill.burdens()) {
      Money own = Money.of(random.nextInt(20));
      others.add(new Burden(own, burden.goods(), burden.grams(), burden.litres()));
      sums.add(new Burden(own.plus(burden.own()), burden.goods(), burden.grams(), burden.litres()));
    }
    Game sum =
        Games.exactly(
            bill.members(), some -> bill.game().cost(some).least() + other.cost(some).least());
    double[] one = SHARING.of(bill, way);
    double[] two = SHARING.of(new Bill(other, others), way);
    double[] both = SHARING.of(new Bill(sum, sums), way);
    return IntStream.range(0, both.length)
        .allMatch(i -> Math.abs(one[i] + two[i] - both[i]) < CLOSE);
  }

  private static boolean noneAboveAlone(Way way, Bill bill) {
    double[] shares = SHARING.of(bill, way);
    return IntStream.range(0, shares.length)
        .allMatch(i -> shares[i] <= bill.game().cost(Subgroup.of(i)).least() + CLOSE);
  }

  /** No other way of sharing has complaints that are less, looked at from the largest on. */
  @ParameterizedTest
  @EnumSource(value = Way.class, names = "NUCLEOLUS")
  void complaints_of_the_nucleolus_are_least(Way way) {
    Random random = new Random(SEED);
    for (int i = 0; i < BILLS; i++) {
      int members = 2 + random.nextInt(4);
      Game game = Games.random(members, random);
      double[] shares = SHARING.of(new Bill(game, burdens(members, random)), way);
      List<Double> least = complaints(game, shares);
      for (int tries = 0; tries < 50; tries++) {
        double[] moved = shares.clone();
        double by = Math.pow(10, -random.nextInt(4));
        moved[random.nextInt(members)] += by;
        moved[random.nextInt(members)] -= by;
        assertThat(compare(least, complaints(game, moved)))
            .as("seed %d, bill %d", SEED, i)
            .isLessThanOrEqualTo(0);
      }
    }
  }

  private static List<Double> complaints(Game game, double[] shares) {
    List<Double> all = new ArrayList<>();
    game.parts().forEach(some -> all.add(some.sum(shares) - game.reckoned(some)));
    all.sort(Collections.reverseOrder());
    return all;
  }

  private static int compare(List<Double> a, List<Double> b) {
    for (int i = 0; i < a.size(); i++) {
      if (Math.abs(a.get(i) - b.get(i)) > CLOSE) {
        return Double.compare(a.get(i), b.get(i));
      }
    }
    return 0;
  }

  @ParameterizedTest
  @EnumSource(Way.class)
  void one_member_pays_the_bill(Way way) {
    Game alone = Games.exactly(1, some -> 42.5);

    assertThat(SHARING.of(new Bill(alone, burdens(1, new Random(SEED))), way)[0])
        .isEqualTo(42.5, within(CLOSE));
  }
}
