package io.frostlot.plan;

import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A bill by account and rule; the amounts sum to the cost.
 *
 * @param byAccount cash, reckoned and tail, each by rule
 */
public record BillLines(Map<Books.Account, SortedMap<String, Money>> byAccount) {
  public BillLines {
    Map<Books.Account, SortedMap<String, Money>> copy = new TreeMap<>();
    byAccount.forEach(
        (account, lines) ->
            copy.put(account, Collections.unmodifiableSortedMap(new TreeMap<>(lines))));
    byAccount = Collections.unmodifiableMap(copy);
  }

  public static BillLines of(Books books) {
    Map<Books.Account, SortedMap<String, Money>> lines = new TreeMap<>();
    for (Books.Charge charge : books.charges()) {
      lines
          .computeIfAbsent(charge.account(), account -> new TreeMap<>())
          .merge(charge.rule(), charge.amount(), Money::plus);
    }
    return new BillLines(lines);
  }

  public Money total() {
    return byAccount.values().stream()
        .flatMap(lines -> lines.values().stream())
        .reduce(Money.ZERO, Money::plus);
  }

  /** One line of two bills; zero where a bill has none. */
  public record Line(Books.Account account, String rule, Money before, Money after) {
    /** What it adds to the cost. */
    public Money difference() {
      return after.minus(before);
    }
  }

  /** The lines that differ; their differences sum to that of the totals. */
  public static List<Line> different(BillLines before, BillLines after) {
    List<Line> lines = new ArrayList<>();
    for (Books.Account account : Books.Account.values()) {
      SortedMap<String, Money> was = before.byAccount.getOrDefault(account, new TreeMap<>());
      SortedMap<String, Money> is = after.byAccount.getOrDefault(account, new TreeMap<>());
      TreeSet<String> rules = new TreeSet<>(was.keySet());
      rules.addAll(is.keySet());
      for (String rule : rules) {
        Line line =
            new Line(
                account,
                rule,
                was.getOrDefault(rule, Money.ZERO),
                is.getOrDefault(rule, Money.ZERO));
        if (!line.difference().isZero()) {
          lines.add(line);
        }
      }
    }
    return lines;
  }
}
