package io.frostlot.cli;

import io.frostlot.app.BudgetCost;
import io.frostlot.app.FewerOrders;
import io.frostlot.app.Habits;
import io.frostlot.app.MakePlan;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Simplest;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.function.IntSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code plan FOLDER}: what to order, how many packs, from whom, by which date. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Makes the order plan of a scenario folder and prints it.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:a plan",
      "1:a fault of the program",
      "2:input problems",
      "3:impossible; says what clashes",
      "4:no plan in the time given"
    })
final class PlanCommand implements Callable<Integer> {
  private static final int USUAL_SECONDS = 30;
  private static final Duration LEAST = Duration.ofMillis(1);
  private final Desk desk;

  @Parameters(paramLabel = "FOLDER", description = "The scenario folder.")
  private Path folder = Usual.NOT_GIVEN;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "With csv: write an order sheet per supplier into this folder.")
  private Path out = Usual.NOT_GIVEN;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "Stop looking after so many seconds (default: 30; with --effort: no limit).")
  private double seconds = Double.NaN;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description =
          "Stop after so many rounds of work: the same answer every time (default: no limit).")
  private int effort;

  @Option(
      names = "--since",
      paramLabel = "PLAN.json",
      description = "Show what differs from this earlier plan.")
  private Path since = Usual.NOT_GIVEN;

  @Option(
      names = "--no-habits",
      description =
          "With text: leave out what takes up to half the time again after the letter: the"
              + " simplest plan, and habits.")
  private boolean withoutHabits;

  @Mixin private Usual usual = new Usual();

  PlanCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Limits limits = limits();
    if (!out.equals(Usual.NOT_GIVEN) && usual.format() != Format.CSV) {
      throw usual.wrong("--out goes with --format csv");
    }
    if (!since.equals(Usual.NOT_GIVEN) && usual.format() == Format.CSV) {
      throw usual.wrong("--since goes with --format text or json");
    }
    MakePlan makePlan = new MakePlan(desk.planner());
    MakePlan.Prepared prepared =
        makePlan.prepare(new MakePlan.Request(folder, usual.profiles(), Usual.given(since)));
    if (prepared instanceof MakePlan.Refused refused) {
      return desk.refuse(refused.problems());
    }
    return plan(makePlan, (MakePlan.Ready) prepared, limits);
  }

  private int plan(MakePlan makePlan, MakePlan.Ready ready, Limits limits) {
    long start = System.nanoTime();
    Progress.Status status = usual.status(desk.terminal());
    Progress watch = new Progress(ready.inputs().world(), desk.interruption()::asked, status);
    Printer printer = new Printer(desk.terminal(), usual.format(), Usual.given(out));
    Answer answer =
        desk.interruption()
            .guard(
                () -> printer.print(ready, watch.bestOrNothing()),
                () -> makePlan.plan(ready, limits, watch));
    Duration took = Duration.ofNanos(System.nanoTime() - start);
    int exitCode = printer.print(ready, answer);
    boolean goesOn = usual.format() == Format.TEXT && !withoutHabits;
    if (goesOn && !desk.interruption().asked() && answer instanceof Answer.WithPlan found) {
      Limits share = Habits.share(limits, took);
      Watch waiting = new Comparing(desk.interruption()::asked, status);
      goOn(() -> exitCode, ready, found, new After(share, waiting, printer));
    }
    return exitCode;
  }

  /** How long what comes after the letter may take, and where it goes. */
  private record After(Limits limits, Watch watch, Printer printer) {}

  /** The simplest plan and the budget in a third of the time each, habits in what is left. */
  private void goOn(IntSupplier asked, MakePlan.Ready ready, Answer.WithPlan found, After after) {
    World world = ready.inputs().world();
    long start = System.nanoTime();
    FewerOrders fewer = new FewerOrders(desk.planner());
    Limits third = after.limits().part(3);
    Simplest simplest =
        desk.interruption().guard(asked, () -> fewer.than(found, world, third, after.watch()));
    after.printer().print(ready, found, simplest);
    if (!desk.interruption().asked()) {
      BudgetCost budget = new BudgetCost(desk.planner());
      desk.interruption()
          .guard(asked, () -> budget.of(found, world, third, after.watch()))
          .ifPresent(cost -> after.printer().print(ready, found, cost));
    }
    if (!desk.interruption().asked()) {
      Habits habits = new Habits(desk.planner());
      Limits rest = rest(after.limits(), start);
      Comparison compared =
          desk.interruption().guard(asked, () -> habits.compare(world, found, rest, after.watch()));
      after.printer().print(ready, found, compared);
    }
  }

  private static Limits rest(Limits limits, long start) {
    Duration left = limits.time().minusNanos(System.nanoTime() - start);
    return new Limits(left.compareTo(LEAST) < 0 ? LEAST : left, limits.rounds());
  }

  private Limits limits() {
    double most =
        !Double.isNaN(seconds) ? seconds : effort > 0 ? Usual.MOST_SECONDS : USUAL_SECONDS;
    return usual.limits(usual.time("--seconds", most), effort);
  }
}
