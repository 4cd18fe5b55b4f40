package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;

/**
 * Why nothing fits: a set of rule instances that cannot hold together and of which none can be
 * spared, found in at most {@value #MOST_MILLIS} ms by leaving out halves and solving again (U.
 * Junker, QuickXplain, AAAI 2004, from memory).
 */
final class Clash {
  private static final long CHECK_MILLIS = 3000;
  private static final long MOST_MILLIS = 20_000;
  private final Model model;
  private final long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(MOST_MILLIS);
  private final Map<Instance, String> sentences = new LinkedHashMap<>();
  private final Set<String> relaxable = new TreeSet<>();
  private boolean certain = true;

  private record Instance(String rule, String name) {}

  /**
   * Prepares the search.
   *
   * @param world one that no plan fits
   */
  Clash(World world) {
    model = Rules.program(world, Formulation.ofEachRule(Grain.DAYS.fit(world))).model();
    Map<String, Rule> rules = new LinkedHashMap<>();
    for (Rule rule : Rules.of(world)) {
      if (rule.relaxable()) {
        rules.put(rule.id(), rule);
        relaxable.add(rule.id());
      }
    }
    for (Model.Row row : model.rows()) {
      if (relaxable.contains(row.rule())) {
        String says = row.instance().isEmpty() ? rules.get(row.rule()).says() : row.instance();
        sentences.put(new Instance(row.rule(), row.instance()), says);
      }
    }
  }

  Answer.Impossible find() {
    List<Instance> clash = alone();
    if (clash.isEmpty() && !isImpossible(List.of())) {
      clash = explain(List.of(), List.of(), candidates());
    }
    List<String> says = clash.stream().map(sentences::get).distinct().toList();
    return new Answer.Impossible(
        says.isEmpty() ? List.of("What is in stock and under way contradicts itself.") : says,
        certain);
  }

  /**
   * An instance that contradicts the bounds of a variable by itself, as a meal without options
   * does.
   */
  private List<Instance> alone() {
    Map<Instance, Map<Integer, double[]>> bounds = new LinkedHashMap<>();
    for (Model.Row row : model.rows()) {
      if (relaxable.contains(row.rule()) && row.terms().variables().length <= 1) {
        Instance instance = new Instance(row.rule(), row.instance());
        int variable = row.terms().variables().length == 0 ? -1 : row.terms().variables()[0];
        double coefficient = variable < 0 ? 1 : row.terms().coefficients()[0];
        double a = row.least() / coefficient;
        double b = row.most() / coefficient;
        double[] both =
            bounds
                .computeIfAbsent(instance, i -> new HashMap<>())
                .computeIfAbsent(variable, v -> bounds(v));
        both[0] = Math.max(both[0], Math.min(a, b));
        both[1] = Math.min(both[1], Math.max(a, b));
        if (both[0] > both[1] + 1e-9) {
          return List.of(instance);
        }
      }
    }
    return List.of();
  }

  private double[] bounds(int variable) {
    if (variable < 0) {
      return new double[] {0, 0};
    }
    Model.Column column = model.columns().get(variable);
    return new double[] {column.least(), column.most()};
  }

  /** Whole rules that can be spared go first, which leaves few instances to look at. */
  private List<Instance> candidates() {
    List<Instance> kept = new ArrayList<>(sentences.keySet());
    for (String rule : relaxable) {
      List<Instance> without =
          kept.stream().filter(instance -> !instance.rule().equals(rule)).toList();
      if (isImpossible(without)) {
        kept = new ArrayList<>(without);
      }
    }
    return kept;
  }

  /** Of the candidates those that clash with the background; the background has just grown. */
  private List<Instance> explain(
      List<Instance> background, List<Instance> added, List<Instance> candidates) {
    if (!added.isEmpty() && isImpossible(background)) {
      return List.of();
    }
    if (candidates.size() == 1) {
      return candidates;
    }
    List<Instance> first = candidates.subList(0, candidates.size() / 2);
    List<Instance> second = candidates.subList(candidates.size() / 2, candidates.size());
    List<Instance> ofSecond = explain(both(background, first), first, second);
    List<Instance> ofFirst = explain(both(background, ofSecond), ofSecond, first);
    return both(ofFirst, ofSecond);
  }

  private static List<Instance> both(List<Instance> a, List<Instance> b) {
    List<Instance> both = new ArrayList<>(a);
    both.addAll(b);
    return both;
  }

  private boolean isImpossible(List<Instance> kept) {
    Set<Instance> set = new HashSet<>(kept);
    Model part =
        model.withRows(
            row ->
                !relaxable.contains(row.rule())
                    || set.contains(new Instance(row.rule(), row.instance())));
    Scip.End end =
        Scip.minimise(
            part,
            Scip.Task.of(
                new Linear(),
                List.of(),
                false,
                new Scip.Budget(
                    Math.min(CHECK_MILLIS, (deadline - System.nanoTime()) / 1_000_000),
                    OptionalInt.empty())));
    certain &= end.finished() || end.found();
    return end.impossible();
  }
}
