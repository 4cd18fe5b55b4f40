package io.frostlot.sharing;

import io.frostlot.plan.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A cost game: what each subgroup of a group would pay by itself.
 *
 * @param members names, at least one, at most {@link Subgroup#MOST_MEMBERS}
 * @param costs by {@link Subgroup#bits}; nobody costs nothing
 */
public record Game(List<String> members, List<Range> costs) {
  public Game {
    members = List.copyOf(members);
    costs = List.copyOf(costs);
    if (members.isEmpty() || members.size() > Subgroup.MOST_MEMBERS) {
      throw new IllegalArgumentException("a game of " + members.size() + " members");
    }
    if (costs.size() != 1 << members.size() || !costs.get(0).equals(Range.exactly(0))) {
      throw new IllegalArgumentException("a game needs a cost for every subgroup, 0 for nobody");
    }
  }

  public static Game of(List<String> members, Function<Subgroup, Range> cost) {
    List<Range> costs = new ArrayList<>(List.of(Range.exactly(0)));
    Subgroup.within(Subgroup.all(members.size())).forEach(some -> costs.add(cost.apply(some)));
    return new Game(members, costs);
  }

  public Subgroup all() {
    return Subgroup.all(members.size());
  }

  public Range cost(Subgroup some) {
    return costs.get(some.bits());
  }

  /** What the plan in hand of the whole group costs, and has to be shared. */
  public double toShare() {
    return cost(all()).most();
  }

  /** Costs to reckon with where one number is needed: what is to be shared, else the middle. */
  public double reckoned(Subgroup some) {
    return some.equals(all()) ? toShare() : cost(some).middle();
  }

  /** Every subgroup that has somebody in it but not everybody. */
  public List<Subgroup> parts() {
    return Subgroup.within(all()).stream().filter(some -> !some.equals(all())).toList();
  }

  /** The split of the whole group into parts that costs least; all together where it is equal. */
  public List<Subgroup> cheapestParts() {
    double[] least = new double[costs.size()];
    int[] part = new int[costs.size()];
    for (Subgroup some : Subgroup.within(all())) {
      int bits = some.bits();
      least[bits] = cost(some).most();
      part[bits] = bits;
      for (int sub = (bits - 1) & bits; sub > 0; sub = (sub - 1) & bits) {
        if (costs.get(sub).most() + least[bits - sub] < least[bits]) {
          least[bits] = costs.get(sub).most() + least[bits - sub];
          part[bits] = sub;
        }
      }
    }
    List<Subgroup> parts = new ArrayList<>();
    for (int left = all().bits(); left > 0; left -= part[left]) {
      parts.add(new Subgroup(part[left]));
    }
    return parts;
  }

  /** How far apart least and most of the cost are that is known least. */
  public double widest() {
    return Subgroup.within(all()).stream().mapToDouble(some -> cost(some).width()).max().orElse(0);
  }

  /** The game in which a subgroup may also split into parts that order each for themselves. */
  public Game splitting() {
    List<Range> closed = new ArrayList<>(costs);
    for (Subgroup some : Subgroup.within(all())) {
      for (int part = (some.bits() - 1) & some.bits(); part > 0; part = (part - 1) & some.bits()) {
        Range together = closed.get(part).plus(closed.get(some.bits() - part));
        closed.set(some.bits(), closed.get(some.bits()).orLess(together));
      }
    }
    return new Game(members, closed);
  }
}
