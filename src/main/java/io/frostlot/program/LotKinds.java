package io.frostlot.program;

import io.frostlot.plan.Joint;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Moving;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.util.List;
import java.util.stream.Stream;

/**
 * The lots, yet without pieces, that pieces may become: one for each freezer into which they may
 * come and each day between the two of a delivery, one more for each way of moving them from there.
 */
final class LotKinds {
  private final World world;
  private final Moving moving;
  private final List<Freezer> inUse;

  LotKinds(World world) {
    this.world = world;
    moving = new Moving(world);
    inUse = world.scenario().larder().freezers().stream().filter(Freezer::inUse).toList();
  }

  Moving moving() {
    return moving;
  }

  Stream<Lot> of(StockLot lot) {
    return stayingOrMoved(Lot.of(lot).asKind());
  }

  Stream<Lot> of(PlacedLot lot) {
    Joint.Coming coming = new Joint.Coming(lot.arrivesEarliest(), lot.arrivesLatest());
    return inUse.stream()
        .filter(freezer -> world.joint().isOwn(lot.id(), freezer))
        .map(freezer -> lot(lot.item(), freezer, coming, new Lot.UnderWay(lot.id())))
        .flatMap(this::stayingOrMoved);
  }

  Stream<Lot> of(Item item, Slot slot) {
    return inUse.stream()
        .flatMap(
            freezer ->
                world.joint().comings(slot, freezer).stream()
                    .map(it -> lot(item, freezer, it, new Lot.Ordered(slot))))
        .flatMap(this::stayingOrMoved);
  }

  private Stream<Lot> stayingOrMoved(Lot lot) {
    return Stream.concat(Stream.of(lot), moving.of(lot).stream());
  }

  private static Lot lot(Item item, Freezer freezer, Joint.Coming coming, Lot.Origin origin) {
    Lot undated =
        new Lot(
            "",
            item,
            0,
            freezer.name(),
            coming.earliest(),
            coming.latest(),
            coming.latest(),
            origin);
    return undated.withUseBy(freezer.useBy(item, undated.freshFrom()));
  }
}
