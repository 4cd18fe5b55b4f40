package io.frostlot.cli;

import io.frostlot.app.ExplainPlan;
import io.frostlot.app.MakePlan;
import io.frostlot.app.Planner;
import io.frostlot.app.Questions;
import io.frostlot.files.ExplainJson;
import io.frostlot.plan.Answer;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Inputs;
import io.frostlot.report.ExplainReport;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code explain FOLDER}: what is tight, what rules cost, why this supplier and why now. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Says why the plan is as it is: what is tight, what each rule costs, why this supplier for"
            + " each size, why now; or what clashes where nothing fits.")
final class ExplainCommand implements Callable<Integer> {
  private final Planner planner;
  private final Terminal terminal;
  private final Interruption interruption;
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FOLDER", description = "The scenario folder.")
  private Path folder = Asked.NOT_GIVEN;

  @Mixin private Asked asked = new Asked();

  ExplainCommand(Planner planner, Terminal terminal, Interruption interruption) {
    this.planner = planner;
    this.terminal = terminal;
    this.interruption = interruption;
  }

  @Override
  public Integer call() {
    asked
        .wrong()
        .forEach(
            message -> {
              throw new ParameterException(spec.commandLine(), message);
            });
    MakePlan.Prepared prepared = asked.read(planner, folder);
    if (prepared instanceof MakePlan.Refused refused) {
      return Asked.refuse(terminal, refused.problems());
    }
    MakePlan.Ready ready = (MakePlan.Ready) prepared;
    Questions questions = asked.questions(planner, terminal, interruption);
    interruption.guard(
        () -> ExitCode.NOTHING_IN_TIME,
        () -> questions.ask(ready.inputs().world(), ExplainPlan.FIRST));
    Optional<Answer.Impossible> clash = questions.clash();
    if (clash.isPresent()) {
      return new Printer(terminal, asked.format(), List.of()).print(ready, clash.get());
    }
    return explain(questions, ready.inputs());
  }

  private int explain(Questions questions, Inputs inputs) {
    ExplainReport report = new ExplainReport(inputs.world(), terminal.columns());
    Findings.Layout<ExplainFinding> layout =
        new Findings.Layout<>(
            report.head(),
            report::text,
            report.end(),
            found -> new ExplainJson(inputs).text(found),
            ExplainJson::csv);
    return new Findings<>(terminal, asked.format(), layout)
        .gather(interruption, found -> new ExplainPlan(questions, inputs.world(), found).run());
  }
}
