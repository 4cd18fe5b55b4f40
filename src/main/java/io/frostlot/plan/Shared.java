package io.frostlot.plan;

import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A shared plan: what is ordered together, and what each keeper gets and pays.
 *
 * @param parts of the group that order together; one where that is best
 * @param sheets by keeper, in the group's order
 * @param ways every way that was asked for, the group's own first
 * @param payments between keepers, as few as can be
 * @param invoices what that of each joint order is expected to say; settled as they are, they come
 *     to the sheets
 */
public record Shared(
    Group group,
    List<Part> parts,
    List<Sheet> sheets,
    List<WayRow> ways,
    List<Payment> payments,
    List<Invoice> invoices,
    Findings findings) {
  public Shared {
    parts = List.copyOf(parts);
    sheets = List.copyOf(sheets);
    ways = List.copyOf(ways);
    payments = List.copyOf(payments);
    invoices = List.copyOf(invoices);
  }

  /**
   * Keepers who order together, or one who orders alone.
   *
   * @param host who receives, empty where one orders alone
   */
  public record Part(List<String> keepers, String host, World world, Answer.WithPlan answer) {
    public Part {
      keepers = List.copyOf(keepers);
    }

    public Plan plan() {
      return answer.plan().plan();
    }

    /** Who gets pieces of an order, in the part's order. */
    public List<String> takers(Order order) {
      if (keepers.size() == 1) {
        return keepers;
      }
      Set<String> some =
          plan().lots().stream()
              .filter(lot -> lot.origin().equals(new Lot.Ordered(order.slot())))
              .map(lot -> world.joint().keeperOf(world.freezer(lot.freezer())))
              .collect(Collectors.toSet());
      return keepers.stream().filter(some::contains).toList();
    }

    /** Who orders or fetches it, and pays it first. */
    public String buyer(Order order) {
      return keepers.size() == 1
          ? keepers.get(0)
          : world.joint().buyers().getOrDefault(order.slot().supplier(), host);
    }

    /** Of the planning days. */
    public Meals meals(String keeper) {
      Map<String, Integer> served = plan().served();
      int all = 0;
      int met = 0;
      for (Demand demand : world.demands()) {
        boolean own = keepers.size() == 1 || world.joint().keeperOf(demand).equals(keeper);
        if (own && !demand.tail()) {
          all += demand.meal().count();
          met += served.getOrDefault(demand.meal().id(), 0);
        }
      }
      return new Meals(met, all);
    }

    /** Does anybody get pieces who has not ordered? If not, it is its buyer's own. */
    public boolean isJoint(Order order) {
      return !List.of(buyer(order)).containsAll(takers(order));
    }

    /** Are there orders that are joint, or that are not? */
    public boolean has(boolean joint) {
      return plan().orders().stream().anyMatch(order -> isJoint(order) == joint);
    }
  }

  /** How many meals of a keeper's animals the plan meets, needs among them. */
  public record Meals(int met, int all) {}

  /** The part of the group that a keeper orders with. */
  public Part partOf(String keeper) {
    return parts.stream().filter(part -> part.keepers().contains(keeper)).findFirst().orElseThrow();
  }

  /** What one keeper collects and pays. */
  public record Sheet(String keeper, List<Collected> collected, Account account) {
    public Sheet {
      collected = List.copyOf(collected);
    }
  }

  /**
   * A bag, or a portion of one, of a joint order.
   *
   * @param day on which it is handed over; of several the first
   * @param wanted pieces of it that are eaten; the others are its keeper's too, but paid by all
   * @param goods the part of the regular price of the bag that the wanted pieces are
   */
  public record Collected(
      Order order, LocalDate day, Division.Portion portion, int wanted, Money goods) {
    public Grams grams() {
      return portion.pack().item().grams().mean().times(portion.pieces());
    }
  }

  /**
   * Money of one keeper.
   *
   * @param pays cash, settled to the minor unit
   * @param later what is only reckoned, and what is bought after the planning days
   * @param alone what cash and later would come to alone, by the best plan found
   * @param aloneAtLeast no plan of its own comes to less; empty where nothing is known of it
   */
  public record Account(Pays pays, Money later, Money alone, Optional<Money> aloneAtLeast) {
    /** Beside the own plan found: the most; negative where ordering together costs more. */
    public Money saving() {
      return alone.minus(pays.total()).minus(later);
    }

    /** The least, whatever plan of its own is the best; empty where nothing is known of it. */
    public Optional<Money> sureSaving() {
      return aloneAtLeast.map(least -> least.minus(pays.total()).minus(later));
    }
  }

  /**
   * Cash of one keeper.
   *
   * @param goods piece by piece, of joint orders
   * @param shared its share of what cannot be counted by the piece
   * @param own orders of its own
   * @param credit for or to the host, negative for the host
   */
  public record Pays(Money goods, Money shared, Money own, Money credit) {
    public Money total() {
      return goods.plus(shared).plus(own).plus(credit);
    }
  }

  /**
   * What each would pay in one way, before a host's credit.
   *
   * @param pays cash by keeper
   */
  public record WayRow(String way, String says, List<Money> pays, Known known) {
    public WayRow {
      pays = List.copyOf(pays);
    }
  }

  /**
   * How well shares are known.
   *
   * @param ranges where costs of subgroups are not exact, where each share lies; else empty
   * @param standardErrors where only a sample of the subgroups was planned, of each share; else
   *     empty
   */
  public record Known(List<Range> ranges, List<Double> standardErrors) {
    public Known {
      ranges = List.copyOf(ranges);
      standardErrors = List.copyOf(standardErrors);
    }
  }

  /** Prey without which an order would have fewer boxes. */
  public record Tipped(Order order, List<Order.Line> lines, int boxesLess, Money less) {
    public Tipped {
      lines = List.copyOf(lines);
    }

    public Grams grams() {
      return lines.stream()
          .map(line -> line.pack().item().grams().mean().times(line.pieces()))
          .reduce(Grams.ZERO, Grams::plus);
    }
  }

  /**
   * What was found out.
   *
   * @param contentment empty where subgroups were not asked for
   * @param widest width of the least known cost of a subgroup, in money
   */
  public record Findings(List<Tipped> tipped, List<Contentment> contentment, double widest) {
    public Findings {
      tipped = List.copyOf(tipped);
      contentment = List.copyOf(contentment);
    }
  }

  /**
   * Has somebody a reason to leave?
   *
   * @param better groups of names that surely pay less by themselves
   * @param unsettled groups of names of which it is not known
   * @param pain when surely no share leaves all content: what the worst-off part pays too much at
   *     the least; else zero
   */
  public record Contentment(List<List<String>> better, List<List<String>> unsettled, double pain) {
    public Contentment {
      better = better.stream().map(List::copyOf).toList();
      unsettled = unsettled.stream().map(List::copyOf).toList();
    }
  }
}
