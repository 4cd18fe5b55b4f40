package io.frostlot.cli;

import io.frostlot.app.Bookkeeping;
import io.frostlot.app.SettleBox;
import io.frostlot.files.Problem;
import io.frostlot.files.SettlementFiles;
import io.frostlot.plan.Settlement;
import io.frostlot.program.Glop;
import io.frostlot.report.SettlementReport;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code settle FOLDER INVOICE.json}: who pays what of a joint order that was placed. */
@Command(
    name = "settle",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Divides the invoice of a joint order that was placed, to the cent.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {"0:it is settled", "1:a fault of the program", "2:input problems"})
final class SettleCommand implements Callable<Integer> {
  private final Desk desk;

  @Parameters(
      index = "0",
      paramLabel = "FOLDER",
      description = "The group folder, which holds group.json.")
  private Path folder = Usual.NOT_GIVEN;

  @Parameters(
      index = "1",
      paramLabel = "INVOICE.json",
      description = "The invoice, such as share --invoices writes it, corrected.")
  private Path invoice = Usual.NOT_GIVEN;

  @Option(
      names = "--ledger",
      paramLabel = "FILE.csv",
      description =
          "Also add it to a running ledger; of an order that is in it already, the difference.")
  private Path ledger = Usual.NOT_GIVEN;

  @Mixin private PageOption page = new PageOption();

  @Mixin private LedgerOptions book = new LedgerOptions();

  @Mixin private Usual usual = new Usual();

  SettleCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (ledger.equals(Usual.NOT_GIVEN) && book.isTyped()) {
      throw usual.wrong("--on and --seen go with --ledger");
    }
    SettleBox.Outcome outcome = new SettleBox(new Glop()).settle(folder, invoice, usual.profiles());
    List<Problem> problems =
        page.problemsAnd(
            outcome instanceof SettleBox.Refused refused ? refused.problems() : List.of());
    if (!problems.isEmpty()) {
      return desk.refuse(problems, "Nothing was settled.");
    }
    Settlement settlement = ((SettleBox.Done) outcome).settlement();
    List<SettlementReport.Booked> booked = new ArrayList<>();
    for (Path file : Usual.given(ledger)) {
      Bookkeeping.Outcome added = book.of(file).add(settlement, book.day());
      if (added instanceof Bookkeeping.Refused refused) {
        return LedgerOptions.refuse(desk, refused.problems());
      }
      Bookkeeping.Done done = (Bookkeeping.Done) added;
      booked.add(
          new SettlementReport.Booked(
              String.valueOf(file.getFileName()), done.added(), done.digest()));
    }
    SettlementReport report = new SettlementReport(settlement, booked);
    desk.terminal()
        .out()
        .print(
            switch (usual.format()) {
              case TEXT -> report.text(desk.terminal().columns());
              case JSON -> SettlementFiles.json(settlement);
              case CSV -> SettlementFiles.csv(settlement);
            });
    if (usual.format() != Format.TEXT) {
      booked.forEach(it -> desk.terminal().err().println(SettlementReport.says(it)));
    }
    return page.write(desk.terminal(), report::html, desk.terminal().printed());
  }
}
