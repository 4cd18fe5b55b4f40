package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.app.Questions;
import io.frostlot.app.SizeFreezers;
import io.frostlot.files.FreezerJson;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.report.FreezerReport;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code freezer FOLDER}: how full, what fits, what room is worth, what a failure would cost. */
@Command(
    name = "freezer",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Says how full the freezers get, what still fits, what more room is worth, and what is at"
            + " risk where one fails.")
final class FreezerCommand implements Callable<Integer> {
  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);
  private final Desk desk;

  @Parameters(paramLabel = "FOLDER", description = "The scenario folder.")
  private Path folder = Asked.NOT_GIVEN;

  @Option(
      names = "--freezer",
      paramLabel = "NAME",
      description = "Whose room is changed for the curve (default: the largest in use).")
  private List<String> freezer = new ArrayList<>();

  @Option(
      names = "--more-litres",
      paramLabel = "N",
      description = "One more deep freezer with so many usable litres.")
  private BigDecimal moreLitres = BigDecimal.ZERO;

  @Option(names = "--costs", paramLabel = "MONEY", description = "What that one costs.")
  private BigDecimal costs = BigDecimal.ZERO;

  @Option(
      names = "--running-per-year",
      paramLabel = "MONEY",
      description = "What that one costs to run for a year.")
  private BigDecimal running = BigDecimal.ZERO;

  @Option(
      names = "--fails-on",
      paramLabel = "DATE",
      description = "The day on which a freezer fails (default: when it is fullest).")
  private List<LocalDate> failsOn = new ArrayList<>();

  @Mixin private Asked asked = new Asked();

  FreezerCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Limits limits = asked.limits();
    amount("--more-litres", moreLitres);
    amount("--costs", costs);
    amount("--running-per-year", running);
    if (moreLitres.signum() == 0 && (costs.signum() > 0 || running.signum() > 0)) {
      refuse("--costs and --running-per-year go with --more-litres");
    }
    if (freezer.size() > 1 || failsOn.size() > 1) {
      refuse("--freezer and --fails-on: once at most");
    }
    MakePlan.Prepared prepared = asked.read(desk, folder);
    if (prepared instanceof MakePlan.Refused refused) {
      return desk.refuse(refused.problems());
    }
    MakePlan.Ready ready = (MakePlan.Ready) prepared;
    Inputs inputs = ready.inputs();
    known(inputs);
    FreezerReport report = new FreezerReport(inputs.world(), desk.terminal().columns());
    Findings.Layout<FreezerFinding> layout =
        new Findings.Layout<>(
            report.head(),
            report::text,
            report.end(),
            found -> new FreezerJson(inputs).text(found),
            FreezerJson::csv);
    try (Questions questions = asked.questions(desk, limits)) {
      return new Findings<>(desk, asked.format(), layout, () -> doesNotFit(questions, ready))
          .gather(found -> new SizeFreezers(questions, inputs.world(), found).run(request()));
    }
  }

  /** Says what clashes, and what could be done where it is about room. */
  private int doesNotFit(Questions questions, MakePlan.Ready ready) {
    int exitCode = asked.noPlan(desk, questions, ready);
    if (exitCode == ExitCode.IMPOSSIBLE && asked.format() == Format.TEXT) {
      World world = ready.inputs().world();
      SizeFreezers sizes = new SizeFreezers(questions, world, found -> {});
      FreezerFinding.RoomInstead room = sizes.roomInstead(request());
      Terminal terminal = desk.terminal();
      terminal
          .out()
          .print(
              new FreezerReport(world, terminal.columns())
                  .doesNotFit(room, sizes.moreInstead(request())));
      terminal.out().flush();
    }
    return exitCode;
  }

  private SizeFreezers.Request request() {
    return new SizeFreezers.Request(
        freezer,
        Litres.of(moreLitres),
        new FreezerFinding.Purchase(new Money(costs), new Money(running)),
        failsOn);
  }

  private void known(Inputs inputs) {
    List<Freezer> all = inputs.world().scenario().larder().freezers();
    List<String> names = all.stream().filter(Freezer::inUse).map(Freezer::name).toList();
    if (names.isEmpty()) {
      refuse("No freezer is in use (freezers.csv, in_use).");
    }
    freezer.stream()
        .filter(name -> !names.contains(name))
        .forEach(
            name -> refuse("--freezer: found \"%s\", expected one of %s".formatted(name, names)));
    failsOn.stream()
        .filter(day -> !inputs.world().scenario().planning().contains(day))
        .forEach(day -> refuse("--fails-on: found %s, expected a planning day".formatted(day)));
  }

  private void amount(String option, BigDecimal value) {
    if (value.signum() < 0 || value.compareTo(MOST) > 0 || value.scale() > 4) {
      refuse("%s: found %s, expected 0 to %s".formatted(option, value, MOST));
    }
  }

  private void refuse(String message) {
    throw asked.wrong(message);
  }
}
