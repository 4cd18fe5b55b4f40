package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;

/**
 * The bound on packs of one order that needs no thought: all pieces that all meals could take, with
 * a margin, and a hundred packs to reach any price step or order value.
 */
final class AnyPacks {
  private static final int FILLERS = 100;
  private final long pieces;

  AnyPacks(World world) {
    long eaten =
        world.meals().alike().stream()
            .mapToLong(
                alike ->
                    (long) alike.count()
                        * alike.first().options().stream().mapToInt(Option::pieces).max().orElse(0))
            .sum();
    double margin = world.scenario().policy().safety().margin().fraction().doubleValue();
    pieces = (long) Math.ceil(eaten * (1 + margin));
  }

  int most(Supplier supplier, Pack pack) {
    int fewest = pack.parts().stream().mapToInt(Pack.Part::pieces).min().orElseThrow();
    long packs = pieces / fewest + 1 + FILLERS;
    return supplier.canPack(pack) ? (int) Math.min(packs, pack.available().perDelivery()) : 0;
  }
}
