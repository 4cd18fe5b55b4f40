package io.frostlot.sharing;

import io.frostlot.plan.Group;
import io.frostlot.plan.Invoice;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What is left of an order after its mishaps: first pieces change hands, then those who dropped out
 * are let go, then lost pieces come off.
 */
final class Aftermath {
  private static final int DECIMALS = 8;
  private final Invoice invoice;
  private final Group.Afterwards agreed;
  private final Set<String> dropped = new LinkedHashSet<>();
  private final Map<String, Money> losses = new HashMap<>();
  private final List<Invoice.Portion> wanted;
  private final List<Invoice.Portion> charged;
  private List<Invoice.Portion> portions;
  private Money total;
  private Money lost = Money.ZERO;

  Aftermath(Invoice invoice, Group.Afterwards agreed) {
    this.invoice = invoice;
    this.agreed = agreed;
    portions = new ArrayList<>(invoice.portions());
    total = invoice.head().total();
    for (Invoice.Mishap mishap : invoice.mishaps()) {
      if (mishap instanceof Invoice.Takes takes) {
        portions = taken(portions, takes);
      } else if (mishap instanceof Invoice.DropsOut out) {
        dropped.add(out.member());
      }
    }
    if (agreed.dropOut() == Group.DropOut.FREE) {
      dropped.forEach(this::letGo);
    }
    wanted = List.copyOf(portions);
    charged = agreed.dropOut() == Group.DropOut.KEEPS_SHARE ? List.copyOf(charged()) : wanted;
    for (Invoice.Mishap mishap : invoice.mishaps()) {
      if (mishap instanceof Invoice.Lost lost) {
        lose(lost);
      }
    }
  }

  /** What is handed out in the end. */
  List<Invoice.Portion> portions() {
    return portions;
  }

  /** By what charges are shared: what was wanted before pieces were lost. */
  List<Invoice.Portion> charges() {
    return charged;
  }

  /** What a member bears for lost pieces by itself. */
  Money losses(String member) {
    return losses.getOrDefault(member, Money.ZERO);
  }

  Money total() {
    return total;
  }

  /** What wanted pieces cost that were lost, less what is paid back. */
  Money lost() {
    return lost;
  }

  Set<String> dropped() {
    return dropped;
  }

  private static List<Invoice.Portion> taken(List<Invoice.Portion> from, Invoice.Takes takes) {
    List<Invoice.Portion> after = new ArrayList<>();
    int had = 0;
    int hadWanted = 0;
    for (Invoice.Portion portion : from) {
      boolean same = portion.bag().equals(takes.bag());
      if (same && portion.member().equals(takes.from())) {
        add(after, portion.less(takes.pieces()));
      } else if (same && portion.member().equals(takes.member())) {
        had = portion.pieces();
        hadWanted = portion.wanted();
      } else {
        after.add(portion);
      }
    }
    after.add(
        new Invoice.Portion(
            takes.member(), takes.bag(), had + takes.pieces(), hadWanted + takes.pieces()));
    return after;
  }

  /** Who drops out and keeps its share bears the charges of what others take over from it too. */
  private List<Invoice.Portion> charged() {
    List<Invoice.Portion> charged = new ArrayList<>(invoice.portions());
    for (Invoice.Mishap mishap : invoice.mishaps()) {
      if (mishap instanceof Invoice.Takes takes
          && !dropped.contains(takes.from())
          && has(charged, takes)) {
        charged = taken(charged, takes);
      }
    }
    return charged;
  }

  private static boolean has(List<Invoice.Portion> some, Invoice.Takes takes) {
    return some.stream()
        .filter(it -> it.member().equals(takes.from()) && it.bag().equals(takes.bag()))
        .anyMatch(it -> it.pieces() >= takes.pieces());
  }

  private static void add(List<Invoice.Portion> to, Invoice.Portion portion) {
    if (portion.pieces() > 0) {
      to.add(portion);
    }
  }

  /** What nobody took over stays with the host, and all pay for it. */
  private void letGo(String member) {
    String host = invoice.head().host();
    portions =
        new ArrayList<>(
            portions.stream()
                .map(
                    p ->
                        p.member().equals(member)
                            ? new Invoice.Portion(host, p.bag(), p.pieces(), 0)
                            : p)
                .toList());
  }

  private void lose(Invoice.Lost lost) {
    List<Invoice.Portion> of = portions.stream().filter(p -> p.bag().equals(lost.bag())).toList();
    int[] gone = divided(lost.pieces(), of);
    Pack pack = lost.bag().pack();
    Money value = Money.ZERO;
    List<Invoice.Portion> after = new ArrayList<>(portions);
    after.removeAll(of);
    for (int i = 0; i < of.size(); i++) {
      Invoice.Portion left = of.get(i).less(gone[i]);
      add(after, left);
      Money its = invoice.price(pack, of.get(i).wanted() - left.wanted());
      value = value.plus(its);
      if (agreed.loss() == Group.Loss.HOLDER) {
        Money back = part(lost.refund(), gone[i], lost.pieces());
        losses.merge(of.get(i).member(), its.minus(back), Money::plus);
      }
    }
    if (agreed.loss() == Group.Loss.ITEM) {
      byPieces(pack, value.minus(lost.refund()));
    }
    portions = after;
    total = total.minus(lost.refund());
    this.lost = this.lost.plus(value).minus(lost.refund());
  }

  private void byPieces(Pack pack, Money net) {
    List<Invoice.Portion> of =
        wanted.stream().filter(p -> p.bag().pack().item().equals(pack.item())).toList();
    int all = of.stream().mapToInt(Invoice.Portion::wanted).sum();
    if (all > 0) {
      of.forEach(p -> losses.merge(p.member(), part(net, p.wanted(), all), Money::plus));
    }
  }

  private static Money part(Money of, int part, int whole) {
    return new Money(
        of.amount()
            .multiply(BigDecimal.valueOf(part))
            .divide(BigDecimal.valueOf(whole), DECIMALS, RoundingMode.HALF_UP));
  }

  /** Pieces lost by portion, in proportion; what is left over to the largest remainders. */
  private static int[] divided(int lost, List<Invoice.Portion> portions) {
    int all = portions.stream().mapToInt(Invoice.Portion::pieces).sum();
    int[] gone = portions.stream().mapToInt(p -> lost * p.pieces() / all).toArray();
    int left = lost - IntStream.of(gone).sum();
    IntStream.range(0, gone.length)
        .boxed()
        .sorted(
            (a, b) -> remainder(lost, portions.get(b), all) - remainder(lost, portions.get(a), all))
        .limit(left)
        .forEach(i -> gone[i]++);
    return gone;
  }

  private static int remainder(int lost, Invoice.Portion portion, int all) {
    return lost * portion.pieces() % all;
  }
}
