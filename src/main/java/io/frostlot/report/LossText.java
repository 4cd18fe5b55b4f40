package io.frostlot.report;

import io.frostlot.plan.FreezerFinding;
import java.util.List;

/** What is at risk where a freezer fails, and what to do first. */
record LossText(Wording wording) {
  /** USDA FSIS on power cuts and thawing; CDC, key messages on feeder rodents. */
  static final List<String> CAUTIONS =
      List.of(
          "Keep a freezer that has failed shut; move prey with gloves, in sealed bags, and never"
              + " into a kitchen freezer with food.",
          "Feed nothing that smells, is slimy or was warm for long, and never freeze again what"
              + " has fully thawed. In doubt throw it away, and ask a vet.",
          "Freezing does not kill germs such as Salmonella: wash hands and whatever prey or its"
              + " water has touched; children of 5 and under, pregnant women and people with"
              + " weakened immunity keep away.",
          "Dry ice (-78.5 C) keeps a freezer cold: aired room, gloves, never shut in anything"
              + " tight. Animals are fed by their need, not by what thaws.");

  void write(FreezerFinding.Loss loss, Page page) {
    page.heading("If " + loss.freezer().name() + " fails on " + Wording.day(loss.day()));
    page.say(
        "%s at risk, %s; %s full. %s"
            .formatted(
                Wording.count(loss.pieces(), "piece is", "pieces are"),
                wording.toBuyAgain(loss.money()),
                Wording.percent(loss.share()),
                cold(loss.hours())));
    Table table = Table.of("item", ">pieces", ">worth", ">fit elsewhere", ">eat first", ">left");
    loss.contents()
        .forEach(
            one ->
                table.row(
                    one.item().name(),
                    String.valueOf(one.pieces()),
                    wording.bare(one.money()),
                    String.valueOf(one.fitElsewhere()),
                    String.valueOf(one.eatFirst()),
                    String.valueOf(one.pieces() - one.fitElsewhere() - one.eatFirst())));
    page.table(table);
    page.say(
        "Fit elsewhere: into the other freezers in use, the dearest by litre first. Eat first:"
            + " meals of that day and the next two that could be this prey; one meal can take only"
            + " one of them.");
  }

  private static String cold(int hours) {
    return hours == 0
        ? "Less than half full it keeps cold for less than 24 hours unopened (extension services)."
        : "Unopened it keeps cold for about %d hours (extension services: 48 full, 24 half full)."
            .formatted(hours);
  }
}
