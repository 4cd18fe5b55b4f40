package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.app.SecondLooks;
import io.frostlot.files.Problem;
import io.frostlot.plan.Answer;
import io.frostlot.plan.SecondLook;
import io.frostlot.plan.Solved;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
  private final Desk desk;

  @Parameters(paramLabel = "FOLDER", description = "The scenario folder.")
  private Path folder = Usual.NOT_GIVEN;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "With csv: write an order sheet per supplier into this folder (made where missing).")
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
      description =
          "Keep what this earlier plan orders soon unless a change saves enough, and show what"
              + " differs.")
  private Path since = Usual.NOT_GIVEN;

  @Option(
      names = "--plan-only",
      description =
          "With text or json: leave out what is looked for once the plan is known (the simplest"
              + " plan, what a budget costs, what is left in boxes, habits, what to find out), which"
              + " takes up to half the time again.")
  private boolean planOnly;

  @Mixin private PageOption page = new PageOption();

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
    MakePlan makePlan = new MakePlan(desk.planner());
    MakePlan.Prepared prepared =
        makePlan.prepare(new MakePlan.Request(folder, usual.profiles(), Usual.given(since)));
    List<Problem> problems =
        page.problemsAnd(
            out, prepared instanceof MakePlan.Refused refused ? refused.problems() : List.of());
    if (!problems.isEmpty()) {
      return desk.refuse(problems);
    }
    return plan(makePlan, (MakePlan.Ready) prepared, limits);
  }

  private int plan(MakePlan makePlan, MakePlan.Ready ready, Limits limits) {
    long start = System.nanoTime();
    Progress.Status status = usual.status(desk.terminal());
    Progress watch = new Progress(ready.inputs().world(), desk.interruption()::asked, status);
    Printer printer = new Printer(desk, usual.format(), Usual.given(out), page);
    Answer answer =
        desk.interruption()
            .guard(
                () -> printer.whole(ready, watch.bestOrNothing()),
                () -> makePlan.plan(ready, limits, watch));
    Duration took = Duration.ofNanos(System.nanoTime() - start);
    boolean goesOn = usual.format() != Format.CSV && !planOnly;
    if (goesOn && !desk.interruption().asked() && answer instanceof Answer.WithPlan found) {
      Watch waiting = new Comparing(desk.interruption()::asked, status);
      Solved shown = new Solved(ready.inputs().world(), found);
      Limits share = SecondLooks.share(limits, took);
      return goOn(ready, shown, printer, new SecondLooks(desk.planner(), shown, share, waiting));
    }
    return printer.whole(ready, answer);
  }

  /** A letter goes on piece by piece, JSON waits for all of them. */
  private int goOn(MakePlan.Ready ready, Solved shown, Printer printer, SecondLooks looks) {
    boolean isLetter = usual.format() == Format.TEXT;
    List<SecondLook> seen = new ArrayList<>();
    int letter = isLetter ? printer.print(ready, shown.answer(), seen) : ExitCode.PLAN;
    IntSupplier printed = () -> isLetter ? letter : printer.print(ready, shown.answer(), seen);
    IntSupplier end = () -> printer.page(ready, shown.answer(), seen, printed.getAsInt());
    while (looks.hasNext() && !desk.interruption().asked()) {
      Optional<SecondLook> next = desk.interruption().guard(end, looks::next);
      next.ifPresent(seen::add);
      if (isLetter) {
        next.ifPresent(look -> printer.goOn(ready, shown.answer(), look));
      }
    }
    return end.getAsInt();
  }

  private Limits limits() {
    return usual.limits(usual.time("--seconds", seconds, USUAL_SECONDS, effort), effort);
  }
}
