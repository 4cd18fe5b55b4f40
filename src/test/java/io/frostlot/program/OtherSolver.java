package io.frostlot.program;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** A {@link Model} written out for ojAlgo, which shares no code with the solvers of the program. */
final class OtherSolver {
  /** Levels before money are whole. */
  private static final double SLACK = 0.25;

  private OtherSolver() {}

  /** Least values level by level, each held for the next; empty where the model has no solution. */
  static Optional<Map<Level, Double>> levels(Model model) {
    Map<Level, Double> values = new EnumMap<>(Level.class);
    List<Model.Row> held = new ArrayList<>();
    for (Level level : Level.values()) {
      Linear amount = model.objective(level);
      Optional<Double> least = least(model, amount, held);
      if (least.isEmpty()) {
        return Optional.empty();
      }
      values.put(level, least.get());
      held.add(Model.extra(-Model.INFINITY, amount, Math.rint(least.get()) + SLACK));
    }
    return Optional.of(values);
  }

  private static Optional<Double> least(Model model, Linear amount, List<Model.Row> held) {
    ExpressionsBasedModel written = new ExpressionsBasedModel();
    List<Variable> variables = new ArrayList<>();
    for (Model.Column column : model.columns()) {
      Variable variable = written.newVariable("x" + variables.size());
      bound(variable, column.least(), column.most());
      variables.add(variable.integer(column.kind() != Model.Kind.REAL));
    }
    int rows = 0;
    for (List<Model.Row> some : List.of(model.rows(), held)) {
      for (Model.Row row : some) {
        Expression expression = written.newExpression("r" + rows++);
        add(expression, row.terms(), variables);
        if (Double.isFinite(row.least())) {
          expression.lower(row.least());
        }
        if (Double.isFinite(row.most())) {
          expression.upper(row.most());
        }
      }
    }
    Expression objective = written.newExpression("objective").weight(1);
    add(objective, amount.terms(), variables);
    Optimisation.Result result = written.minimise();
    return result.getState().isFeasible()
        ? Optional.of(result.getValue() + amount.constant())
        : Optional.empty();
  }

  private static void bound(Variable variable, double least, double most) {
    variable.lower(least);
    if (Double.isFinite(most)) {
      variable.upper(most);
    }
  }

  private static void add(Expression expression, Linear.Terms terms, List<Variable> variables) {
    for (int i = 0; i < terms.variables().length; i++) {
      expression.set(variables.get(terms.variables()[i]), terms.coefficients()[i]);
    }
  }
}
