package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;

/**
 * Parts of a world's slots to search in: few enough that the program of the part is small, since
 * time and meals merge where no other delivery can come. The same seed gives the same parts.
 */
final class Neighbourhoods {
  private static final int MAIN_DELIVERIES = 5;
  private static final int FEW_SLOTS = 14;
  private static final int MOST_OTHERS = 12;
  private final List<Slot> slots;
  private final Map<String, List<Slot>> bySupplier = new LinkedHashMap<>();
  private final Random random = new Random(20_310_106);
  private int round;
  private int others;

  Neighbourhoods(World world) {
    slots = world.slots();
    slots.forEach(s -> bySupplier.computeIfAbsent(s.supplier(), id -> new ArrayList<>()).add(s));
  }

  /** Is there any part that is not the whole? */
  boolean isLarge() {
    return slots.size() > FEW_SLOTS;
  }

  /**
   * Parts to begin with: a few deliveries of one supplier, spread over time, and the first of each
   * other.
   */
  List<List<Slot>> beginnings() {
    List<List<Slot>> parts = new ArrayList<>();
    for (String main : bySupplier.keySet()) {
      TreeSet<Slot> part = new TreeSet<>();
      bySupplier.forEach(
          (supplier, of) -> {
            int count = Math.min(of.size(), supplier.equals(main) ? MAIN_DELIVERIES : 1);
            for (int i = 0; i < count; i++) {
              part.add(of.get(i * of.size() / count));
            }
          });
      parts.add(List.copyOf(part));
    }
    return parts;
  }

  /**
   * The slots of a plan, less one or two of them every third time, and others: some next to those
   * in use, some anywhere.
   */
  List<Slot> around(Answer.Judged best) {
    List<Slot> used = new ArrayList<>(best.plan().orders().stream().map(Order::slot).toList());
    Collections.shuffle(used, random);
    round++;
    int dropped = round % 3 == 0 ? Math.min(used.size(), 1 + random.nextInt(2)) : 0;
    TreeSet<Slot> part = new TreeSet<>(used.subList(dropped, used.size()));
    int most = used.size() + others;
    for (int tries = 0; part.size() < most && tries < 20 * most; tries++) {
      part.add(tries % 2 == 0 && !used.isEmpty() ? near(used) : any());
    }
    return List.copyOf(part);
  }

  /** Looks further where the last part was searched to the end, less far where it was not. */
  void learn(boolean finished) {
    others = finished ? Math.min(MOST_OTHERS, others + 1) : Math.max(1, others - 1);
  }

  private Slot near(List<Slot> used) {
    Slot from = used.get(random.nextInt(used.size()));
    List<Slot> of = bySupplier.get(from.supplier());
    int at = of.indexOf(from) + random.nextInt(7) - 3;
    return of.get(Math.max(0, Math.min(of.size() - 1, at)));
  }

  /** Each supplier as often as any other, however often it delivers. */
  private Slot any() {
    List<List<Slot>> suppliers = List.copyOf(bySupplier.values());
    List<Slot> of = suppliers.get(random.nextInt(suppliers.size()));
    return of.get(random.nextInt(of.size()));
  }
}
