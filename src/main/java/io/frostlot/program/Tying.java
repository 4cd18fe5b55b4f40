package io.frostlot.program;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A rule that ties the meals of one animal together, and gives way before one of them does. Animals
 * that are fed alike are put to the solver as one, for their sum, which is a relaxation; where that
 * cannot be handed out to each, they are taken apart (see {@link Apart}).
 */
interface Tying extends Rule {
  /** The meals that it ties, by animal, in any order. */
  Map<String, List<Demand>> tied();

  /** What it asks for an animal beside its meals; animals of unlike wishes are not fed alike. */
  Object wish(String animal);

  /** Animals for which a plan falls short of what it asks. */
  Set<String> lacking(Plan plan);

  /** Is only a part of what it asks put to the solver? Plans are judged by all of it. */
  default boolean isRelaxed() {
    return false;
  }

  @Override
  default boolean relaxable() {
    return true;
  }
}
