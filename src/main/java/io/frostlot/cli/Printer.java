package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.files.OrderSheets;
import io.frostlot.files.PlanJson;
import io.frostlot.files.Problem;
import io.frostlot.files.SheetFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.SecondLook;
import io.frostlot.report.NoPlanReport;
import io.frostlot.report.PlanReport;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Prints answers in one format.
 *
 * @param sheets folder for order sheets, at most one; none: one sheet on the output
 */
record Printer(Terminal terminal, Format format, List<Path> sheets) {

  /** Returns the exit code. */
  int print(MakePlan.Ready ready, Answer answer) {
    return print(ready, answer, List.of());
  }

  /**
   * The same with what was looked for besides, which only JSON has in the same document.
   *
   * @param looks at most one of each kind
   */
  int print(MakePlan.Ready ready, Answer answer, List<SecondLook> looks) {
    Optional<Problem> problem = Optional.empty();
    terminal.clearStatus();
    switch (format) {
      case TEXT -> terminal.out().print(text(ready, answer));
      case JSON -> terminal.out().print(json(ready, answer, looks));
      case CSV -> problem = csv(ready.inputs(), answer);
    }
    terminal.out().flush();
    if (problem.isPresent()) {
      terminal.err().println(problem.get());
      return ExitCode.INPUT_PROBLEMS;
    }
    return terminal.out().checkError() ? ExitCode.FAULT : exitCode(answer);
  }

  /** The letter goes on. */
  void goOn(MakePlan.Ready ready, Answer.WithPlan found, SecondLook look) {
    terminal.clearStatus();
    terminal.out().print(report(ready, found).text(look, terminal.columns()));
    terminal.out().flush();
  }

  private String text(MakePlan.Ready ready, Answer answer) {
    return answer instanceof Answer.WithPlan found
        ? report(ready, found).text(terminal.columns())
        : new NoPlanReport(ready.inputs(), answer).text(terminal.columns());
  }

  private static String json(MakePlan.Ready ready, Answer answer, List<SecondLook> looks) {
    return answer instanceof Answer.WithPlan found
        ? PlanJson.text(ready.inputs(), found, report(ready, found).changes(), looks)
        : PlanJson.text(ready.inputs(), answer);
  }

  private static PlanReport report(MakePlan.Ready ready, Answer.WithPlan found) {
    Outcome outcome = Outcome.of(ready.inputs().world(), found.plan().plan());
    return new PlanReport(
        ready.inputs(), found, outcome, ready.changes(found, outcome).stream().toList());
  }

  private Optional<Problem> csv(Inputs inputs, Answer answer) {
    if (!(answer instanceof Answer.WithPlan found)) {
      terminal.err().print(new NoPlanReport(inputs, answer).text(terminal.columns()));
      return Optional.empty();
    }
    if (sheets.isEmpty()) {
      terminal.out().print(OrderSheets.all(inputs.world(), found.plan().plan()));
      return Optional.empty();
    }
    return new SheetFolder(sheets.get(0))
        .write(OrderSheets.bySupplier(inputs.world(), found.plan().plan()));
  }

  private static int exitCode(Answer answer) {
    if (answer instanceof Answer.WithPlan) {
      return ExitCode.PLAN;
    }
    return answer instanceof Answer.Impossible ? ExitCode.IMPOSSIBLE : ExitCode.NOTHING_IN_TIME;
  }
}
