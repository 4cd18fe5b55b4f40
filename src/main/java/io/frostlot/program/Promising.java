package io.frostlot.program;

import io.frostlot.supply.Slot;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;

/** Deliveries from which a relaxation would order, for those who look for plans. */
final class Promising {
  private final Deque<Set<Slot>> waiting = new ArrayDeque<>();

  synchronized void add(Collection<Slot> slots) {
    waiting.addFirst(Set.copyOf(slots));
  }

  /** The newest, once. */
  synchronized Optional<Set<Slot>> next() {
    return Optional.ofNullable(waiting.poll());
  }
}
