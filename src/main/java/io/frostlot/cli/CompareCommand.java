package io.frostlot.cli;

import io.frostlot.app.ComparePlans;
import io.frostlot.app.CompareSuppliers;
import io.frostlot.app.MakePlan;
import io.frostlot.app.Planner;
import io.frostlot.app.Questions;
import io.frostlot.files.CompareJson;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.PlanComparison;
import io.frostlot.plan.SupplierFinding;
import io.frostlot.report.ComparisonReport;
import io.frostlot.report.SupplierReport;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code compare A B} for two plans, {@code compare FOLDER} for the suppliers of a scenario. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Compares two plans, each a plan in JSON or a scenario folder; or, with one folder, its"
            + " suppliers: each left out, each alone, and their price sheets side by side.")
final class CompareCommand implements Callable<Integer> {
  private final Planner planner;
  private final Terminal terminal;
  private final Interruption interruption;
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "PLAN",
      arity = "1..2",
      description = "A plan in JSON, or a scenario folder.")
  private List<Path> plans = new ArrayList<>();

  @Mixin private Asked asked = new Asked();

  CompareCommand(Planner planner, Terminal terminal, Interruption interruption) {
    this.planner = planner;
    this.terminal = terminal;
    this.interruption = interruption;
  }

  @Override
  public Integer call() {
    asked.wrong().forEach(this::refuse);
    Questions questions = asked.questions(planner, terminal, interruption);
    if (plans.size() == 2) {
      return plans(questions);
    }
    MakePlan.Prepared prepared = asked.read(planner, plans.get(0));
    if (prepared instanceof MakePlan.Refused refused) {
      return Asked.refuse(terminal, refused.problems());
    }
    return suppliers(questions, ((MakePlan.Ready) prepared).inputs());
  }

  private int suppliers(Questions questions, Inputs inputs) {
    SupplierReport report = new SupplierReport(inputs.world(), terminal.columns());
    Findings.Layout<SupplierFinding> layout =
        new Findings.Layout<>(
            report.head(),
            report::text,
            "",
            found -> CompareJson.text(inputs, found),
            CompareJson::csv);
    return new Findings<>(terminal, asked.format(), layout)
        .gather(
            interruption, found -> new CompareSuppliers(questions, inputs.world(), found).run());
  }

  private int plans(Questions questions) {
    ComparePlans compare = new ComparePlans(questions, path -> asked.read(planner, path));
    Optional<PlanComparison> comparison =
        interruption.guard(
            () -> ExitCode.NOTHING_IN_TIME, () -> compare.compare(plans.get(0), plans.get(1)));
    if (!compare.problems().isEmpty()) {
      return Asked.refuse(terminal, compare.problems());
    }
    terminal.clearStatus();
    if (comparison.isEmpty()) {
      terminal.err().println("No plan was found in the time given; more time (--seconds) may do.");
      return ExitCode.NOTHING_IN_TIME;
    }
    terminal
        .out()
        .print(
            switch (asked.format()) {
              case TEXT ->
                  new ComparisonReport(comparison.get(), compare.currency())
                      .text(terminal.columns());
              case JSON -> CompareJson.text(comparison.get(), compare.currency());
              case CSV -> CompareJson.csv(comparison.get());
            });
    terminal.out().flush();
    return terminal.out().checkError() ? ExitCode.FAULT : ExitCode.PLAN;
  }

  private void refuse(String message) {
    throw new ParameterException(spec.commandLine(), message);
  }
}
