package io.frostlot.report;

import io.frostlot.plan.Excess;
import io.frostlot.plan.World;

/** Says why buying more stops paying. */
record ExcessWording(World world, Wording wording) {

  String says(Excess excess) {
    String what =
        world.items().containsKey(excess.what())
            ? world.items().get(excess.what()).name()
            : excess.what().isEmpty() ? "the freezers" : excess.what();
    return switch (excess.kind()) {
      case MEALS_SUFFER -> "fewer meals or margins would be met";
      case TOO_OLD ->
          "too old: pieces of %s are left over on %s".formatted(what, Wording.day(excess.day()));
      case OUTGROWN ->
          "outgrown: from %s on no meal of these animals is %s"
              .formatted(Wording.day(excess.day()), what);
      case NOT_EATEN ->
          "more than is eaten: after %s no meal in sight is %s"
              .formatted(Wording.day(excess.day().minusDays(1)), what);
      case FREEZER_FULL ->
          "no room: %s full on %s".formatted(full(excess), Wording.day(excess.day()));
      case ONE_MORE_BOX -> "one more box: " + wording.money(excess.amount()) + " of shipping";
      case MONEY_TIED_UP ->
          "money tied up: " + wording.money(excess.amount()) + " more for holding";
      case REPLACES_AS_CHEAP -> "further packs only replace what costs no more";
    };
  }

  private static String full(Excess excess) {
    return excess.what().isEmpty() ? "the freezers are" : excess.what() + " is";
  }
}
