package io.frostlot.cli;

import io.frostlot.app.CheckSale;
import io.frostlot.app.MakePlan;
import io.frostlot.app.Questions;
import io.frostlot.files.DealsFile;
import io.frostlot.files.Problem;
import io.frostlot.files.SaleJson;
import io.frostlot.plan.Deal;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.SaleFinding;
import io.frostlot.program.Limits;
import io.frostlot.report.SaleReport;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code sale FOLDER}: what a sale is worth, and how many packs of it. */
@Command(
    name = "sale",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Says what a sale is worth: the best plan with and without it, how many packs, and why no"
            + " more.")
final class SaleCommand implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "FOLDER", description = "The scenario folder.")
  private Path folder = Asked.NOT_GIVEN;

  @ArgGroup(exclusive = false, heading = "A sale typed here:%n")
  private DealOptions typed = new DealOptions();

  @Option(
      names = "--deals",
      paramLabel = "FILE.json",
      description = "Deals of one supplier in a file; may be given several times.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--skipped",
      paramLabel = "PERCENT",
      defaultValue = "10",
      description =
          "The worse case: so many more of the meals are skipped (default: ${DEFAULT-VALUE}; 0:"
              + " none).")
  private BigDecimal skipped = BigDecimal.TEN;

  @Option(
      names = "--chance",
      paramLabel = "PERCENT",
      description = "The sale is only likely: should one wait for it?")
  private List<BigDecimal> chance = new ArrayList<>();

  @Mixin private Asked asked = new Asked();

  SaleCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Limits limits = asked.limits();
    typed.wrong().forEach(this::refuse);
    percent("--skipped", skipped, 90);
    chance.forEach(it -> percent("--chance", it, 100));
    if (chance.size() > 1) {
      refuse("--chance: found " + chance.size() + " of them, expected one");
    }
    if (asked.format() == Format.CSV && files.isEmpty() && typed.isEmpty()) {
      refuse("--format csv needs a sale");
    }
    MakePlan.Prepared prepared = asked.read(desk, folder);
    if (prepared instanceof MakePlan.Refused refused) {
      return desk.refuse(refused.problems());
    }
    MakePlan.Ready ready = (MakePlan.Ready) prepared;
    Inputs inputs = ready.inputs();
    DealsFile deals = new DealsFile(inputs.world().scenario());
    List<Problem> problems = new ArrayList<>();
    if (!typed.isEmpty()) {
      Period planning = inputs.world().scenario().planning();
      typed.wrongDays(planning).ifPresent(this::refuse);
      deals.read(typed.deal(planning).text(), DealProblems.TYPED);
      deals.problems().stream().map(DealProblems::said).forEach(problems::add);
    }
    int ofTyped = problems.size();
    files.forEach(deals::read);
    problems.addAll(deals.problems().subList(ofTyped, deals.problems().size()));
    if (!problems.isEmpty()) {
      return desk.refuse(problems);
    }
    if (deals.deals().isEmpty()) {
      refuse("What sale? Give --supplier and what it gives, or --deals FILE.json.");
    }
    return check(ready, deals.deals(), limits);
  }

  private int check(MakePlan.Ready ready, List<Deal> deals, Limits limits) {
    Inputs inputs = ready.inputs();
    SaleReport report = new SaleReport(inputs.world(), desk.terminal().columns());
    Findings.Layout<SaleFinding> layout =
        new Findings.Layout<>(
            report.head(deals),
            report::text,
            report.end(),
            found -> new SaleJson(inputs, deals).text(found),
            SaleJson::csv);
    CheckSale.Request request =
        new CheckSale.Request(
            deals, new Percent(skipped), chance.stream().map(Percent::new).toList());
    try (Questions questions = asked.questions(desk, limits)) {
      return new Findings<>(
              desk, asked.format(), layout, () -> asked.noPlan(desk, questions, ready))
          .gather(found -> new CheckSale(questions, inputs.world(), request, found).run());
    }
  }

  private void percent(String option, BigDecimal value, int most) {
    if (value.signum() < 0 || value.compareTo(BigDecimal.valueOf(most)) > 0) {
      refuse("%s: found %s, expected 0 to %d".formatted(option, value.toPlainString(), most));
    }
  }

  private void refuse(String message) {
    throw asked.wrong(message);
  }
}
