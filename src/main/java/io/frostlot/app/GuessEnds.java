package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Solved;
import io.frostlot.storage.Freezer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Plans found at the ends of guesses. What can be followed in less room can be followed in more, so
 * ends that are about room begin with each other's plans. An end that is not proven is not known
 * where it is worse before money than one with less room; nor where it is so than the plan shown,
 * since less time was spent on it.
 */
final class GuessEnds {
  private final Solved shown;
  private final List<Found> all = new ArrayList<>();
  private final List<Solved> rooms = new ArrayList<>();

  /** Plans at both ends of a guess. */
  record Found(Guess guess, Solved low, Solved high) {}

  GuessEnds(Solved shown) {
    this.shown = shown;
  }

  void add(Found found) {
    all.add(found);
    if (isAboutRoom(found.guess())) {
      rooms.add(found.low());
      rooms.add(found.high());
    }
  }

  List<Found> all() {
    return all;
  }

  /** What a search at an end of a guess begins with. */
  List<Plan> known(Guess guess) {
    List<Plan> known = new ArrayList<>(List.of(shown.plan()));
    if (isAboutRoom(guess)) {
      rooms.forEach(room -> known.add(room.plan()));
    }
    return known;
  }

  private static boolean isAboutRoom(Guess guess) {
    return guess.kind() == Guess.Kind.FREEZER_LITRES || guess.kind() == Guess.Kind.PREY_LITRES;
  }

  /** How sure it is that a plan is the best at its end. */
  Guesses.Sure sure(Guess guess, Solved end) {
    if (end.answer() instanceof Answer.Proven) {
      return Guesses.Sure.PROVEN;
    }
    boolean beaten =
        end.standing().worseBeforeMoney(shown.standing())
            || (isAboutRoom(guess)
                && rooms.stream()
                    .filter(room -> end.standing().worseBeforeMoney(room.standing()))
                    .anyMatch(room -> hasRoomFor(end, room)));
    return beaten ? Guesses.Sure.UNKNOWN : Guesses.Sure.PERHAPS;
  }

  /** Has each freezer of one at least the room that it has in the other? */
  private static boolean hasRoomFor(Solved one, Solved other) {
    Map<String, Freezer> there = new HashMap<>();
    other.world().scenario().larder().freezers().forEach(it -> there.put(it.name(), it));
    return one.world().scenario().larder().freezers().stream()
        .allMatch(it -> it.usable().compareTo(there.get(it.name()).usable()) >= 0);
  }
}
