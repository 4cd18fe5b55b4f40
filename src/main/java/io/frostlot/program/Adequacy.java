package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRun;
import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Over any four meals in a row (over all where there are fewer), and over any eight weeks, the
 * grams fed to an animal stay within a band of its programme; only meals that are met count (see
 * {@link MealRun}).
 *
 * <p>For each run r with programme P (all in grams), least L, most M, over its meals m with target
 * t(m) and options of g(x): off(r) &gt;= 100 / P x sum of served(m, x) x (L / P x t(m) - g(x)), and
 * likewise off(r) &gt;= 100 / P x sum of served(m, x) x (g(x) - M / P x t(m)). Animals that cannot
 * be told apart share classes and one run, for their sum. The sum of off, in percent of a run's
 * programme, rounded up to a {@linkplain WholePercent whole percent}, gives way before a meal does
 * and comes before money.
 */
final class Adequacy implements Tying {
  static final String ID = "adequacy";
  private static final int MANY = 300;
  private final World world;
  private final List<MealRun> runs;

  Adequacy(World world) {
    this.world = world;
    runs = MealRuns.of(world);
  }

  /** Runs of meals that can break their band. */
  List<MealRun> runs() {
    return runs;
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String says() {
    Policy.Adequacy band = world.scenario().policy().adequacy();
    return "Over four meals in a row, or all where there are fewer, and over eight weeks an animal gets "
        + band.least()
        + " to "
        + band.most()
        + " of its programme.";
  }

  @Override
  public void impose(Program program) {
    if (runs.isEmpty()) {
      return;
    }
    Map<String, Decisions.Served> servedByMeal = program.decisions().servedByMeal();
    Linear all = new Linear();
    Set<List<Var>> seen = new HashSet<>();
    for (MealRun run : imposed()) {
      List<Decisions.Served> meals =
          run.meals().stream().map(demand -> servedByMeal.get(demand.meal().id())).toList();
      if (seen.add(meals.stream().map(Decisions.Served::missed).toList())) {
        all.plus(1, off(run, meals, program.model()));
      }
    }
    if (!all.hasNoTerms()) {
      WholePercent.impose(id(), all, program.model());
    }
  }

  /**
   * Are there so many runs that only those which do not overlap are put to the solver? That is a
   * relaxation, and much smaller; plans are judged by all of them.
   */
  @Override
  public boolean isRelaxed() {
    return runs.size() > MANY;
  }

  private List<MealRun> imposed() {
    if (!isRelaxed()) {
      return runs;
    }
    Set<String> taken = new HashSet<>();
    List<MealRun> apart = new ArrayList<>();
    for (MealRun run : runs) {
      List<String> meals = run.meals().stream().map(demand -> demand.meal().id()).toList();
      if (meals.stream().noneMatch(taken::contains)) {
        taken.addAll(meals);
        apart.add(run);
      }
    }
    return apart;
  }

  private Var off(MealRun run, List<Decisions.Served> meals, Model model) {
    double programme = run.target().toDouble();
    double least = run.band().least().toDouble() / programme;
    double most = run.band().most().toDouble() / programme;
    Linear lacking = new Linear();
    Linear beyond = new Linear();
    for (int i = 0; i < meals.size(); i++) {
      Decisions.Served served = meals.get(i);
      double target = MealRun.target(run.meals().get(i)).toDouble();
      lacking.plus(served.weighed(it -> 100 * (least * target - grams(it)) / programme));
      beyond.plus(served.weighed(it -> 100 * (grams(it) - most * target) / programme));
    }
    Var off = model.real(0, Model.INFINITY);
    model.atMost(id(), lacking.plus(-1, off), 0);
    model.atMost(id(), beyond.plus(-1, off), 0);
    return off;
  }

  private static double grams(DemandClass.Choice choice) {
    return choice.option().grams().toDouble();
  }

  @Override
  public Map<String, List<Demand>> tied() {
    Map<String, Set<Demand>> byAnimal = new TreeMap<>();
    runs.forEach(
        run ->
            byAnimal
                .computeIfAbsent(run.eater(), animal -> new LinkedHashSet<>())
                .addAll(run.meals()));
    Map<String, List<Demand>> tied = new TreeMap<>();
    byAnimal.forEach((animal, meals) -> tied.put(animal, List.copyOf(meals)));
    return tied;
  }

  @Override
  public Object wish(String animal) {
    return "";
  }

  @Override
  public Set<String> lacking(Plan plan) {
    if (runs.isEmpty()) {
      return Set.of();
    }
    Map<String, Feeding> feedings = plan.feedingsByMeal();
    return runs.stream()
        .filter(run -> run.percentOff(feedings).signum() > 0)
        .map(MealRun::eater)
        .collect(Collectors.toSet());
  }

  @Override
  public void judge(Plan plan, Books books) {
    Map<String, Feeding> feedings = runs.isEmpty() ? Map.of() : plan.feedingsByMeal();
    Map<String, Shortfall.Part> byAnimal = new TreeMap<>();
    BigDecimal all = BigDecimal.ZERO;
    for (MealRun run : runs) {
      BigDecimal off = run.percentOff(feedings);
      if (off.signum() > 0) {
        all = all.add(off);
        byAnimal.merge(
            run.eater(),
            new Shortfall.Part(run.eater(), MealRuns.days(run.meals()), off),
            Shortfall.Part::and);
      }
    }
    books.shortfall(
        new Shortfall(
            id(), Shortfall.Unit.PERCENT, WholePercent.of(all), List.copyOf(byAnimal.values())));
  }
}
