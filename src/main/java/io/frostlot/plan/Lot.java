package io.frostlot.plan;

import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.time.LocalDate;

/**
 * Pieces of one item that came together and lie in one freezer.
 *
 * @param id unique in the plan
 * @param pieces at least 1
 * @param freezer name
 * @param earliest day from which it may take room
 * @param latest day from which it can be eaten
 * @param useBy last usable day, counted from {@link #freshFrom}
 * @param origin where it comes from
 */
public record Lot(
    String id,
    Item item,
    int pieces,
    String freezer,
    LocalDate earliest,
    LocalDate latest,
    LocalDate useBy,
    Origin origin) {

  /** Where a lot comes from. */
  public sealed interface Origin {}

  /** In hand on the first day. */
  public record InHand(String stockLot) implements Origin {}

  /** A part of an order placed before. */
  public record UnderWay(String placedLot) implements Origin {}

  /** A part of a planned order. */
  public record Ordered(Slot slot) implements Origin {}

  public Lot withPieces(int other) {
    return new Lot(id, item, other, freezer, earliest, latest, useBy, origin);
  }

  /** The same without a name and pieces: what lots that cannot be told apart have in common. */
  public Lot asKind() {
    return named("").withPieces(0);
  }

  public Lot named(String other) {
    return new Lot(other, item, pieces, freezer, earliest, latest, useBy, origin);
  }

  /** The same lot of an item that is known otherwise. */
  public Lot withItem(Item other) {
    return new Lot(id, other, pieces, freezer, earliest, latest, useBy, origin);
  }

  public Lot withUseBy(LocalDate other) {
    return new Lot(id, item, pieces, freezer, earliest, latest, other, origin);
  }

  /** Day from which its life counts: its arrival, also where it was handed over later. */
  public LocalDate freshFrom() {
    return origin instanceof Ordered ordered ? ordered.slot().arrivesEarliest() : earliest;
  }

  /** A lot in hand as the plan begins with it. */
  public static Lot of(StockLot lot) {
    return new Lot(
        lot.id(),
        lot.item(),
        lot.pieces(),
        lot.freezer(),
        lot.arrived(),
        lot.arrived(),
        lot.useBy(),
        new InHand(lot.id()));
  }
}
