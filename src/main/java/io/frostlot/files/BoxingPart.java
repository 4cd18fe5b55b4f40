package io.frostlot.files;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.math.BigDecimal;

/** The field {@code boxing} of a profile. */
final class BoxingPart {
  private BoxingPart() {}

  /** One box for everything where the field was left out. */
  static Boxing read(Json.Obj root) {
    if (!root.has("boxing")) {
      return Boxing.NONE;
    }
    Json.Obj boxing = root.object("boxing");
    return new Boxing(
        boxing.text("way").equals("whole-packs") ? Boxing.Way.WHOLE_PACKS : Boxing.Way.BY_TOTAL,
        new Boxing.Limits(
            boxing.has("boxKg")
                ? Grams.of(boxing.decimal("boxKg").multiply(BigDecimal.valueOf(1000)))
                : Grams.UNLIMITED,
            boxing.has("boxLitres") ? Litres.of(boxing.decimal("boxLitres")) : Litres.UNLIMITED,
            boxing.has("boxPieces") ? boxing.integer("boxPieces") : Pack.UNLIMITED),
        boxing.integer("mostBoxes"));
  }
}
