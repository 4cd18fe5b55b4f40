package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Before a delivery comes a share of what was eaten since the one before is left, size band by size
 * band (see {@link SizeBand}).
 *
 * <p>For each band b and delivery day t (latest arrivals), t' the one before or the first planning
 * day: short(b, t) &gt;= ceil(margin x eaten(b, t' .. t - 1)) - left(b, night before t). In the
 * program since(b, t) counts what was eaten since the last delivery: since(b, next) = eaten(t ..
 * next - 1) + (since(b, t) where nothing comes on t). The sum of short, in pieces, gives way before
 * a meal does.
 */
final class SafetyMargin implements Rule {
  private static final NavigableMap<LocalDate, Long> NOTHING = Collections.emptyNavigableMap();
  private final World world;
  private final Percent margin;

  SafetyMargin(World world) {
    this.world = world;
    margin = world.scenario().policy().safety().margin();
  }

  @Override
  public String id() {
    return "safety-margin";
  }

  @Override
  public String says() {
    return "When a delivery comes, " + margin + " of what was eaten since the last should be left.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  private record Band(String keeper, SizeBand size) {
    Band(String keeper, Item item) {
      this(keeper, item.band());
    }
  }

  private Band band(Freezer freezer, Item item) {
    return new Band(world.joint().keeperOf(freezer), item);
  }

  @Override
  public void impose(Program program) {
    if (margin.isZero() || !program.decisions().timeline().isExact()) {
      return;
    }
    Map<Band, List<Flow>> bands = new LinkedHashMap<>();
    program
        .decisions()
        .flows()
        .forEach(
            flow ->
                bands
                    .computeIfAbsent(band(flow.freezer(), flow.item()), band -> new ArrayList<>())
                    .add(flow));
    NavigableMap<Integer, Linear> deliveries = deliveries(program);
    bands.values().forEach(flows -> impose(flows, deliveries, program));
  }

  /** One where something comes on a day, by day; a constant where that is certain. */
  private NavigableMap<Integer, Linear> deliveries(Program program) {
    Timeline timeline = program.decisions().timeline();
    int last = Timeline.day(world.scenario().planning().to());
    TreeMap<Integer, List<Var>> opens = new TreeMap<>();
    program
        .decisions()
        .orders()
        .values()
        .forEach(
            order ->
                opens
                    .computeIfAbsent(
                        Timeline.day(order.slot().arrivesLatest()), day -> new ArrayList<>())
                    .add(order.open()));
    TreeMap<Integer, Linear> deliveries = new TreeMap<>();
    opens.forEach(
        (day, orders) -> {
          Var comes = program.model().real(0, 1);
          Linear any = new Linear().plus(-1, comes);
          for (Var open : orders) {
            any.plus(1, open);
            program.model().atMost(id(), Linear.of(open).plus(-1, comes), 0);
          }
          program.model().atLeast(id(), any, 0);
          deliveries.put(day, Linear.of(comes));
        });
    world
        .scenario()
        .larder()
        .placed()
        .forEach(lot -> deliveries.put(Timeline.day(lot.arrivesLatest()), Linear.constant(1)));
    return new TreeMap<>(deliveries.subMap(timeline.first(), false, last, true));
  }

  private void impose(List<Flow> flows, NavigableMap<Integer, Linear> deliveries, Program program) {
    Model model = program.model();
    int from = program.decisions().timeline().first();
    Linear since = new Linear();
    for (Map.Entry<Integer, Linear> delivery : deliveries.entrySet()) {
      int day = delivery.getKey();
      for (Flow flow : flows) {
        since.plus(flow.eatenBetween(from, day));
      }
      double most = Math.max(0, program.most(since));
      double share = margin.fraction().doubleValue();
      Var wanted = model.follows(0, Math.ceil(share * most));
      model.atLeast(id(), Linear.of(wanted).plus(-share, since), 0);
      Var missing = model.real(0, Model.INFINITY);
      model.minimise(Level.SHORTFALL, Linear.of(missing));
      Linear enough = Linear.of(missing).plus(-1, wanted);
      flows.forEach(flow -> enough.plus(flow.left(day - 1, day - 1)));
      double all = Math.ceil(share * most);
      model.atLeast(id(), enough.plus(-all, delivery.getValue()), -all);
      Var carried = model.real(0, most);
      model.atLeast(id(), Linear.of(carried).minus(since).plus(most, delivery.getValue()), 0);
      since = Linear.of(carried);
      from = day;
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    if (margin.isZero()) {
      return;
    }
    Levels levels = new Levels(plan);
    Map<Band, List<Lot>> bands = new LinkedHashMap<>();
    plan.lots()
        .forEach(
            lot ->
                bands
                    .computeIfAbsent(
                        band(world.freezer(lot.freezer()), lot.item()), band -> new ArrayList<>())
                    .add(lot));
    Map<Band, NavigableMap<LocalDate, Long>> eaten = eaten(plan);
    LocalDate from = world.scenario().planning().from();
    List<Shortfall.Part> parts = new ArrayList<>();
    for (LocalDate day : deliveryDays(plan)) {
      for (Map.Entry<Band, List<Lot>> band : bands.entrySet()) {
        long wanted =
            margin
                .fraction()
                .multiply(
                    BigDecimal.valueOf(
                        between(from, day, eaten.getOrDefault(band.getKey(), NOTHING))))
                .setScale(0, RoundingMode.CEILING)
                .longValueExact();
        LocalDate before = day.minusDays(1);
        long left =
            band.getValue().stream()
                .filter(lot -> !lot.latest().isAfter(before))
                .mapToLong(lot -> levels.atNight(lot, before))
                .sum();
        if (wanted > left) {
          String size = band.getKey().size().inWords();
          parts.add(new Shortfall.Part(size, new Period(day, day), wanted - left));
        }
      }
      from = day;
    }
    books.shortfall(Shortfall.counted(id(), Shortfall.Unit.PIECES, parts));
  }

  private NavigableSet<LocalDate> deliveryDays(Plan plan) {
    TreeSet<LocalDate> days = new TreeSet<>();
    plan.orders().forEach(order -> days.add(order.slot().arrivesLatest()));
    world.scenario().larder().placed().forEach(lot -> days.add(lot.arrivesLatest()));
    return new TreeSet<>(
        days.subSet(
            world.scenario().planning().from(), false, world.scenario().planning().to(), true));
  }

  /** Pieces by size and day. */
  private Map<Band, NavigableMap<LocalDate, Long>> eaten(Plan plan) {
    Map<String, Demand> demands = world.demandsById();
    Map<Band, NavigableMap<LocalDate, Long>> eaten = new HashMap<>();
    for (Feeding feeding : plan.feedings()) {
      Demand demand = demands.get(feeding.mealId());
      if (demand != null) {
        eaten
            .computeIfAbsent(bandOf(demand, feeding), band -> new TreeMap<>())
            .merge(feeding.day(), (long) feeding.pieces(), Long::sum);
      }
    }
    return eaten;
  }

  private static long between(
      LocalDate from, LocalDate before, NavigableMap<LocalDate, Long> byDay) {
    return byDay.subMap(from, true, before, false).values().stream().mapToLong(n -> n).sum();
  }

  private Band bandOf(Demand demand, Feeding feeding) {
    return new Band(world.joint().keeperOf(demand), feeding.option().item());
  }
}
