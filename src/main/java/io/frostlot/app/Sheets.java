package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Group;
import io.frostlot.plan.Order;
import io.frostlot.plan.Range;
import io.frostlot.plan.Shared;
import io.frostlot.sharing.Bill;
import io.frostlot.sharing.Burden;
import io.frostlot.sharing.Game;
import io.frostlot.sharing.LeastPain;
import io.frostlot.sharing.Leaving;
import io.frostlot.sharing.Payments;
import io.frostlot.sharing.Rounding;
import io.frostlot.sharing.SampledShapley;
import io.frostlot.sharing.Shapley;
import io.frostlot.sharing.Sharing;
import io.frostlot.sharing.Subgroup;
import io.frostlot.sharing.Way;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Writes the sheets of a shared plan: who gets and pays what. */
final class Sheets {
  private final Group group;
  private final SubgroupPlans plans;
  private final List<Shared.Part> parts;
  private final List<Shares> shares = new ArrayList<>();
  private final Game game;
  private final Bill bill;
  private final double[] extra;
  private final int decimals;

  Sheets(Group group, SubgroupPlans plans, List<Shared.Part> parts) {
    this.group = group;
    this.plans = plans;
    this.parts = parts;
    decimals = Math.max(0, group.first().currency().getDefaultFractionDigits());
    for (String name : group.names()) {
      shares.add(new Shares(partOf(name)));
    }
    double total = 0;
    for (Shared.Part part : parts) {
      total += part.answer().plan().standing().money().toDouble();
    }
    Game known = plans.game();
    extra = new ExtraMeals(group, plans, parts).cost(total - known.toShare());
    double shared = total - Arrays.stream(extra).sum();
    game =
        Game.of(
            known.members(),
            some ->
                some.equals(known.all())
                    ? new Range(Math.min(known.cost(some).least(), shared), shared)
                    : known.cost(some));
    bill = new Bill(game, burdens());
  }

  private Shared.Part partOf(String name) {
    return parts.stream().filter(part -> part.keepers().contains(name)).findFirst().orElseThrow();
  }

