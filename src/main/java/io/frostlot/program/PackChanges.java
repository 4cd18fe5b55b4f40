package io.frostlot.program;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Changes of a {@link Trial} in which packs come, go or are others, and meals follow. */
final class PackChanges {
  private static final int HANDED_ON = 4;
  private static final int SELDOM = 40;
  private static final int MOST_GIVEN_BACK = 3;
  private static final int DAYS_FED_ANEW = 7;
  private static final int FED_ANEW = 8;

  private final TrialWorld world;
  private final Trial trial;
  private final Refilling refilling;
  private final Shopping shopping;
  private final Augmenting augmenting;
  private final Mending mending;
  private final OrderChanges orders;
  private final Chance chance;

  PackChanges(TrialWorld world, TrialPlan plan, Refilling refilling, Chance chance) {
    this.world = world;
    this.refilling = refilling;
    this.chance = chance;
    trial = plan.trial();
    shopping = new Shopping(plan, world, refilling, chance);
    Exchanging exchanging = new Exchanging(trial, refilling, chance);
    augmenting = new Augmenting(trial, refilling, chance);
    mending = new Mending(world.menu(), trial, refilling, exchanging, augmenting, shopping, chance);
    orders = new OrderChanges(world, shopping, mending, chance);
  }

  /** Any one of them. */
  void any() {
    if (chance.below(3) == 0 && (rescue() || relieve() || secure())) {
      return;
    }
    if (chance.below(SELDOM) == 0) {
      orders.close();
    } else if (chance.below(SELDOM) == 0) {
      orders.shift();
    } else {
      switch (chance.below(8)) {
        case 0, 1 -> drop();
        case 2, 3 -> replace();
        case 4, 5 -> add();
        case 6 -> restow();
        default -> feedAnew();
      }
    }
  }

  /** A pack for an unmet meal, of any delivery; are there unmet meals? */
  private boolean rescue() {
    BitSet lacking = (BitSet) world.menu().planned().clone();
    lacking.and(refilling.unserved());
    List<Integer> unmet = lacking.stream().boxed().toList();
    if (unmet.isEmpty()) {
      return false;
    }
    int dish = chance.oneOf(unmet);
    if (!refilling.serveBest(dish, Refilling.ANY) && !augmenting.feed(dish)) {
      List<Integer> all = IntStream.range(0, world.deliveries().all().size()).boxed().toList();
      List<Shopping.Row> rows = shopping.feeding(dish, all);
      if (!rows.isEmpty()) {
        bring(chance.oneOf(rows));
        refilling.refill(unmet);
      }
    }
    return true;
  }

  /** A pack for a run outside its band, of what would bring it nearer; is there such a run? */
  private boolean relieve() {
    List<Integer> outside = trial.servings().outside();
    if (outside.isEmpty()) {
      return false;
    }
    int[] dishes = world.menu().runs().get(chance.oneOf(outside)).dishes();
    int dish = dishes[chance.below(dishes.length)];
    BitSet items = refilling.better(dish);
    bringSome(shopping.feeding(dish, shopping.open()), items);
    return true;
  }

  /** More of what is lacking for safety, eaten less or bought; is there such an item? */
  private boolean secure() {
    BitSet items = trial.lackingItems();
    if (items.isEmpty()) {
      return false;
    }
    List<Integer> eaters =
        items.stream()
            .boxed()
            .flatMap(item -> trial.servings().eaters(item).stream().boxed())
            .toList();
    for (int dish : chance.some(FED_ANEW, eaters)) {
      if (refilling.serveBest(dish, Refilling.ANY)) {
        return true;
      }
    }
    bringSome(shopping.ofOpen(), items);
    return true;
  }

  /** One of the rows of which some items come, where there is one. */
  private void bringSome(List<Shopping.Row> rows, BitSet items) {
    List<Shopping.Row> some =
        rows.stream().filter(row -> shopping.items(row).intersects(items)).toList();
    if (!some.isEmpty()) {
      bring(chance.oneOf(some));
    }
  }

  private Menu.Dish dish(int number) {
    return world.menu().dishes().get(number);
  }

  private void bring(Shopping.Row row) {
    if (shopping.buy(row)) {
      refilling.attract(shopping.items(row));
      mending.trim(row);
      for (int n = 0; n < MOST_GIVEN_BACK && refilling.isPossible() && !trial.fits(); n++) {
        drop();
      }
    }
  }

  /** What came of an item lies in another freezer. */
  private void restow() {
    List<Shopping.Row> bought = shopping.bought();
    if (!bought.isEmpty()) {
      Shopping.Row row = chance.oneOf(bought);
      shopping.restow(row);
      mending.mend(shopping.items(row));
    }
  }

  private void drop() {
    List<Shopping.Row> bought = shopping.bought();
    if (!bought.isEmpty()) {
      Shopping.Row row = chance.oneOf(bought);
      shopping.giveBack(row, 1);
      mending.mend(shopping.items(row));
    }
  }

  /** Another pack in place of one, or the same for others. */
  private void replace() {
    List<Shopping.Row> bought = shopping.bought();
    if (bought.isEmpty()) {
      return;
    }
    Shopping.Row row = chance.oneOf(bought);
    shopping.giveBack(row, 1);
    BitSet items = new BitSet();
    items.or(shopping.items(row));
    List<Integer> lost = shopping.release(items);
    List<Integer> open = shopping.open();
    boolean same = open.isEmpty() || chance.below(3) > 0;
    List<Shopping.Row> alike = shopping.alike(row);
    List<Shopping.Row> others =
        !alike.isEmpty() && chance.below(HANDED_ON) == 0
            ? alike
            : shopping.rows(same ? row.delivery() : chance.oneOf(open));
    List<Shopping.Row> useful =
        others.stream()
            .filter(it -> lost.stream().anyMatch(d -> dish(d).eats(shopping.items(it))))
            .toList();
    if (refilling.isPossible() && !others.isEmpty()) {
      Shopping.Row other = chance.oneOf(useful.isEmpty() ? others : useful);
      if (shopping.buy(other)) {
        items.or(shopping.items(other));
        refilling.refill(lost);
        refilling.attract(shopping.items(other));
        mending.trim(other);
      }
    }
    mending.mend(lost, items);
  }

  private void add() {
    List<Integer> open = shopping.open();
    if (world.deliveries().all().isEmpty()) {
      return;
    }
    boolean anywhere = open.isEmpty() || chance.below(4) == 0;
    int delivery = anywhere ? chance.below(world.deliveries().all().size()) : chance.oneOf(open);
    List<Shopping.Row> rows = shopping.rows(delivery);
    if (!rows.isEmpty()) {
      bring(chance.oneOf(rows));
    }
  }

  /** Some dishes of a few days are served anew. */
  private void feedAnew() {
    int first = chance.below(world.look().days());
    List<Integer> some = new ArrayList<>();
    for (int day = first; day < Math.min(first + DAYS_FED_ANEW, world.look().days()); day++) {
      for (int item = 0; item < world.wares().size(); item++) {
        IntStream.of(trial.servings().eaters(item, day)).forEach(some::add);
      }
    }
    List<Integer> few = chance.some(FED_ANEW, some);
    few.forEach(dish -> trial.serve(dish, -1));
    refilling.weigh();
    mending.mend(few, new BitSet());
  }
}
