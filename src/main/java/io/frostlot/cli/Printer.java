package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.files.OrderSheets;
import io.frostlot.files.OutFolder;
import io.frostlot.files.PlanJson;
import io.frostlot.files.Problem;
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
 * @param page file for the whole letter to print, besides
 */
record Printer(Desk desk, Format format, List<Path> sheets, PageOption page) {
  Printer(Desk desk, Format format) {
    this(desk, format, List.of(), new PageOption());
  }

  private Terminal terminal() {
    return desk.terminal();
  }

  /** Prints an answer that nothing follows, also as a page; returns the exit code. */
  int whole(MakePlan.Ready ready, Answer answer) {
    return page(ready, answer, List.of(), print(ready, answer, List.of()));
  }

  /** Writes the page with all that was looked for besides; returns the exit code. */
  int page(MakePlan.Ready ready, Answer answer, List<SecondLook> looks, int exitCode) {
    return page.write(
        terminal(),
        () ->
            answer instanceof Answer.WithPlan found
                ? report(ready, found).html(looks)
                : noPlan(ready.inputs(), answer).html(),
        exitCode);
  }

  /**
   * Returns the exit code.
   *
   * @param looks what was looked for besides, at most one of each kind; only JSON has it in the
   *     same document
   */
  int print(MakePlan.Ready ready, Answer answer, List<SecondLook> looks) {
    Optional<Problem> problem = Optional.empty();
    terminal().clearStatus();
    switch (format) {
      case TEXT -> terminal().out().print(text(ready, answer));
      case JSON -> terminal().out().print(json(ready, answer, looks));
      case CSV -> problem = csv(ready.inputs(), answer);
    }
    terminal().out().flush();
    if (problem.isPresent()) {
      terminal().err().println(problem.get());
      return ExitCode.INPUT_PROBLEMS;
    }
    return terminal().out().checkError() ? ExitCode.FAULT : exitCode(answer);
  }

  /** The letter goes on. */
  void goOn(MakePlan.Ready ready, Answer.WithPlan found, SecondLook look) {
    terminal().clearStatus();
    terminal().out().print(report(ready, found).text(look, terminal().columns()));
    terminal().out().flush();
  }

  private String text(MakePlan.Ready ready, Answer answer) {
    return answer instanceof Answer.WithPlan found
        ? report(ready, found).text(terminal().columns())
        : noPlan(ready.inputs(), answer).text(terminal().columns());
  }

  private NoPlanReport noPlan(Inputs inputs, Answer answer) {
    return new NoPlanReport(inputs, answer, desk.interruption().asked());
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
      terminal().err().print(noPlan(inputs, answer).text(terminal().columns()));
      return Optional.empty();
    }
    if (sheets.isEmpty()) {
      terminal().out().print(OrderSheets.all(inputs.world(), found.plan().plan()));
      return Optional.empty();
    }
    return new OutFolder(sheets.get(0))
        .write(OrderSheets.bySupplier(inputs.world(), found.plan().plan()));
  }

  private static int exitCode(Answer answer) {
    if (answer instanceof Answer.WithPlan) {
      return ExitCode.PLAN;
    }
    return answer instanceof Answer.Impossible ? ExitCode.IMPOSSIBLE : ExitCode.NOTHING_IN_TIME;
  }
}
