package io.frostlot.program;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Pieces of one item of one keeper that lie in freezers, and how many are eaten on each day; what
 * goes past its use-by first is eaten first, whatever freezer it lies in. Days are counted from the
 * first.
 */
final class ItemStock {
  /**
   * Days of pieces in a freezer.
   *
   * @param waits first on which they wait for it at the host's; {@code earliest} where they do not
   * @param earliest first on which they take room
   * @param from first on which they can be eaten
   * @param until last
   */
  record Stay(int waits, int earliest, int from, int until) {}

  /**
   * Pieces that came together into one freezer.
   *
   * @param freezer by number
   * @param fresh have they come since the first day?
   */
  record Batch(Stay stay, int freezer, boolean fresh) {
    /** Does it wait for its freezer on a day? */
    boolean isWaiting(int day) {
      return stay.waits() <= day && day < stay.earliest();
    }

    int earliest() {
      return stay.earliest();
    }

    int from() {
      return stay.from();
    }

    int until() {
      return stay.until();
    }
  }

  /**
   * Days that are looked at, as places among all that may be, see {@link LookDays}.
   *
   * @param checks days of checks
   * @param comings days on which something comes
   */
  record Looked(int[] checks, int[] comings) {}

  /**
   * What follows from what comes and what is eaten.
   *
   * @param lackingOn a day on which there are too few to eat, and nothing else counts; -1 where
   *     there is none
   * @param pieceNights planning nights of pieces in freezers
   * @param uncovered piece-days of cover that are lacking
   * @param on days that were looked at
   * @param lying pieces in each place (see {@link RoomTaken}) on each day of checks
   * @param eaten pieces before each day on which something comes
   * @param left pieces on the night before each of these
   * @param spare what may be eaten more
   */
  record Course(
      int lackingOn,
      long pieceNights,
      int uncovered,
      Looked on,
      int[][] lying,
      int[] eaten,
      int[] left,
      Spare spare) {
    private static final int[] NONE = new int[0];

    static Course lacking(int day) {
      return new Course(day, 0, 0, new Looked(NONE, NONE), new int[0][], NONE, NONE, Spare.NOTHING);
    }

    boolean isLacking() {
      return lackingOn >= 0;
    }
  }

  /**
   * Pieces that may be eaten more on a day, at most, where others are to have theirs.
   *
   * @param on each day
   * @param most on any day
   */
  record Spare(int[] on, int most) {
    private static final Spare NOTHING = new Spare(new int[0], 0);
  }

  private final LookDays look;
  private final int places;
  private final List<Batch> batches = new ArrayList<>();
  private final List<Integer> pieces = new ArrayList<>();
  private final int[] eaten;
  private final BitSet meals = new BitSet();
  private int since;
  private Batch[] now = new Batch[0];
  private int[] counts = new int[0];
  private int[] byFrom = new int[0];

  /**
   * Nothing lies there.
   *
   * @param places freezers and where pieces wait, see {@link RoomTaken}
   */
  ItemStock(LookDays look, int places) {
    this.look = look;
    this.places = places;
    eaten = new int[look.days()];
  }

  /** Adds a batch without pieces and returns its number. */
  int add(Batch batch) {
    batches.add(batch);
    pieces.add(0);
    return batches.size() - 1;
  }

  Batch batch(int number) {
    return batches.get(number);
  }

  int pieces(int batch) {
    return pieces.get(batch);
  }

  void put(int batch, int count) {
    pieces.set(batch, pieces.get(batch) + count);
    List<Integer> there = inOrder();
    now = there.stream().map(batches::get).toArray(Batch[]::new);
    counts = there.stream().mapToInt(pieces::get).toArray();
    byFrom =
        IntStream.range(0, now.length)
            .boxed()
            .sorted(Comparator.comparingInt(b -> now[b].from()))
            .mapToInt(b -> b)
            .toArray();
  }

  /** The numbers of batches with pieces, in the order in which they are eaten. */
  List<Integer> inOrder() {
    List<Integer> there = new ArrayList<>();
    for (int b = 0; b < batches.size(); b++) {
      if (pieces.get(b) > 0) {
        there.add(b);
      }
    }
    there.sort(Comparator.comparing((Integer b) -> batches.get(b).until()));
    return there;
  }

  void eat(int day, int count) {
    eaten[day] += count;
    since += Math.max(0, count);
    meals.set(day, eaten[day] > 0);
  }

  /** Pieces that were eaten more since all days were walked. */
  int eatenSince() {
    return since;
  }

  /** All is as it was when the days were walked. */
  void asWalked() {
    since = 0;
  }

  /** The first day on which there are too few to eat; -1 where there are enough. */
  int lackingOn() {
    int[] left = counts.clone();
    int gone = 0;
    for (int day = meals.nextSetBit(0); day >= 0; day = meals.nextSetBit(day + 1)) {
      while (gone < left.length && now[gone].until() < day) {
        gone++;
      }
      int needed = eaten[day];
      for (int b = gone; needed > 0 && b < left.length; b++) {
        int taken = now[b].from() <= day ? Math.min(needed, left[b]) : 0;
        left[b] -= taken;
        needed -= taken;
      }
      if (needed > 0) {
        return day;
      }
    }
    return -1;
  }

  /** All days, up to one on which there are too few to eat. */
  Course walk(Looked on) {
    since = 0;
    return new StockWalk(look, now, counts, byFrom).over(eaten, meals, on, places);
  }
}
