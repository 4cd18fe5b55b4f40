package io.frostlot.program;

import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Solves the program of a tiny world in the plainest way: everything whole, one level after
 * another.
 */
final class LevelByLevel {
  private static final double SLACK = 1e-6;
  private static final double HALF_UNIT = 0.0005;
  private final Program program;
  private final Optional<WholePacks> wholePacks;

  private LevelByLevel(World world, Program program, Predicate<Rule> kept) {
    this.program = program;
    wholePacks = Optional.of(new WholePacks(world)).filter(kept);
  }

  /** The program of a world with only some of its rules. */
  static Program program(World world, Grain grain, Predicate<Rule> kept) {
    Model model = new Model();
    List<Rule> rules = Rules.of(world);
    Decisions decisions = new Decisions(world, model, Formulation.of(grain), Rules.tying(rules));
    Program program = new Program(model, decisions);
    rules.stream().filter(kept).forEach(rule -> rule.impose(program));
    return program;
  }

  /** Does the program come to what is expected, with only some of its rules? */
  static boolean comesTo(Optional<Standing> expected, World world, Predicate<Rule> kept) {
    return comesTo(expected, new LevelByLevel(world, program(world, Grain.DAYS, kept), kept));
  }

  /** Does a program with all rules come to what is expected? */
  static boolean comesTo(Optional<Standing> expected, World world, Program program) {
    return comesTo(expected, new LevelByLevel(world, program, rule -> true));
  }

  private static boolean comesTo(Optional<Standing> expected, LevelByLevel solved) {
    return solved
        .best()
        .map(found -> expected.filter(standing -> same(found, standing)).isPresent())
        .orElse(expected.isEmpty());
  }

  /**
   * May the program of longer steps be as good as a standing, as a relaxation must? Cover is not
   * asked for there.
   *
   * @param grain how finely time is looked at
   */
  static boolean allows(Standing standing, World world, Grain grain) {
    Program program = program(world, grain, rule -> true);
    List<Model.Row> held = new ArrayList<>();
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.MONEY)) {
      Linear amount = program.model().objective(level);
      held.add(Model.extra(-Model.INFINITY, amount, Best.level(standing, level) + SLACK));
    }
    return new LevelByLevel(world, program, rule -> true).least(new Linear(), held).found();
  }

  /** Values of the levels of the best solution with some rows more; empty where there is none. */
  static Optional<Map<Level, Double>> held(World world, Program program, List<Model.Row> rows) {
    return new LevelByLevel(world, program, rule -> true).best(rows);
  }

  private Optional<Map<Level, Double>> best() {
    return best(List.of());
  }

  private Optional<Map<Level, Double>> best(List<Model.Row> rows) {
    Map<Level, Double> values = new EnumMap<>(Level.class);
    List<Model.Row> held = new ArrayList<>(rows);
    for (Level level : Level.values()) {
      Linear amount = program.model().objective(level);
      Scip.End end = least(amount, held);
      while (end.found() && isMended(end.point())) {
        end = least(amount, held);
      }
      if (!end.found()) {
        return Optional.empty();
      }
      double value = amount.at(end.point());
      values.put(level, value);
      held.add(Model.extra(-Model.INFINITY, amount, value + SLACK));
    }
    return Optional.of(values);
  }

  private boolean isMended(double[] point) {
    return wholePacks.filter(rule -> rule.cut(program, point)).isPresent();
  }

  private Scip.End least(Linear amount, List<Model.Row> held) {
    return Scip.minimise(
        program.model(), Scip.Task.of(amount, held, false, Scip.Budget.ofMillis(20_000)));
  }

  private static boolean same(Map<Level, Double> values, Standing standing) {
    return values.entrySet().stream()
        .allMatch(e -> Math.abs(e.getValue() - Best.level(standing, e.getKey())) < HALF_UNIT);
  }
}
