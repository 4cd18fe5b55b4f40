package io.frostlot.cli;

import io.frostlot.app.ExplainPlan;
import io.frostlot.app.MakePlan;
import io.frostlot.app.Questions;
import io.frostlot.app.WishCosts;
import io.frostlot.files.ExplainJson;
import io.frostlot.plan.Answer;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Inputs;
import io.frostlot.program.Limits;
import io.frostlot.report.ExplainReport;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code explain FOLDER}: what is tight, what rules cost, why this supplier and why now. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Says why the plan is as it is: what is tight, what each rule costs, why this supplier for"
            + " each size, why now; or what clashes where nothing fits.")
final class ExplainCommand implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "FOLDER", description = "The scenario folder.")
  private Path folder = Asked.NOT_GIVEN;

  @Option(
      names = "--wishes",
      description =
          "Say instead what each thing costs that a keeper may wish for, planned with it and without"
              + " it, and what adequacy does to each animal.")
  private boolean wishes;

  @Mixin private Asked asked = new Asked();

  ExplainCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Limits limits = asked.limits();
    MakePlan.Prepared prepared = asked.read(desk, folder);
    if (prepared instanceof MakePlan.Refused refused) {
      return desk.refuse(refused.problems());
    }
    MakePlan.Ready ready = (MakePlan.Ready) prepared;
    try (Questions questions = asked.questions(desk, limits)) {
      return explain(questions, ready);
    }
  }

  private int explain(Questions questions, MakePlan.Ready ready) {
    desk.interruption()
        .guard(desk::nothingFound, () -> questions.ask(ready.inputs().world(), ExplainPlan.ANY));
    Optional<Answer.Impossible> clash = questions.clash();
    if (clash.isPresent()) {
      return new Printer(desk, asked.format()).whole(ready, clash.get());
    }
    return explain(questions, ready.inputs());
  }

  private int explain(Questions questions, Inputs inputs) {
    ExplainReport report = new ExplainReport(inputs.world(), desk.terminal().columns());
    Findings.Layout<ExplainFinding> layout =
        new Findings.Layout<>(
            report.head(),
            report::text,
            report.end(),
            found -> new ExplainJson(inputs).text(found),
            wishes ? ExplainJson::wishes : ExplainJson::csv);
    return new Findings<>(desk, asked.format(), layout, desk::nothingFound)
        .gather(
            found -> {
              if (wishes) {
                new WishCosts(questions, inputs.world(), found).run();
              } else {
                new ExplainPlan(questions, inputs.world(), found).run();
              }
            });
  }
}
