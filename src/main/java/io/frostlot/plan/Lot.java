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
 * @param freezer name of the one that it lies in, or is moved into
 * @param earliest day from which it may take room
 * @param latest day from which it can be eaten
 * @param useBy last usable day, counted from {@link #freshFrom}
 * @param origin where it comes from
 * @param move from where and when it is moved, all of it, before anything of it is taken
 */
public record Lot(
    String id,
    Item item,
    int pieces,
    String freezer,
    LocalDate earliest,
    LocalDate latest,
    LocalDate useBy,
    Origin origin,
    Move move) {

  /** A lot that stays where it is. */
  public Lot(
      String id,
      Item item,
      int pieces,
      String freezer,
      LocalDate earliest,
      LocalDate latest,
      LocalDate useBy,
      Origin origin) {
    this(id, item, pieces, freezer, earliest, latest, useBy, origin, Move.NEVER);
  }

  /**
   * A move at the start of a day.
   *
   * @param from name of the freezer in which it lay until then
   */
  public record Move(String from, LocalDate day) {
    public static final Move NEVER = new Move("", LocalDate.MIN);
  }

  /** Where a lot comes from. */
  public sealed interface Origin {}

  /** In hand on the first day. */
  public record InHand(String stockLot) implements Origin {}

  /** A part of an order placed before. */
  public record UnderWay(String placedLot) implements Origin {}

  /** A part of a planned order. */
  public record Ordered(Slot slot) implements Origin {}

  public Lot withPieces(int other) {
    return new Lot(id, item, other, freezer, earliest, latest, useBy, origin, move);
  }

  /** The same without a name and pieces: what lots that cannot be told apart have in common. */
  public Lot asKind() {
    return named("").withPieces(0);
  }

  public Lot named(String other) {
    return new Lot(other, item, pieces, freezer, earliest, latest, useBy, origin, move);
  }

  /** The same lot of an item that is known otherwise. */
  public Lot withItem(Item other) {
    return new Lot(id, other, pieces, freezer, earliest, latest, useBy, origin, move);
  }

  public Lot withUseBy(LocalDate other) {
    return new Lot(id, item, pieces, freezer, earliest, latest, other, origin, move);
  }

  /** The same pieces, moved into another freezer at the start of a day. */
  public Lot movedInto(String other, LocalDate day, LocalDate newUseBy) {
    Move moved = new Move(freezer, day);
    return new Lot(id, item, pieces, other, earliest, latest, newUseBy, origin, moved);
  }

  /** The same pieces as if they had not been moved. */
  public Lot stayedUntil(LocalDate otherUseBy) {
    return new Lot(id, item, pieces, firstFreezer(), earliest, latest, otherUseBy, origin);
  }

  public boolean isMoved() {
    return !move.equals(Move.NEVER);
  }

  /** The first day on which anything of it may be taken, as far as its arrival goes. */
  public LocalDate takenFrom() {
    return move.day().isAfter(latest) ? move.day() : latest;
  }

  /** Name of the freezer in which it lies on a day. */
  public String freezerOn(LocalDate day) {
    return isMoved() && day.isBefore(move.day()) ? move.from() : freezer;
  }

  /** Name of the freezer into which it comes, or in which it is in hand. */
  public String firstFreezer() {
    return isMoved() ? move.from() : freezer;
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
