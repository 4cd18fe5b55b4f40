package io.frostlot.report;

import io.frostlot.plan.FreezerFinding;
import io.frostlot.units.Litres;

/** With what room there is a plan, where there is none with the room that there is. */
record NoRoomText(Page page) {

  void write(FreezerFinding.RoomInstead room) {
    String name = room.freezer().name();
    room.enough()
        .forEach(
            litres ->
                page.point(
                    "With %s litres in %s, in place of %s, there is a plan; with %s there is none%s."
                        .formatted(
                            litres(litres),
                            name,
                            litres(room.freezer().usable()),
                            litres(room.none()),
                            isLeast(room.none(), litres)
                                ? ""
                                : ", between them it is not known; " + Differences.MORE_TIME)));
    if (room.never()) {
      page.point("No room in %s makes a plan possible.".formatted(name));
    } else if (room.enough().isEmpty()) {
      page.point(
          "Whether more room in %s makes a plan possible is not known in the time; %s."
              .formatted(name, Differences.MORE_TIME));
    }
  }

  void write(FreezerFinding.MoreInstead more) {
    String freezer = "one more deep freezer of " + litres(more.freezer().usable()) + " litres";
    page.point(
        switch (more.plan()) {
          case YES ->
              "With %s there is a plan; what it saves cannot be told, since without it there is none."
                  .formatted(freezer);
          case NO -> Wording.capital(freezer) + " makes no plan possible.";
          case NOT_KNOWN ->
              "Whether %s makes a plan possible is not known in the time; %s."
                  .formatted(freezer, Differences.MORE_TIME);
        });
  }

  /** Is nothing that is shown between them? */
  private static boolean isLeast(Litres none, Litres enough) {
    return enough.toDouble() - none.toDouble() < 0.1001;
  }

  private static String litres(Litres litres) {
    return Wording.decimal(litres.toDouble());
  }
}
