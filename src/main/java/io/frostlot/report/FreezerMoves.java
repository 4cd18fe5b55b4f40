package io.frostlot.report;

import io.frostlot.plan.Lot;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** What is to be moved from one freezer to another, day by day. */
final class FreezerMoves implements Sections.Section {
  private record Move(LocalDate day, String from, String into, String item, LocalDate useBy) {
    static Move of(Lot lot, Names names) {
      return new Move(
          lot.move().day(), lot.move().from(), lot.freezer(), names.of(lot.item()), lot.useBy());
    }
  }

  @Override
  public void write(PlanReport report, Page page) {
    List<Lot> moved = report.plan().lots().stream().filter(Lot::isMoved).toList();
    if (moved.isEmpty()) {
      return;
    }
    page.heading("Move to another freezer");
    Table table = Table.of("on", "from", "to", ">pieces", "item", "use by then");
    moved.stream()
        .sorted((a, b) -> a.move().day().compareTo(b.move().day()))
        .collect(
            Collectors.groupingBy(
                lot -> Move.of(lot, report.names()),
                LinkedHashMap::new,
                Collectors.summingInt(Lot::pieces)))
        .forEach(
            (move, pieces) ->
                table.row(
                    Wording.day(move.day()),
                    move.from(),
                    move.into(),
                    String.valueOf(pieces),
                    move.item(),
                    Wording.day(move.useBy())));
    page.table(table);
    page.say(
        "Keep it frozen on the way: what has thawed is not frozen again. The shares of life used in"
            + " the two freezers add up.");
  }
}
