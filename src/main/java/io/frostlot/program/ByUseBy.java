package io.frostlot.program;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ObjIntConsumer;

/**
 * Pieces of one item that came at different times: first expired, first out. Days are numbers as in
 * {@link Timeline}.
 *
 * @param <T> what pieces came as
 */
final class ByUseBy<T> {
  private final List<Batch<T>> batches = new ArrayList<>();

  /**
   * Days on which pieces can be eaten.
   *
   * @param useBy the last one
   */
  record Days(int from, int useBy) {
    boolean hold(int day) {
      return from <= day && day <= useBy;
    }
  }

  /** Pieces that came together, and how many are left. */
  static final class Batch<T> {
    private final T as;
    private final Days days;
    private int left;

    private Batch(T as, Days days, int pieces) {
      this.as = as;
      this.days = days;
      left = pieces;
    }

    T as() {
      return as;
    }

    int left() {
      return left;
    }

    void lose(int pieces) {
      left -= pieces;
    }

    private int usableOn(int day) {
      return days.hold(day) ? left : 0;
    }
  }

  /** Adds pieces, behind those that go as early. */
  void add(T as, Days days, int pieces) {
    int at = batches.size();
    while (at > 0 && batches.get(at - 1).days.useBy > days.useBy) {
      at--;
    }
    batches.add(at, new Batch<>(as, days, pieces));
  }

  /** What goes first comes first. */
  List<Batch<T>> batches() {
    return batches;
  }

  /** Pieces that can be eaten on a day. */
  int there(int day) {
    int there = 0;
    for (Batch<T> batch : batches) {
      there += batch.usableOn(day);
    }
    return there;
  }

  /** Pieces that are there, or on their way, and can still be eaten on a day. */
  int lasting(int day) {
    int lasting = 0;
    for (Batch<T> batch : batches) {
      lasting += batch.days.useBy >= day ? batch.left : 0;
    }
    return lasting;
  }

  /** Takes pieces that can be eaten on a day, as far as there are any; says of what how many. */
  void take(int pieces, int day, ObjIntConsumer<T> taken) {
    int need = pieces;
    for (int i = 0; need > 0 && i < batches.size(); i++) {
      Batch<T> batch = batches.get(i);
      int count = Math.min(need, batch.usableOn(day));
      if (count > 0) {
        taken.accept(batch.as, count);
        batch.left -= count;
        need -= count;
      }
    }
    batches.removeIf(batch -> batch.left == 0);
  }

  /** Takes out what is past its use-by on a day. */
  void begin(int day, ObjIntConsumer<T> gone) {
    while (!batches.isEmpty() && batches.get(0).days.useBy < day) {
      Batch<T> first = batches.remove(0);
      gone.accept(first.as, first.left);
    }
  }
}
