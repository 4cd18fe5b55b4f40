package io.frostlot.oracle;

import java.util.Arrays;

/**
 * Counts of interchangeable pieces, sorted by item, freezer, whether moved into it, last usable
 * day, first day on which they are past their best, and "from": 0 where they could be eaten before
 * today, else {@link #comingOn} the day on which they first can; unchangeable.
 */
final class Cells {
  static final Cells NONE = new Cells(new long[0]);
  private static final long COUNT = 0xFFF;
  private static final long MOVED = 1L << 55;
  private final long[] words;

  private Cells(long[] words) {
    this.words = words;
  }

  int size() {
    return words.length;
  }

  int item(int cell) {
    return (int) (words[cell] >>> 56);
  }

  int freezer(int cell) {
    return (int) (words[cell] >>> 48) & 0x7F;
  }

  boolean isMoved(int cell) {
    return (words[cell] & MOVED) != 0;
  }

  int useBy(int cell) {
    return (int) (words[cell] >>> 36) & 0xFFF;
  }

  int pastBest(int cell) {
    return (int) (words[cell] >>> 24) & 0xFFF;
  }

  int from(int cell) {
    return (int) (words[cell] >>> 12) & 0xFFF;
  }

  Kind kind(int cell) {
    return new Kind(item(cell), freezer(cell), isMoved(cell), useBy(cell), pastBest(cell));
  }

  int count(int cell) {
    return (int) (words[cell] & COUNT);
  }

  /** Of what could be eaten before today. */
  int indexOf(Kind kind) {
    int cell = 0;
    while (from(cell) > 0 || !kind(cell).equals(kind)) {
      cell++;
    }
    return cell;
  }

  static int comingOn(int day) {
    return day + 1;
  }

  /** Can the pieces be eaten on a day, as far as their arrival goes? */
  boolean isHere(int cell, int day) {
    return from(cell) <= day + 1;
  }

  boolean sameGroup(int cell, int other) {
    return words[cell] >>> 48 == words[other] >>> 48;
  }

  /** What is the same about interchangeable pieces. */
  record Kind(int item, int freezer, boolean moved, int useBy, int pastBest) {
    private long key(int from) {
      return (long) item << 56
          | (long) freezer << 48
          | (moved ? MOVED : 0)
          | (long) useBy << 36
          | (long) pastBest << 24
          | (long) from << 12;
    }
  }

  Cells plus(Kind kind, int from, int count) {
    if (count == 0) {
      return this;
    }
    if (count > COUNT) {
      throw new IllegalArgumentException(count + " pieces");
    }
    long key = kind.key(from);
    int at = 0;
    while (at < words.length && (words[at] & ~COUNT) < key) {
      at++;
    }
    if (at < words.length && (words[at] & ~COUNT) == key) {
      long[] more = words.clone();
      more[at] += count;
      return new Cells(more);
    }
    long[] more = new long[words.length + 1];
    System.arraycopy(words, 0, more, 0, at);
    more[at] = key | count;
    System.arraycopy(words, at, more, at + 1, words.length - at);
    return new Cells(more);
  }

  Cells minus(int cell, int count) {
    if (count == 0) {
      return this;
    }
    if (count(cell) > count) {
      long[] fewer = words.clone();
      fewer[cell] -= count;
      return new Cells(fewer);
    }
    long[] fewer = new long[words.length - 1];
    System.arraycopy(words, 0, fewer, 0, cell);
    System.arraycopy(words, cell + 1, fewer, cell, fewer.length - cell);
    return new Cells(fewer);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Cells cells && Arrays.equals(words, cells.words);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(words);
  }
}
