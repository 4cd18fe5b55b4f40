package io.frostlot.cli;

import io.frostlot.app.ComparePlans;
import io.frostlot.app.CompareSuppliers;
import io.frostlot.app.MakePlan;
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
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code compare A B} for two plans, {@code compare FOLDER} for the suppliers of a scenario. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Compares two plans, each a plan in JSON or a scenario folder; or, with one folder, its"
            + " suppliers: each left out, each alone, and their price sheets side by side.")
final class CompareCommand implements Callable<Integer> {
  private final Desk desk;

  @Parameters(
      paramLabel = "PLAN",
      arity = "1..2",
      description = "A plan in JSON, or a scenario folder.")
  private List<Path> plans = new ArrayList<>();

  @Option(
      names = "--habit",
      description =
          "With one scenario folder: what one order a month comes to beside the plan, bill by bill.")
  private boolean habit;

  @Mixin private Asked asked = new Asked();

  CompareCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Questions questions = asked.questions(desk, asked.limits())) {
      return compare(questions);
    }
  }

  private int compare(Questions questions) {
    if (plans.size() > 2) {
      throw asked.wrong("found " + plans.size() + " plans, expected two, or one scenario folder");
    }
    if (plans.size() == 2 && habit) {
      throw asked.wrong("--habit goes with one scenario folder");
    }
    if (plans.size() == 2) {
      return compared(questions, it -> it.compare(plans.get(0), plans.get(1)));
    }
    if (habit) {
      return compared(questions, it -> it.compareWithHabit(plans.get(0)));
    }
    MakePlan.Prepared prepared = asked.read(desk, plans.get(0));
    if (prepared instanceof MakePlan.Refused refused) {
      return desk.refuse(refused.problems());
    }
    return suppliers(questions, (MakePlan.Ready) prepared);
  }

  private int suppliers(Questions questions, MakePlan.Ready ready) {
    Inputs inputs = ready.inputs();
    SupplierReport report = new SupplierReport(inputs.world(), desk.terminal().columns());
    Findings.Layout<SupplierFinding> layout =
        new Findings.Layout<>(
            report.head(),
            report::text,
            "",
            found -> CompareJson.text(inputs, found),
            CompareJson::csv);
    return new Findings<>(desk, asked.format(), layout, () -> asked.noPlan(desk, questions, ready))
        .gather(found -> new CompareSuppliers(questions, inputs.world(), found).run());
  }

  private int compared(Questions questions, Function<ComparePlans, Optional<PlanComparison>> how) {
    ComparePlans compare = new ComparePlans(questions, path -> asked.read(desk, path));
    Optional<PlanComparison> comparison =
        desk.interruption().guard(desk::nothingFound, () -> how.apply(compare));
    if (!compare.problems().isEmpty()) {
      return desk.refuse(compare.problems());
    }
    if (comparison.isEmpty()) {
      return compare.without().map(it -> withoutPlan(questions, it)).orElseGet(desk::nothingFound);
    }
    Terminal terminal = desk.terminal();
    terminal.clearStatus();
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
    return terminal.printed();
  }

  /** Says which of two it is, since copies of a scenario bear the same name. */
  private int withoutPlan(Questions questions, ComparePlans.Without without) {
    desk.terminal().clearStatus();
    desk.terminal()
        .err()
        .println("Nothing is compared: no plan was found for " + without.folder() + ".");
    return asked.noPlan(desk, questions, without.ready());
  }
}
