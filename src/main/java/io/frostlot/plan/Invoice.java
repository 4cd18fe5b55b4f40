package io.frostlot.plan;

import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The invoice of one joint order that was placed, how its bags were to be handed out, and what
 * happened after that.
 *
 * @param portions of every bag, together all of its pieces
 * @param mishaps in the order in which they happened
 * @param agreed what each member's share of what cannot be counted by the piece was to be; empty
 *     where the way to share looks at the goods alone
 * @param evened what each member pays more, so that members alike in everything pay the same over
 *     all orders, whoever got which pieces; together nothing
 */
public record Invoice(
    Head head,
    List<Line> lines,
    List<Portion> portions,
    List<Mishap> mishaps,
    Map<String, Money> agreed,
    Map<String, Money> evened) {
  private static final int DECIMALS = 8;

  public Invoice {
    lines = List.copyOf(lines);
    portions = List.copyOf(portions);
    mishaps = List.copyOf(mishaps);
    agreed = Map.copyOf(agreed);
    evened = Map.copyOf(evened);
  }

  /**
   * Which order it is, and what it cost.
   *
   * @param supplier id
   * @param host who received and paid it
   * @param total to pay, as it stands on the invoice
   */
  public record Head(String supplier, LocalDate ordered, String host, Money total) {
    /** Such as "frostmere 2031-01-12 Ash": who else orders there then is another's host. */
    public String box() {
      return supplier + " " + ordered + " " + host;
    }
  }

  /** Packs of one row, at the regular price of one. */
  public record Line(Pack pack, int packs, Money packPrice) {}

  /**
   * One bag of a row.
   *
   * @param number among the bags of the row, from 1
   */
  public record Bag(Pack pack, int number) {}

  /**
   * A bag, or a part of one, of one member.
   *
   * @param wanted pieces of it that are paid by the piece; all pay for the others
   */
  public record Portion(String member, Bag bag, int pieces, int wanted) {
    public Portion {
      if (wanted < 0 || wanted > pieces) {
        throw new IllegalArgumentException(wanted + " wanted of " + pieces);
      }
    }

    /** After so many pieces have left it, first those that were not wanted. */
    public Portion less(int gone) {
      return new Portion(member, bag, pieces - gone, Math.min(wanted, pieces - gone));
    }
  }

  /** Something that happened after the order was placed. */
  public sealed interface Mishap {}

  /** Somebody wants nothing of it any more. */
  public record DropsOut(String member) implements Mishap {}

  /** Somebody takes pieces that were another's: joins late, takes half, steps in. */
  public record Takes(String member, String from, Bag bag, int pieces) implements Mishap {}

  /**
   * Pieces of a bag did not come, or came spoiled.
   *
   * @param refund what the supplier pays back for them, not yet in the total
   */
  public record Lost(Bag bag, int pieces, Money refund) implements Mishap {}

  /** What one piece of a row costs, at its regular price. */
  public Money price(Pack pack, int pieces) {
    Money packPrice =
        lines.stream().filter(l -> l.pack().equals(pack)).findFirst().orElseThrow().packPrice();
    return new Money(
        packPrice
            .amount()
            .multiply(BigDecimal.valueOf(pieces))
            .divide(BigDecimal.valueOf(pack.pieces()), DECIMALS, RoundingMode.HALF_UP));
  }

  /** As it was when it was ordered. */
  public Invoice withoutMishaps() {
    return new Invoice(head, lines, portions, List.of(), agreed, evened);
  }

  /** With what was agreed on beforehand. */
  public Invoice agreeing(Map<String, Money> shares, Map<String, Money> more) {
    return new Invoice(head, lines, portions, mishaps, shares, more);
  }

  /** What has no price of its own: all but the pieces that somebody wants. */
  public Money common() {
    return portions.stream()
        .map(portion -> price(portion.bag().pack(), portion.wanted()))
        .reduce(head.total(), Money::minus);
  }

  /** What the pieces come to that a member wants. */
  public Money goods(String member) {
    return portions.stream()
        .filter(portion -> portion.member().equals(member))
        .map(portion -> price(portion.bag().pack(), portion.wanted()))
        .reduce(Money.ZERO, Money::plus);
  }
}
