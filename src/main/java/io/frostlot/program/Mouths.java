package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Feeding;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Feeds, day after day, first those to whom something is promised, then the others with what is
 * promised to nobody; who finds nothing on its best day comes again on the next that it may.
 */
final class Mouths {
  private static final Comparator<Portion> ORDER =
      Comparator.comparing((Portion portion) -> portion.promised().isEmpty())
          .thenComparing(portion -> !portion.isMust());

  private final Pantry pantry;
  private final Map<Integer, List<Portion>> byDay = new HashMap<>();
  private final Map<Item, Integer> reserved = new HashMap<>();
  private final List<Served> served = new ArrayList<>();
  private int unmetMust;
  private int unmetOther;
  private Money tail = Money.ZERO;

  /** Meals that are alike, some of them eaten together. */
  record Served(Alike alike, Option option, int day, int meals, List<Feeding.Draw> draws) {}

  Mouths(Pantry pantry) {
    this.pantry = pantry;
  }

  void add(Portion portion, int day) {
    byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(portion);
  }

  /** Pieces that will be there on a day and are promised to nobody. */
  int spare(Item item, int day) {
    return Math.max(0, pantry.lasting(item, day) - reserved.getOrDefault(item, 0));
  }

  void promise(Portion portion, Option option) {
    portion.promise(option);
    reserved.merge(option.item(), portion.meals() * option.pieces(), Integer::sum);
  }

  void release(Portion portion) {
    portion
        .promised()
        .ifPresent(
            option ->
                reserved.merge(option.item(), -portion.meals() * option.pieces(), Integer::sum));
    portion.forget();
  }

  void feed(int day) {
    List<Portion> hungry = byDay.getOrDefault(day, new ArrayList<>());
    byDay.remove(day);
    hungry.sort(ORDER);
    for (Portion portion : hungry) {
      if (portion.days().contains(Timeline.date(day))) {
        eat(portion, day);
      }
      if (portion.meals() > 0 && portion.latest() > day) {
        add(portion, day + 1);
      } else {
        leave(portion);
      }
    }
  }

  private void eat(Portion portion, int day) {
    Optional<Option> promised = portion.promised();
    release(portion);
    promised.ifPresent(option -> eat(portion, option, day, pantry.there(option.item(), day)));
    for (Option option : portion.alike().first().options()) {
      int kept = reserved.getOrDefault(option.item(), 0);
      eat(portion, option, day, pantry.there(option.item(), day) - kept);
    }
    promised.filter(option -> portion.meals() > 0).ifPresent(it -> promise(portion, it));
  }

  private void eat(Portion portion, Option option, int day, int pieces) {
    int meals = Math.min(portion.meals(), pieces / option.pieces());
    if (meals > 0) {
      List<Feeding.Draw> draws = pantry.eat(option.item(), meals * option.pieces(), day);
      served.add(new Served(portion.alike(), option, day, meals, draws));
      portion.fed(meals);
    }
  }

  private void leave(Portion portion) {
    release(portion);
    if (portion.isOfTail()) {
      tail = tail.plus(portion.alike().first().tailPrice().times(portion.meals()));
    } else {
      unmetMust += portion.isMust() ? portion.meals() : 0;
      unmetOther += portion.isMust() ? 0 : portion.meals();
    }
  }

  List<Served> served() {
    return served;
  }

  /** What meals of the tail cost that nothing was left for. */
  Money tail() {
    return tail;
  }

  int unmetMust() {
    return unmetMust;
  }

  int unmetOther() {
    return unmetOther;
  }
}
