package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.World;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** HiGHS in a process of its own against SCIP, and what becomes of it when it is stopped. */
final class HighsTest {
  private static final BranchAndBound.Watched NOBODY =
      new BranchAndBound.Watched(() -> false, point -> {});

  /** A knapsack of many like weights, which branch and bound does not settle in a minute. */
  static Model knapsack(int columns) {
    Model model = new Model();
    Linear weight = new Linear();
    Linear worth = new Linear();
    for (int i = 0; i < columns; i++) {
      Var taken = model.yesNo();
      double w = 1_000_000.0 + (i * 7_919L * 104_729) % 900_001;
      weight.plus(w, taken);
      worth.plus(-(w + i * 31 % 7), taken);
    }
    model.atMost("weight", weight.copy(), 0.37 * -worth.at(ones(columns)));
    model.minimise(Level.MONEY, worth);
    return model;
  }

  private static double[] ones(int columns) {
    double[] ones = new double[columns];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static Scip.Task task(Linear objective, long millis) {
    return Scip.Task.of(objective, List.of(), false, Scip.Budget.ofMillis(millis));
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 4, 5, 6, 7, 8})
  void comes_to_what_scip_comes_to(long seed) {
    World world = TinyWorlds.of(seed);
    Model model = Rules.program(world).model();
    Linear objective = Weights.of(world).objective(model);
    Scip.End scip = Scip.minimise(model, task(objective, 60_000));
    Scip.End highs = Highs.minimise(model, task(objective, 60_000), NOBODY);
    assertThat(highs.finished()).isTrue();
    assertThat(highs.found()).isEqualTo(scip.found());
    if (scip.found()) {
      assertThat(objective.at(highs.point())).isCloseTo(objective.at(scip.point()), within(1e-3));
      assertThat(highs.bound()).isCloseTo(scip.bound(), within(1e-2));
    }
  }

  /** Bounds on the way are none that SCIP's best solution is below; a constant counts too. */
  @ParameterizedTest
  @ValueSource(longs = {3, 4, 5, 6, 7, 8})
  void tells_bounds_that_hold(long seed) {
    World world = TinyWorlds.of(seed);
    Model model = Rules.program(world).model();
    Linear objective = Weights.of(world).objective(model).plus(1000);
    Scip.End scip = Scip.minimise(model, task(objective, 60_000));
    List<Double> bounds = new ArrayList<>();
    Highs.minimise(
        model,
        task(objective, 60_000),
        new BranchAndBound.Watched(() -> false, point -> {}, bounds::add));
    assertThat(bounds).isSorted();
    if (scip.found()) {
      double best = objective.at(scip.point());
      assertThat(bounds).isNotEmpty().allSatisfy(it -> assertThat(it).isLessThan(best + 1e-3));
      assertThat(bounds.get(bounds.size() - 1)).isCloseTo(best, within(1e-2));
    }
  }

  /** Lines as HiGHS 1.12 writes them, with other numbers; the last one is not whole yet. */
  @Test
  void a_bound_is_read_from_a_log() throws IOException {
    HighsAnswers answers = HighsAnswers.create();
    assertThat(answers.bound()).isEqualTo(Double.NEGATIVE_INFINITY);
    String before =
        """
        Src  Proc. InQueue |  Leaves   Expl. | BestBound       BestSol              Gap |   Cuts
                 0       0         0   0.00%   -inf            inf                  inf |      0
         L       0       0         0   0.00%   568.25          630.66975          9.87% |  10379
        """;
    Files.writeString(answers.log(), before);
    assertThat(answers.bound()).isCloseTo(568.25, within(0.01)).isLessThan(568.25);
    String after =
        """
                19      19         1  12.50%   1.5e+03         1630               9.86% |   9564
        """;
    Files.writeString(answers.log(), before + after + "  Dual bound        -5");
    assertThat(answers.bound()).isCloseTo(1500, within(0.01));
    Files.writeString(answers.log(), before + "  Dual bound        -571.5\n");
    assertThat(answers.bound()).isCloseTo(-571.5, within(0.01));
    answers.delete();
    assertThat(answers.folder()).doesNotExist();
  }

  @Test
  void says_that_nothing_satisfies_the_rows() {
    Model model = new Model();
    Var one = model.whole(0, 10);
    model.atLeast("three", new Linear().plus(2, one), 5);
    model.atMost("three", new Linear().plus(2, one), 5);
    assertThat(Highs.minimise(model, task(Linear.of(one), 10_000), NOBODY).impossible()).isTrue();
  }

  @Test
  void tells_what_it_finds_on_the_way_and_ends_when_told_to() {
    Model model = knapsack(60);
    List<Double> values = new ArrayList<>();
    AtomicBoolean stop = new AtomicBoolean();
    Linear objective = model.objective(Level.MONEY);
    Scip.End end =
        Highs.minimise(
            model,
            task(objective, 600_000),
            new BranchAndBound.Watched(
                stop::get,
                point -> {
                  values.add(objective.at(point));
                  stop.set(true);
                }));
    assertThat(end.finished()).isFalse();
    assertThat(end.bound()).isLessThanOrEqualTo(objective.at(end.point()));
    assertThat(values).isNotEmpty();
    assertThat(objective.at(end.point())).isEqualTo(values.get(values.size() - 1));
  }

  @Test
  void keeps_what_it_found_when_its_time_or_its_rounds_are_over() {
    Model model = knapsack(60);
    Scip.Task timed = task(model.objective(Level.MONEY), 1500);
    Scip.Task counted = timed.within(new Scip.Budget(600_000, OptionalInt.of(1)));
    for (Scip.Task task : List.of(timed, counted)) {
      Scip.End end = Highs.minimise(model, task, NOBODY);
      assertThat(end.finished()).isFalse();
      assertThat(end.found()).isTrue();
      assertThat(end.point()).hasSize(60);
    }
  }

  @Test
  void a_process_that_dies_is_survived_and_leaves_nothing_behind() throws IOException {
    HighsCall call = HighsCall.start();
    Model model = knapsack(60);
    call.ask(model, task(model.objective(Level.MONEY), 600_000));
    Path folder = call.answers().folder();
    assertThat(folder).isDirectory();
    call.process().destroyForcibly();
    call.process().onExit().join();
    assertThat(call.end()).isEmpty();
    call.close();
    assertThat(folder).doesNotExist();
  }

  @Test
  void the_process_ends_with_its_input_and_leaves_nothing_behind() throws IOException {
    HighsCall call = HighsCall.start();
    Model model = knapsack(60);
    call.ask(model, task(model.objective(Level.MONEY), 600_000));
    call.questions().close();
    call.process().onExit().join();
    assertThat(call.answers().folder()).doesNotExist();
  }

  @Test
  void solutions_are_read_from_half_a_file() throws IOException {
    HighsAnswers answers = HighsAnswers.create();
    Files.writeString(
        answers.solutions(),
        "Objective 3\n# Columns 2\na 1\nb 2\nObjective 2\n# Columns 2\na 0.5\nb 1e-3\nObj"
            + "ective 1\n# Columns 2\na 7\n");
    HighsAnswers.Found found = answers.newest(0, 2).orElseThrow();
    assertThat(found.point()).containsExactly(0.5, 0.001);
    assertThat(answers.newest(found.end(), 2)).isEmpty();
    answers.delete();
    try (Stream<Path> left = Files.list(answers.folder().getParent())) {
      assertThat(left).doesNotContain(answers.folder());
    }
  }
}
