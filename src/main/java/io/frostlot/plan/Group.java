package io.frostlot.plan;

import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.List;

/**
 * Keepers who order together.
 *
 * @param name shown
 * @param keepers at least one, with the same days, money and policy
 */
public record Group(String name, List<Keeper> keepers, Agreement agreement, Terms terms) {
  public Group {
    keepers = List.copyOf(keepers);
  }

  /**
   * How money is shared.
   *
   * @param way id of the way
   * @param base part that is shared equally, where the way has one
   * @param hostCredit what the others together pay the host per joint order
   * @param after how it is divided when something goes wrong after ordering
   */
  public record Terms(String way, Percent base, Money hostCredit, Afterwards after) {
    /** Does the way look at what subgroups would pay? */
    public boolean needsSubgroups() {
      return way.equals("shapley") || way.equals("nucleolus");
    }

    /** Does the way look at more than the goods of an order? */
    public boolean needsPlan() {
      return needsSubgroups() || way.equals("alone");
    }
  }

  /** What was agreed for what goes wrong after ordering. */
  public record Afterwards(DropOut dropOut, Loss loss) {}

  /** What somebody who drops out still pays. */
  public enum DropOut {
    KEEPS_SHARE("keeps-share", "its share of the charges, and the pieces that nobody takes over"),
    UNTIL_TAKEN("until-taken", "as before for pieces that nobody takes over, else nothing"),
    FREE("free", "nothing; all others pay for pieces that nobody takes over");

    private final String id;
    private final String says;

    DropOut(String id, String says) {
      this.id = id;
      this.says = says;
    }

    public String id() {
      return id;
    }

    public String says() {
      return says;
    }
  }

  /** Who bears pieces that did not come or came spoiled. */
  public enum Loss {
    HOLDER("holder", "those whose bag it is"),
    ITEM("item", "all who wanted the same item, by pieces"),
    ALL("all", "all, like shipping");

    private final String id;
    private final String says;

    Loss(String id, String says) {
      this.id = id;
      this.says = says;
    }

    public String id() {
      return id;
    }

    public String says() {
      return says;
    }
  }

  /** The same, sharing in another way. */
  public Group sharing(String way) {
    return new Group(
        name, keepers, agreement, new Terms(way, terms.base(), terms.hostCredit(), terms.after()));
  }

  /** What every keeper has in common is read off the first. */
  public Scenario first() {
    return keepers.get(0).scenario();
  }

  public List<String> names() {
    return keepers.stream().map(Keeper::name).toList();
  }
}
