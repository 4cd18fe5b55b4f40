package io.frostlot.app;

import io.frostlot.files.PlanFile;
import io.frostlot.files.Problem;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.PlanComparison;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Compares two plans, each a file or a scenario that is planned for it. */
public final class ComparePlans {
  private static final double SHARE = 0.45;
  private final Questions questions;
  private final Function<Path, MakePlan.Prepared> reader;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Currency> currencies = new ArrayList<>();
  private final List<Without> without = new ArrayList<>();

  /** A scenario folder for which there is no plan, or none was found. */
  public record Without(Path folder, MakePlan.Ready ready) {}

  /** A side that was read; a plan that has still to be made is made when asked for. */
  private interface Side {
    Optional<PlanComparison.Named> plan();
  }

  public ComparePlans(Questions questions, Function<Path, MakePlan.Prepared> reader) {
    this.questions = questions;
    this.reader = reader;
  }

  /** Empty where a plan was not found, or there are problems; the first without one ends it. */
  public Optional<PlanComparison> compare(Path first, Path second) {
    List<Side> sides = List.of(side(first), side(second));
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    return sides
        .get(0)
        .plan()
        .flatMap(before -> sides.get(1).plan().map(after -> PlanComparison.of(before, after)));
  }

  /**
   * What a keeper does by habit, one order a month, beside the plan; empty where either was not
   * found, or there are problems.
   */
  public Optional<PlanComparison> compareWithHabit(Path folder) {
    MakePlan.Prepared prepared = reader.apply(folder);
    if (prepared instanceof MakePlan.Refused refused) {
      problems.addAll(refused.problems());
      return Optional.empty();
    }
    MakePlan.Ready ready = (MakePlan.Ready) prepared;
    Inputs inputs = ready.inputs();
    World world = inputs.world();
    currencies.add(world.scenario().currency());
    Optional<Solved> plan = plan(folder, ready);
    if (plan.isEmpty()) {
      return Optional.empty();
    }
    return questions
        .monthly(world)
        .map(
            habit ->
                PlanComparison.of(
                    PlanComparison.Named.of(Habits.monthly(world), inputs.digest(), world, habit),
                    named(folder, inputs, plan.get())));
  }

  /** All that went wrong. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Whose plan is missing, at most one; what clashes there, if that is so, is in the questions. */
  public Optional<Without> without() {
    return without.stream().findFirst();
  }

  /** That of both plans. */
  public Currency currency() {
    return currencies.get(0);
  }

  private Side side(Path path) {
    return Files.isDirectory(path) ? scenario(path) : file(path);
  }

  private Side scenario(Path folder) {
    MakePlan.Prepared prepared = reader.apply(folder);
    if (prepared instanceof MakePlan.Refused refused) {
      problems.addAll(refused.problems());
      return Optional::empty;
    }
    MakePlan.Ready ready = (MakePlan.Ready) prepared;
    currencies.add(ready.inputs().world().scenario().currency());
    return () -> plan(folder, ready).map(solved -> named(folder, ready.inputs(), solved));
  }

  private Optional<Solved> plan(Path folder, MakePlan.Ready ready) {
    World world = ready.inputs().world();
    Optional<Solved> plan = questions.ask(world, SHARE);
    if (plan.isEmpty()) {
      questions.findClash(world);
      without.add(new Without(folder, ready));
    }
    return plan;
  }

  private static PlanComparison.Named named(Path folder, Inputs inputs, Solved solved) {
    return PlanComparison.Named.of(
        "the plan for " + inputs.world().scenario().name() + " (" + folder + ")",
        inputs.digest(),
        solved.world(),
        solved.answer().plan());
  }

  private Side file(Path path) {
    PlanFile.Reading<PlanFile> reading = PlanFile.read(path);
    if (reading instanceof PlanFile.Refused<PlanFile> refused) {
      problems.addAll(refused.problems());
      return Optional::empty;
    }
    PlanFile plan = ((PlanFile.Read<PlanFile>) reading).value();
    currencies.stream().findFirst().ifPresent(it -> sameCurrency(plan, it));
    plan.wrongSum().ifPresent(problems::add);
    if (problems.isEmpty()) {
      currencies.add(Currency.getInstance(plan.currency()));
    }
    return () ->
        Optional.of(
            new PlanComparison.Named(
                path.toString(), plan.side(), plan.outline(), plan.bill(), Map.of()));
  }

  private void sameCurrency(PlanFile plan, Currency expected) {
    plan.otherCurrency(expected.getCurrencyCode()).ifPresent(problems::add);
  }
}