  /** Extra meals are their eater's affair in every way: they are added after sharing. */
  private List<Burden> burdens() {
    List<Burden> burdens = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      Burden all = shares.get(i).burden(group.names().get(i));
      Money own = all.own().minus(Rounding.exactly(extra[i]));
      burdens.add(new Burden(own, all.goods(), all.grams(), all.litres()));
    }
    return burdens;
  }

  /** Which ways to share are shown. */
  sealed interface Ways {
    default boolean has(Way way) {
      return this instanceof All || (this instanceof Sampled && way != Way.NUCLEOLUS);
    }
  }

  /** The group's own. */
  record Own() implements Ways {}

  /** Every one, all subgroups being known. */
  record All() implements Ways {}

  /** Those that do not need every subgroup, and the Shapley value from a sample. */
  record Sampled(SampledShapley shapley) implements Ways {}

  Shared make(Sharing sharing, Ways shown) {
    boolean subgroups = shown instanceof All;
    Way own = Way.of(group.terms().way());
    Stream<Way> others = Stream.of(Way.values()).filter(way -> shown.has(way) && way != own);
    List<Shared.WayRow> ways =
        Stream.concat(Stream.of(own), others).map(way -> row(way, sharing, shown)).toList();
    List<Money> credits = new HostCredit(group, parts, decimals).byMember();
    List<Shared.Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < group.names().size(); i++) {
      sheets.add(sheet(i, ways.get(0).pays().get(i), credits.get(i)));
    }
    List<Shared.Contentment> contentment =
        subgroups ? List.of(contentment(sharing, own)) : List.of();
    return new Shared(
        group,
        parts,
        sheets,
        ways,
        Payments.fewest(group.names(), owes(sheets)),
        new Shared.Findings(
            parts.stream().flatMap(part -> TippedOver.of(part).stream()).toList(),
            contentment,
            subgroups ? game.widest() : 0));
  }

  private double[] withExtra(double[] shared) {
    double[] all = shared.clone();
    for (int i = 0; i < all.length; i++) {
      all[i] += extra[i];
    }
    return all;
  }

  private double later(int member) {
    return shares.get(member).later(group.names().get(member)).toDouble();
  }

  /** A sample was taken before the plan of everybody was looked at again: its sum is scaled. */
  private double[] sampled(SampledShapley sample) {
    double sum = Arrays.stream(sample.shares()).sum();
    return Arrays.stream(sample.shares())
        .map(share -> sum > 0 ? share * game.toShare() / sum : game.toShare() / shares.size())
        .toArray();
  }

  private Shared.WayRow row(Way way, Sharing sharing, Ways shown) {
    List<Double> errors = List.of();
    double[] pays;
    if (way == Way.SHAPLEY && shown instanceof Sampled sample) {
      errors = Arrays.stream(sample.shapley().standardErrors()).boxed().toList();
      pays = withExtra(sampled(sample.shapley()));
    } else {
      pays = withExtra(sharing.of(bill, way));
    }
    for (int i = 0; i < pays.length; i++) {
      pays[i] -= later(i);
    }
    Money cash =
        parts.stream()
            .map(part -> part.answer().plan().books().total(Books.Account.CASH))
            .reduce(Money.ZERO, Money::plus);
    List<Range> ranges = new ArrayList<>();
    if (way == Way.SHAPLEY && shown instanceof All && game.widest() > LeastPain.TOLERANCE) {
      List<Range> exact = Shapley.ranges(game);
      for (int i = 0; i < exact.size(); i++) {
        ranges.add(exact.get(i).plus(Range.exactly(extra[i] - later(i))));
      }
    }
    List<Money> settled = Rounding.settle(pays, cash.rounded(decimals), decimals);
    return new Shared.WayRow(way.id(), way.says(), settled, new Shared.Known(ranges, errors));
  }

  private Shared.Sheet sheet(int member, Money pays, Money credit) {
    String name = group.names().get(member);
    Shares of = shares.get(member);
    Money goods = of.goods(name).rounded(decimals);
    Money own = of.own(name).rounded(decimals);
    Answer.WithPlan best = plans.plan(Subgroup.of(member)).orElseThrow();
    Money alone = best.plan().standing().money().rounded(decimals);
    return new Shared.Sheet(
        name,
        of.collectedBy(name),
        new Shared.Account(
            new Shared.Pays(goods, pays.minus(goods).minus(own), own, credit),
            of.later(name).rounded(decimals),
            alone,
            best instanceof Answer.Proven ? alone : aloneAtLeast(member, alone)));
  }

  /** Rounded down, but where that is only the noise of a bound. */
  private Money aloneAtLeast(int member, Money alone) {
    double least = Math.max(0, plans.range(Subgroup.of(member)).least());
    Money known = new Money(BigDecimal.valueOf(least).setScale(decimals, RoundingMode.FLOOR));
    return known.atLeast(alone) ? alone : known;
  }

  /** Hosts have paid the joint orders, everybody the own ones. */
  private List<Money> owes(List<Shared.Sheet> sheets) {
    List<Money> owes = new ArrayList<>();
    for (Shared.Sheet sheet : sheets) {
      Shared.Part part = partOf(sheet.keeper());
      Money paid = sheet.account().pays().own();
      for (Order order : part.plan().orders()) {
        if (part.isJoint(order) && part.host().equals(sheet.keeper())) {
          Money total = part.answer().plan().books().ledger(order.slot()).total();
          paid = paid.plus(total.rounded(decimals));
        }
      }
      owes.add(sheet.account().pays().total().minus(paid));
    }
    return owes;
  }

  private Shared.Contentment contentment(Sharing sharing, Way own) {
    Leaving leaving = Leaving.of(game, sharing.of(bill, own));
    boolean empty = LeastPain.core(game, sharing.solver()) == LeastPain.Core.EMPTY;
    return new Shared.Contentment(
        leaving.better().stream().map(this::names).toList(),
        leaving.unsettled().stream().map(this::names).toList(),
        empty ? LeastPain.of(game, sharing.solver()) : 0);
  }

  private List<String> names(Subgroup some) {
    return some.members().stream().map(group.names()::get).toList();
  }
}
