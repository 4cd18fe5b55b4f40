package io.frostlot.sharing;

import static io.frostlot.sharing.Axiom.ADDITIVITY;
import static io.frostlot.sharing.Axiom.EFFICIENCY;
import static io.frostlot.sharing.Axiom.NULL_MEMBER;
import static io.frostlot.sharing.Axiom.STAND_ALONE;
import static io.frostlot.sharing.Axiom.SYMMETRY;

import java.util.Set;
import java.util.stream.Stream;

/** A way to share what cannot be counted by the piece. */
public enum Way {
  EQUAL("equal", "in equal parts"),
  WEIGHT("weight", "by grams"),
  VALUE("value", "by the value of the pieces"),
  SPACE("space", "by room in the box"),
  BASE_AND_WEIGHT("base-and-weight", "an equal base, the rest by grams"),
  ALONE("alone", "all in proportion to the cost alone"),
  SHAPLEY("shapley", "what each adds, averaged over all orders of joining (Shapley value)"),
  NUCLEOLUS("nucleolus", "the largest complaint of any subgroup made least (nucleolus)");

  private final String id;
  private final String says;

  Way(String id, String says) {
    this.id = id;
    this.says = says;
  }

  /** The one of an id; throws NoSuchElementException where there is none. */
  public static Way of(String id) {
    return Stream.of(values()).filter(way -> way.id.equals(id)).findFirst().orElseThrow();
  }

  /** As typed in files and on the command line. */
  public String id() {
    return id;
  }

  public String says() {
    return says;
  }

  /** What it satisfies, whatever the bill; base and weight with a base above nothing. */
  public Set<Axiom> axioms() {
    return switch (this) {
      case EQUAL, BASE_AND_WEIGHT -> Set.of(EFFICIENCY, SYMMETRY, ADDITIVITY);
      case WEIGHT, VALUE, SPACE -> Set.of(EFFICIENCY, SYMMETRY, NULL_MEMBER, ADDITIVITY);
      case ALONE, NUCLEOLUS -> Set.of(EFFICIENCY, SYMMETRY, NULL_MEMBER, STAND_ALONE);
      case SHAPLEY -> Set.of(Axiom.values());
    };
  }
}
