package io.frostlot.oracle;

import java.util.Arrays;

/**
 * Counts of interchangeable pieces, sorted by item, freezer, last usable day and "from": 0 where
 * they could be eaten before today, else {@link #comingOn} the day on which they first can;
 * unchangeable.
 */
final class Cells {
  static final Cells NONE = new Cells(new long[0]);
  private static final long COUNT = 0xFFFF;
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
    return (int) (words[cell] >>> 48) & 0xFF;
  }

  int useBy(int cell) {
    return (int) (words[cell] >>> 32) & 0xFFFF;
  }

  int from(int cell) {
    return (int) (words[cell] >>> 16) & 0xFFFF;
  }

  int count(int cell) {
    return (int) (words[cell] & COUNT);
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

  private static long key(int item, int freezer, int useBy, int from) {
    return (long) item << 56 | (long) freezer << 48 | (long) useBy << 32 | (long) from << 16;
  }

  Cells plus(int item, int freezer, int useBy, int from, int count) {
    if (count == 0) {
      return this;
    }
    long key = key(item, freezer, useBy, from);
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
