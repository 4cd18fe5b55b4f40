package io.frostlot.cli;

import io.frostlot.app.ShareBox;
import io.frostlot.files.InvoiceJson;
import io.frostlot.files.OutFolder;
import io.frostlot.files.Problem;
import io.frostlot.files.ShareJson;
import io.frostlot.files.ShareTable;
import io.frostlot.plan.NothingShared;
import io.frostlot.plan.Shared;
import io.frostlot.program.Glop;
import io.frostlot.program.Limits;
import io.frostlot.report.NoShareReport;
import io.frostlot.report.ShareReport;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code share FOLDER}: what several keepers order together, and who gets and pays what. */
@Command(
    name = "share",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Plans a joint order of the keepers of a group folder and prints who pays what.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:a shared plan",
      "1:a fault of the program",
      "2:input problems",
      "3:a member's own plan is impossible; says whose, and what clashes",
      "4:no plan in the time given"
    })
final class ShareCommand implements Callable<Integer> {
  private static final int MOST_MEMBERS = 8;
  private static final int USUAL_SECONDS = 30;
  private static final int USUAL_WAYS_SECONDS = 300;
  private final Desk desk;

  @Parameters(paramLabel = "FOLDER", description = "The group folder, which holds group.json.")
  private Path folder = Usual.NOT_GIVEN;

  @Mixin private PageOption page = new PageOption();

  @Option(
      names = "--invoices",
      paramLabel = "DIR",
      description =
          "Also write what each joint order's invoice should say, for settle, into this folder"
              + " (made where missing).")
  private Path invoices = Usual.NOT_GIVEN;

  @Option(
      names = "--ways",
      description = "Show every way to share in one table, and whether anybody gains by leaving.")
  private boolean allWays;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description =
          "Stop looking for members' own plans and the joint one after N seconds (default: 30; with"
              + " --effort: no limit).")
  private double seconds = Double.NaN;

  @Option(
      names = "--ways-seconds",
      paramLabel = "N",
      description =
          "Stop planning subgroups after N seconds (default: 300; with --effort: no limit).")
  private double waysSeconds = Double.NaN;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "Stop after so many rounds of work: the same answer every time.")
  private int effort;

  @Mixin private Usual usual = new Usual();

  ShareCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Limits joint = limits("--seconds", seconds, USUAL_SECONDS);
    Limits subgroups = limits("--ways-seconds", waysSeconds, USUAL_WAYS_SECONDS);
    ShareBox shareBox = new ShareBox(desk.planner(), new Glop());
    ShareBox.Prepared prepared = shareBox.prepare(folder, usual.profiles());
    List<Problem> problems =
        page.problemsAnd(
            invoices,
            prepared instanceof ShareBox.Refused refused ? refused.problems() : List.of());
    if (!problems.isEmpty()) {
      return desk.refuse(problems, "Nothing was planned.");
    }
    ShareBox.Ready ready = (ShareBox.Ready) prepared;
    boolean needed = allWays || ready.group().terms().needsSubgroups();
    int members = ready.group().keepers().size();
    if (members > MOST_MEMBERS && ready.group().terms().way().equals("nucleolus")) {
      throw usual.wrong(
          "found "
              + members
              + " members, expected at most "
              + MOST_MEMBERS
              + " for the way nucleolus, which needs every subgroup planned");
    }
    ShareBox.Work work =
        new ShareBox.Work(joint, needed ? Optional.of(subgroups) : Optional.empty());
    ShareProgress watch =
        new ShareProgress(desk.interruption()::asked, usual.status(desk.terminal()));
    Optional<Shared> shared =
        desk.interruption()
            .guard(
                () -> nothing(watch.leftOff(ready.group()), ready.warnings()),
                () -> shareBox.share(ready.group(), work, watch));
    desk.terminal().clearStatus();
    return shared
        .map(found -> print(found, ready.warnings()))
        .orElseGet(() -> nothing(watch.leftOff(ready.group()), ready.warnings()));
  }

  /** A table has no place for why it is empty. */
  private int nothing(NothingShared nothing, List<String> warnings) {
    NoShareReport report = new NoShareReport(nothing);
    Terminal terminal = desk.terminal();
    terminal.clearStatus();
    if (usual.format() == Format.CSV) {
      terminal.err().print(report.text(terminal.columns()));
    }
    terminal
        .out()
        .print(
            switch (usual.format()) {
              case TEXT -> report.text(terminal.columns());
              case JSON -> ShareJson.text(nothing, warnings);
              case CSV -> ShareTable.empty();
            });
    terminal.out().flush();
    return page.write(
        terminal,
        report::html,
        nothing.isImpossible() ? ExitCode.IMPOSSIBLE : ExitCode.NOTHING_IN_TIME);
  }

  private int print(Shared shared, List<String> warnings) {
    ShareReport report = new ShareReport(shared, warnings);
    desk.terminal()
        .out()
        .print(
            switch (usual.format()) {
              case TEXT -> report.text(desk.terminal().columns());
              case JSON -> ShareJson.text(shared, warnings);
              case CSV -> ShareTable.of(shared);
            });
    desk.terminal().out().flush();
    Optional<Problem> problem = Optional.empty();
    for (Path folderOfInvoices : Usual.given(invoices)) {
      Map<String, String> expected = InvoiceJson.all(shared);
      if (expected.isEmpty()) {
        desk.terminal().err().println("Nothing is ordered together: no invoice was written.");
      } else {
        problem = new OutFolder(folderOfInvoices).write(expected);
      }
    }
    problem.ifPresent(desk.terminal().err()::println);
    return page.write(
        desk.terminal(),
        report::html,
        problem.isPresent() ? ExitCode.INPUT_PROBLEMS : ExitCode.PLAN);
  }

  private Limits limits(String option, double typed, int most) {
    return usual.limits(usual.time(option, typed, most, effort), effort);
  }
}
