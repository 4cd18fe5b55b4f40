package io.frostlot.plan;

import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What members of a group have given each other over many boxes: each entry is a value that passed
 * from one to another, so that all balances together are zero.
 *
 * @param entries oldest first
 */
public record Ledger(Currency currency, List<Entry> entries) {
  public Ledger {
    entries = List.copyOf(entries);
  }

  /** What an entry is for. */
  public enum Kind {
    BOX("box"),
    CORRECTION("correction"),
    CREDIT("credit"),
    SHORT_COUNT("short-count"),
    LATE_PICK_UP("late-pick-up"),
    PAYMENT("payment");

    private final String id;

    Kind(String id) {
      this.id = id;
    }

    public String id() {
      return id;
    }
  }

  /**
   * A value that passed.
   *
   * @param value from who gave it (prey, a service or money) to who received it
   */
  public record Entry(LocalDate day, Kind kind, Payment value, About about) {}

  /**
   * What an entry is about.
   *
   * @param box which order, or empty
   * @param note or empty
   */
  public record About(String box, String note) {}

  /** By name: what was received less what was given; above zero who owes. */
  public SortedMap<String, Money> balances() {
    SortedMap<String, Money> balances = new TreeMap<>();
    for (Entry entry : entries) {
      balances.merge(entry.value().from(), entry.value().amount().negated(), Money::plus);
      balances.merge(entry.value().to(), entry.value().amount(), Money::plus);
    }
    return balances;
  }

  /** With more entries at its end. */
  public Ledger with(List<Entry> more) {
    List<Entry> all = new ArrayList<>(entries);
    all.addAll(more);
    return new Ledger(currency, all);
  }

  /** What a settled box adds: all of it, or how it differs from what stands here of that box. */
  public List<Entry> entries(Settlement settlement, LocalDate day) {
    String host = settlement.invoice().head().host();
    String box = settlement.invoice().head().box();
    SortedMap<String, Money> owed = new TreeMap<>();
    boolean known = false;
    for (Entry entry : entries) {
      boolean charged = entry.kind() == Kind.BOX || entry.kind() == Kind.CORRECTION;
      if (charged && entry.about().box().equals(box)) {
        known = true;
        owed.merge(entry.value().from(), entry.value().amount(), Money::plus);
        owed.merge(entry.value().to(), entry.value().amount().negated(), Money::plus);
      }
    }
    for (Settlement.Sheet sheet : settlement.now().sheets()) {
      if (!sheet.member().equals(host)) {
        owed.merge(sheet.member(), sheet.pays().total(), Money::plus);
      }
    }
    List<Entry> more = new ArrayList<>();
    Kind kind = known ? Kind.CORRECTION : Kind.BOX;
    owed.remove(host);
    for (String member : owed.keySet()) {
      Money amount = owed.get(member);
      if (!amount.isZero()) {
        Payment value =
            amount.isNegative()
                ? new Payment(member, host, amount.negated())
                : new Payment(host, member, amount);
        more.add(new Entry(day, kind, value, new About(box, "")));
      }
    }
    return more;
  }
}
