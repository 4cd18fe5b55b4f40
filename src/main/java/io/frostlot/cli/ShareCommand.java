package io.frostlot.cli;

import io.frostlot.app.ShareBox;
import io.frostlot.files.InvoiceJson;
import io.frostlot.files.Problem;
import io.frostlot.files.ShareJson;
import io.frostlot.files.ShareTable;
import io.frostlot.files.WholeFile;
import io.frostlot.plan.Shared;
import io.frostlot.program.Glop;
import io.frostlot.program.Limits;
import io.frostlot.report.ShareReport;
import java.nio.file.Path;
import java.util.ArrayList;
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
      "4:no plan in the time given, or a member whose own plan is impossible"
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
      description = "Also write what each joint order's invoice should say, for settle.")
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
                () -> ExitCode.NOTHING_IN_TIME, () -> shareBox.share(ready.group(), work, watch));
    desk.terminal().clearStatus();
    return shared.map(found -> print(found, ready.warnings())).orElseGet(this::nothing);
  }

  private int nothing() {
    desk.terminal()
        .err()
        .println(
            "A member has no plan of its own in the time given; plan its folder by itself to see"
                + " why.");
    return ExitCode.NOTHING_IN_TIME;
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
    List<Problem> problems = new ArrayList<>();
    for (Path folderOfInvoices : Usual.given(invoices)) {
      Map<String, String> expected = InvoiceJson.all(shared);
      expected.forEach(
          (name, text) ->
              new WholeFile(folderOfInvoices.resolve(name)).write(text).ifPresent(problems::add));
      if (expected.isEmpty()) {
        desk.terminal().err().println("Nothing is ordered together: no invoice was written.");
      }
    }
    problems.forEach(it -> desk.terminal().err().println(it));
    return page.write(
        desk.terminal(),
        report::html,
        problems.isEmpty() ? ExitCode.PLAN : ExitCode.INPUT_PROBLEMS);
  }

  private Limits limits(String option, double typed, int most) {
    return usual.limits(usual.time(option, typed, most, effort), effort);
  }
}
