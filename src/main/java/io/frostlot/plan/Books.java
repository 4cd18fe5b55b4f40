package io.frostlot.plan;

import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the rules write down when they judge a plan: breaches, charges, use of limits, and one
 * ledger of running values per order, which later pricing rules read. Money is written only through
 * {@link #charge}; the bill is the sum by rule.
 */
public final class Books {
  private final List<Breach> breaches = new ArrayList<>();
  private final List<Charge> charges = new ArrayList<>();
  private final List<Use> uses = new ArrayList<>();
  private final Map<Slot, Ledger> ledgers = new TreeMap<>();
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private int unmetMust;
  private int unmetOther;

  /** A rule that does not hold. */
  public record Breach(String rule, String where, String found, String expected) {
    @Override
    public String toString() {
      return rule + ": " + where + ": found " + found + ", expected " + expected;
    }
  }

  /** Money; negative for a discount. */
  public record Charge(String rule, Money amount, Account account, Optional<Slot> order) {}

  /** Which total a charge belongs to. */
  public enum Account {
    CASH,
    RECKONED,
    TAIL
  }

  /** How much of a limit is used, in the limit's own unit. */
  public record Use(String rule, String where, double used, double limit) {}

  /** Running values of one order, in the order of the price ladder. */
  public static final class Ledger {
    private Money regularGoods = Money.ZERO;
    private Money goods = Money.ZERO;
    private Money discount = Money.ZERO;
    private Money tax = Money.ZERO;
    private final Map<OrderTerms.Charge, Money> charges = new EnumMap<>(OrderTerms.Charge.class);

    /** Adds goods at what they cost. */
    public void addGoods(Money amount, boolean underSale) {
      goods = goods.plus(amount);
      if (!underSale) {
        regularGoods = regularGoods.plus(amount);
      }
    }

    public void addDiscount(Money amount) {
      discount = discount.plus(amount);
    }

    public void addTax(Money amount) {
      tax = tax.plus(amount);
    }

    public void addCharge(OrderTerms.Charge kind, Money amount) {
      charges.merge(kind, amount, Money::plus);
    }

    public Money value(OrderTerms.Subtotal base) {
      return switch (base) {
        case REGULAR_GOODS -> regularGoods;
        case GOODS -> goods;
        case AFTER_DISCOUNT -> goods.minus(discount);
      };
    }

    public Money discount() {
      return discount;
    }

    public Money tax() {
      return tax;
    }

    public Money charge(OrderTerms.Charge kind) {
      return charges.getOrDefault(kind, Money.ZERO);
    }

    public Money allCharges() {
      return charges.values().stream().reduce(Money.ZERO, Money::plus);
    }

    public Money total() {
      return goods.minus(discount).plus(allCharges()).plus(tax);
    }
  }

  public Ledger ledger(Slot order) {
    return ledgers.computeIfAbsent(order, slot -> new Ledger());
  }

  public void breach(String rule, String where, Object found, Object expected) {
    breaches.add(new Breach(rule, where, String.valueOf(found), String.valueOf(expected)));
  }

  /** Writes down cash of an order; nothing where zero. */
  public void cash(String rule, Slot order, Money amount) {
    charge(new Charge(rule, amount, Account.CASH, Optional.of(order)));
  }

  public void reckoned(String rule, Money amount) {
    charge(new Charge(rule, amount, Account.RECKONED, Optional.empty()));
  }

  public void tail(String rule, Money amount) {
    charge(new Charge(rule, amount, Account.TAIL, Optional.empty()));
  }

  private void charge(Charge charge) {
    if (!charge.amount().isZero()) {
      charges.add(charge);
    }
  }

  public void use(String rule, String where, double used, double limit) {
    uses.add(new Use(rule, where, used, limit));
  }

  /** Writes down by how much a rule that gives way falls short; nothing where zero. */
  public void shortfall(Shortfall shortfall) {
    if (shortfall.amount() != 0) {
      shortfalls.add(shortfall);
    }
  }

  /** By how much rules that give way fall short, one for each that does. */
  public List<Shortfall> shortfalls() {
    return List.copyOf(shortfalls);
  }

  /**
   * By how much some of them fall short, together.
   *
   * @param rules their ids
   */
  public long lacking(Set<String> rules) {
    return shortfalls(rules).stream().mapToLong(Shortfall::amount).sum();
  }

  /** By how much each of some rules falls short, where it does. */
  public List<Shortfall> shortfalls(Set<String> rules) {
    return shortfalls.stream().filter(shortfall -> rules.contains(shortfall.rule())).toList();
  }

  public void unmet(int meals, boolean must) {
    if (must) {
      unmetMust += meals;
    } else {
      unmetOther += meals;
    }
  }

  public List<Breach> breaches() {
    return List.copyOf(breaches);
  }

  public List<Charge> charges() {
    return List.copyOf(charges);
  }

  public List<Use> uses() {
    return List.copyOf(uses);
  }

  /** Cash and reckoned, which gaps are measured by. */
  public Money withoutTail() {
    return total(Account.CASH).plus(total(Account.RECKONED));
  }

  public Money total(Account account) {
    return charges.stream()
        .filter(charge -> charge.account() == account)
        .map(Charge::amount)
        .reduce(Money.ZERO, Money::plus);
  }

  public Standing standing() {
    long shortfall = shortfalls.stream().mapToLong(Shortfall::amount).sum();
    Money money = charges.stream().map(Charge::amount).reduce(Money.ZERO, Money::plus);
    return new Standing(unmetMust, unmetOther, shortfall, money);
  }
}
