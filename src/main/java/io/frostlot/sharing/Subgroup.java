package io.frostlot.sharing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Some of the members of a group.
 *
 * @param bits bit i is set where member i (from 0) belongs to it
 */
public record Subgroup(int bits) {
  /** Members are bits of an int, and every subgroup has a cost. */
  public static final int MOST_MEMBERS = 20;

  public static final Subgroup NOBODY = new Subgroup(0);

  public static Subgroup all(int members) {
    return new Subgroup((1 << members) - 1);
  }

  public static Subgroup of(int member) {
    return new Subgroup(1 << member);
  }

  /** Every part of a group that has somebody in it, the group too, smaller numbers first. */
  public static List<Subgroup> within(Subgroup all) {
    return IntStream.rangeClosed(1, all.bits)
        .filter(bits -> (bits & ~all.bits) == 0)
        .mapToObj(Subgroup::new)
        .toList();
  }

  public boolean has(int member) {
    return (bits >> member & 1) == 1;
  }

  public Subgroup with(int member) {
    return new Subgroup(bits | 1 << member);
  }

  public Subgroup without(Subgroup others) {
    return new Subgroup(bits & ~others.bits);
  }

  public int size() {
    return Integer.bitCount(bits);
  }

  /** Indices of its members, rising. */
  public List<Integer> members() {
    return IntStream.range(0, Integer.SIZE - 1).filter(this::has).boxed().toList();
  }

  /** What its members pay together. */
  public double sum(double[] shares) {
    return members().stream().mapToDouble(member -> shares[member]).sum();
  }
}
