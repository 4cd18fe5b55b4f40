package io.frostlot.sharing;

/** What can be asked of a way to share. */
public enum Axiom {
  EFFICIENCY("the shares add up to the cost"),
  SYMMETRY("members that add the same and get the same pay the same"),
  NULL_MEMBER("who gets nothing and adds nothing to the cost of any subgroup pays nothing"),
  ADDITIVITY("two bills over the same goods shared one by one or as one come to the same"),
  STAND_ALONE("nobody pays more than alone, where subgroups may split");

  private final String says;

  Axiom(String says) {
    this.says = says;
  }

  public String says() {
    return says;
  }
}
