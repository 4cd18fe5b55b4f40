package io.frostlot.report;

import java.util.List;

/** The table of contents of the letter. */
final class Sections {
  static final List<Section> IN_ORDER =
      List.of(
          new InShort(),
          new ChangesSince(),
          new NextOrders(),
          new UnderWay(),
          new Cautions(),
          new Bill(),
          new MealsNotMet(),
          new EachAnimal(),
          new HowSure(),
          new FreezerUse(),
          new StockOverTime(),
          new WhatIsLeft(),
          new WhatIsTight(),
          new Warnings());

  private Sections() {}

  /** One part of the letter; writes nothing where it has nothing to say. */
  interface Section {
    void write(PlanReport report, Page page);
  }
}
