package io.frostlot.program;

import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All items of a {@link Trial} as they lie in freezers: what room they take, what their nights cost
 * and what is lacking for safety.
 */
final class Stocks {
  private final LookDays look;
  private final Undo undo;
  private final ItemStock[] stock;
  private final ItemStock.Course[] courses;
  private final BitSet sparing = new BitSet();
  private final long[] microlitres;
  private final double[] perNight;
  private final int[] bandOf;
  private final double margin;
  private final RoomTaken room;
  private final int[] checkOn;
  private ItemStock.Looked looked = new ItemStock.Looked(new int[0], new int[0]);
  private final int[] comingOn;
  private final int[][] bandEaten;
  private final int[][] bandLeft;
  private final int[] marginLacking;
  private int lacking;

  /** A keeper's pieces of one size. */
  private record Band(String keeper, SizeBand size) {
    static Band of(Ware ware) {
      return new Band(ware.keeper(), ware.item().band());
    }
  }

  /** Empty freezers. */
  Stocks(World world, LookDays look, List<Ware> wares, Undo undo) {
    this.look = look;
    this.undo = undo;
    int places = RoomTaken.places(world);
    stock = wares.stream().map(it -> new ItemStock(look, places)).toArray(ItemStock[]::new);
    microlitres = wares.stream().mapToLong(it -> it.item().litres().microlitres()).toArray();
    HoldingCharge charge = world.scenario().policy().charges().holding();
    perNight =
        wares.stream().mapToDouble(it -> charge.of(1, it.item().litres()).toDouble()).toArray();
    margin = world.scenario().policy().safety().margin().fraction().doubleValue();
    Map<Band, Integer> bands = new LinkedHashMap<>();
    wares.forEach(ware -> bands.putIfAbsent(Band.of(ware), bands.size()));
    bandOf = wares.stream().mapToInt(ware -> bands.get(Band.of(ware))).toArray();
    room = new RoomTaken(world, look);
    int checks = look.checks().length;
    checkOn = new int[checks];
    comingOn = new int[look.comings().length];
    bandEaten = new int[bands.size()][comingOn.length];
    bandLeft = new int[bands.size()][comingOn.length];
    marginLacking = new int[bands.size()];
    courses = new ItemStock.Course[stock.length];
    for (int i = 0; i < stock.length; i++) {
      courses[i] = stock[i].walk(looked);
    }
    beginWith(world);
  }

  /** Days that are looked at whatever is ordered. */
  private void beginWith(World world) {
    checkOn[0]++;
    Period all = new Period(look.first(), look.date(look.days() - 1));
    Stream.concat(
            world.scenario().larder().freezers().stream().flatMap(it -> it.limitedFrom(all)),
            world.joint().collecting().days().stream())
        .mapToInt(look::check)
        .filter(check -> check >= 0)
        .forEach(check -> checkOn[check]++);
    for (PlacedLot lot : world.scenario().larder().placed()) {
      comes(lot.arrivesEarliest(), lot.arrivesLatest(), 1);
    }
    look();
  }

  private void comes(LocalDate earliest, LocalDate latest, int times) {
    int check = look.check(earliest);
    if (check >= 0) {
      checkOn[check] += times;
    }
    int coming = look.coming(latest);
    if (coming >= 0) {
      comingOn[coming] += times;
    }
  }

  private void look() {
    looked = new ItemStock.Looked(placesOn(checkOn), placesOn(comingOn));
  }

  private static int[] placesOn(int[] on) {
    return IntStream.range(0, on.length).filter(place -> on[place] > 0).toArray();
  }

  /** Something comes by a delivery by which nothing came, or nothing any more. */
  void comes(Slot slot, boolean now) {
    comes(slot.arrivesEarliest(), slot.arrivesLatest(), now ? 1 : -1);
    look();
    undo.add(
        () -> {
          comes(slot.arrivesEarliest(), slot.arrivesLatest(), now ? -1 : 1);
          look();
        });
  }

  int items() {
    return stock.length;
  }

  /** Of the planning and of the tail. */
  int days() {
    return look.days();
  }

  ItemStock of(int item) {
    return stock[item];
  }

  /** Microlitres that are lacking, over all places and days of checks. */
  long tooMuch() {
    return room.tooMuch();
  }

  /** Pieces and piece-days that are lacking for safety. */
  int lacking() {
    return lacking;
  }

  /** Items of which more pieces might be enough for safety. */
  BitSet lackingItems() {
    BitSet items = new BitSet();
    for (int item = 0; item < stock.length; item++) {
      items.set(item, courses[item].uncovered() > 0 || marginLacking[bandOf[item]] > 0);
    }
    return items;
  }

  /** What eating so many pieces on a day can at most spare of the charge for nights. */
  double spared(int item, int pieces, int day) {
    return perNight[item] * pieces * Math.max(0, look.lastPlanned() - day + 1);
  }

  /** Pieces of an item that may be eaten more on a day, at most. */
  int spare(int item, int day) {
    return courses[item].spare().on()[day];
  }

  /** Items of which pieces may be eaten more on some day. */
  BitSet sparing() {
    return sparing;
  }

  /** The first day on which an item is lacking; -1 where there is enough. */
  int lackingOn(int item) {
    return stock[item].lackingOn();
  }

  /**
   * Takes stock of an item anew.
   *
   * @return what its nights cost more than before, in money; infinite where there is too little of
   *     it
   */
  double walk(int item) {
    ItemStock.Course before = courses[item];
    ItemStock.Course now = stock[item].walk(looked);
    if (now.isLacking()) {
      return Double.POSITIVE_INFINITY;
    }
    replace(item, before, now);
    lack(now.uncovered() - before.uncovered());
    undo.add(() -> replace(item, now, before));
    if (margin > 0) {
      takeMargin(bandOf[item]);
    }
    return perNight[item] * (now.pieceNights() - before.pieceNights());
  }

  private void lack(int more) {
    int before = lacking;
    if (more != 0) {
      lacking += more;
      undo.add(() -> lacking = before);
    }
  }

  private void replace(int item, ItemStock.Course from, ItemStock.Course to) {
    courses[item] = to;
    sparing.set(item, to.spare().most() > 0);
    count(item, from, -1);
    count(item, to, 1);
  }

  private void count(int item, ItemStock.Course course, int times) {
    room.add(course, times * microlitres[item]);
    int[] comings = course.on().comings();
    for (int k = 0; k < comings.length; k++) {
      bandEaten[bandOf[item]][comings[k]] += times * course.eaten()[k];
      bandLeft[bandOf[item]][comings[k]] += times * course.left()[k];
    }
  }

  private void takeMargin(int band) {
    int sum = 0;
    int since = 0;
    for (int k = 0; k < comingOn.length; k++) {
      if (comingOn[k] > 0) {
        int wanted = (int) Math.ceil(margin * (bandEaten[band][k] - since) - 1e-9);
        sum += Math.max(0, wanted - bandLeft[band][k]);
        since = bandEaten[band][k];
      }
    }
    int before = marginLacking[band];
    if (sum != before) {
      marginLacking[band] = sum;
      undo.add(() -> marginLacking[band] = before);
      lack(sum - before);
    }
  }
}
