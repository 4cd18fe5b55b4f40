package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Group;
import io.frostlot.plan.Invoice;
import io.frostlot.plan.Order;
import io.frostlot.plan.Range;
import io.frostlot.plan.Settlement;
import io.frostlot.plan.Shared;
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
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Writes the sheets of a shared plan: who gets and pays what. */
final class Sheets {
  private final Group group;
  private final SubgroupPlans plans;
  private final List<Shared.Part> parts;
  private final List<Shares> shares = new ArrayList<>();
  private final Game game;
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
  }

  private Shared.Part partOf(String name) {
    return parts.stream().filter(part -> part.keepers().contains(name)).findFirst().orElseThrow();
  }

  Shared make(Sharing sharing, WaysShown shown) {
    boolean subgroups = shown instanceof WaysShown.All;
    Way usual = Way.of(group.terms().way());
    Stream<Way> others = Stream.of(Way.values()).filter(way -> shown.has(way) && way != usual);
    JointPays joint = new JointPays(group, sharing, parts, invoices(), decimals);
    List<Shared.WayRow> ways =
        Stream.concat(Stream.of(usual), others).map(way -> row(way, joint, shown)).toList();
    List<Money> pays = ways.get(0).pays();
    List<Invoice> invoices = joint.coming(less(pays, own()));
    List<Settlement.Account> settled = joint.settled(invoices);
    List<Money> goods = joint.sum(settled, Settlement.Pays::goods);
    List<Money> credits = joint.sum(settled, Settlement.Pays::credit);
    List<Shared.Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < group.names().size(); i++) {
      Money own = own().get(i);
      Money shared = pays.get(i).minus(goods.get(i)).minus(own);
      sheets.add(sheet(i, new Shared.Pays(goods.get(i), shared, own, credits.get(i))));
    }
    List<Shared.Contentment> contentment =
        subgroups ? List.of(contentment(sharing, pays)) : List.of();
    return new Shared(
        group,
        parts,
        sheets,
        ways,
        Payments.fewest(group.names(), owes(sheets)),
        invoices,
        new Shared.Findings(
            parts.stream().flatMap(part -> TippedOver.of(part).stream()).toList(),
            contentment,
            subgroups ? game.widest() : 0));
  }

  private List<Invoice> invoices() {
    List<Invoice> invoices = new ArrayList<>();
    for (Shared.Part part : parts) {
      List<Shared.Collected> collected = new ArrayList<>();
      part.keepers().forEach(name -> collected.addAll(of(name).collectedBy(name)));
      invoices.addAll(new ExpectedInvoices(part, collected, decimals).all());
    }
    return invoices;
  }

  private Shares of(String name) {
    return shares.get(group.names().indexOf(name));
  }

  /** Orders of each one's own. */
  private List<Money> own() {
    return group.names().stream().map(name -> of(name).own(name).rounded(decimals)).toList();
  }

  private List<Money> laterOfEach() {
    return group.names().stream().map(name -> of(name).later(name).rounded(decimals)).toList();
  }

  private static List<Money> sum(List<Money> some, List<Money> others) {
    return IntStream.range(0, some.size()).mapToObj(i -> some.get(i).plus(others.get(i))).toList();
  }

  private static List<Money> less(List<Money> some, List<Money> others) {
    return IntStream.range(0, some.size()).mapToObj(i -> some.get(i).minus(others.get(i))).toList();
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

  private Shared.WayRow row(Way way, JointPays joint, WaysShown shown) {
    List<Double> errors = List.of();
    List<Range> ranges = new ArrayList<>();
    if (way == Way.SHAPLEY && shown instanceof WaysShown.Sampled sample) {
      errors = Arrays.stream(sample.shapley().standardErrors()).boxed().toList();
    } else if (way == Way.SHAPLEY && game.widest() > LeastPain.TOLERANCE) {
      List<Range> exact = Shapley.ranges(game);
      for (int i = 0; i < exact.size(); i++) {
        ranges.add(exact.get(i).plus(Range.exactly(extra[i] - later(i))));
      }
    }
    AlikePay alike = new AlikePay(group, parts, laterOfEach(), decimals);
    return new Shared.WayRow(
        way.id(),
        way.says(),
        alike.evened(pays(way, joint, shown)),
        new Shared.Known(ranges, errors));
  }

  /** Order by order where that is possible, which then comes to what their invoices do. */
  private List<Money> pays(Way way, JointPays joint, WaysShown shown) {
    if (!group.sharing(way.id()).terms().needsPlan()) {
      return sum(own(), joint.in(way));
    }
    double[] pays =
        withExtra(
            way == Way.SHAPLEY && shown instanceof WaysShown.Sampled sample
                ? sampled(sample.shapley())
                : joint.sharing().of(game, way));
    for (int i = 0; i < pays.length; i++) {
      pays[i] -= later(i);
    }
    Money cash =
        Stream.concat(own().stream(), joint.invoices().stream().map(it -> it.head().total()))
            .reduce(Money.ZERO, Money::plus);
    return Rounding.settle(pays, cash, decimals);
  }

  private Shared.Sheet sheet(int member, Shared.Pays pays) {
    String name = group.names().get(member);
    Answer.WithPlan best = plans.plan(Subgroup.of(member)).orElseThrow();
    Money alone = best.plan().standing().money().rounded(decimals);
    return new Shared.Sheet(
        name,
        of(name).collectedBy(name),
        new Shared.Account(
            pays, laterOfEach().get(member), alone, aloneAtLeast(member, best, alone)));
  }

  /** Rounded down, but where that is only the noise of a bound. */
  private Optional<Money> aloneAtLeast(int member, Answer.WithPlan best, Money alone) {
    if (best instanceof Answer.Proven || best.bound().isEmpty()) {
      return best instanceof Answer.Proven ? Optional.of(alone) : Optional.empty();
    }
    double least = Math.max(0, plans.range(Subgroup.of(member)).least());
    Money known = new Money(BigDecimal.valueOf(least).setScale(decimals, RoundingMode.FLOOR));
    return Optional.of(known.atLeast(alone) ? alone : known);
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

  private Shared.Contentment contentment(Sharing sharing, List<Money> pays) {
    double[] bears = new double[pays.size()];
    for (int i = 0; i < bears.length; i++) {
      bears[i] = pays.get(i).toDouble() + later(i) - extra[i];
    }
    Leaving leaving = Leaving.of(game, bears, bears.length * Math.pow(10, -decimals));
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
