package io.frostlot.program;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A mixed-integer linear program as plain numbers, one objective per {@link Level}; knows no solver
 * and no prey. Rows carry the id of the rule that imposed them.
 */
final class Model {
  static final double INFINITY = Double.POSITIVE_INFINITY;

  /** Relative; what sums of doubles may be off. */
  private static final double APART = 1e-11;

  private final List<Column> columns = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private String instance = "";
  private final Map<Level, Linear> objectives = new EnumMap<>(Level.class);

  Model() {
    for (Level level : Level.values()) {
      objectives.put(level, new Linear());
    }
  }

  /** What values a variable takes. */
  enum Kind {
    REAL,
    WHOLE,
    /** Whole too, but easily settled once all others are: a first solve may leave it real. */
    FOLLOWS
  }

  /** A variable and its bounds. */
  record Column(double least, double most, Kind kind) {
    /** Must it be whole, where those that follow from others are left real or not? */
    boolean isWhole(boolean relaxed) {
      return kind == Kind.WHOLE || (kind == Kind.FOLLOWS && !relaxed);
    }
  }

  /**
   * least <= terms <= most, the constant already moved over.
   *
   * @param instance which instance of the rule, in the keeper's words; empty where the rule has one
   */
  record Row(String rule, String instance, Linear.Terms terms, double least, double most) {}

  /** Names the instance of the rule that the rows to come belong to. */
  void instance(String name) {
    instance = name;
  }

  /** The same with only some of its rows. */
  Model withRows(Predicate<Row> kept) {
    Model part = new Model();
    part.columns.addAll(columns);
    rows.stream().filter(kept).forEach(part.rows::add);
    return part;
  }

  Var whole(double least, double most) {
    columns.add(new Column(least, most, Kind.WHOLE));
    return new Var(columns.size() - 1);
  }

  /** A whole number that follows from others. */
  Var follows(double least, double most) {
    columns.add(new Column(least, most, Kind.FOLLOWS));
    return new Var(columns.size() - 1);
  }

  Var real(double least, double most) {
    columns.add(new Column(least, most, Kind.REAL));
    return new Var(columns.size() - 1);
  }

  Var yesNo() {
    return whole(0, 1);
  }

  Column column(Var variable) {
    return columns.get(variable.index());
  }

  /** A row; an expression without terms that cannot hold becomes a row that cannot hold. */
  void row(String rule, double least, Linear expression, double most) {
    double constant = expression.constant();
    rows.add(new Row(rule, instance, expression.terms(), least - constant, most - constant));
  }

  void add(Row row) {
    rows.add(row);
  }

  void atMost(String rule, Linear left, double right) {
    row(rule, -INFINITY, left, right);
  }

  void atLeast(String rule, Linear left, double right) {
    row(rule, right, left, INFINITY);
  }

  void equal(String rule, Linear left, double right) {
    row(rule, right, left, right);
  }

  void minimise(Level level, Linear amount) {
    objectives.get(level).plus(amount);
  }

  /** The largest value that the bounds of columns allow an expression; infinite where one is. */
  double most(Linear expression) {
    Linear.Terms terms = expression.terms();
    double sum = expression.constant();
    for (int i = 0; i < terms.variables().length; i++) {
      Model.Column column = columns.get(terms.variables()[i]);
      double coefficient = terms.coefficients()[i];
      sum += coefficient * (coefficient > 0 ? column.most() : column.least());
    }
    return sum;
  }

  /** Is a point beyond a row, by however little more than numbers are told apart? */
  boolean isExceeded(double[] point) {
    return rows.stream().anyMatch(row -> isExceeded(row, point));
  }

  private static boolean isExceeded(Row row, double[] point) {
    double sum = 0;
    for (int i = 0; i < row.terms().variables().length; i++) {
      sum += row.terms().coefficients()[i] * point[row.terms().variables()[i]];
    }
    double apart = APART * (1 + Math.abs(sum));
    return sum < row.least() - apart || sum > row.most() + apart;
  }

  Linear objective(Level level) {
    return objectives.get(level);
  }

  /** A row that belongs to one solve only. */
  static Row extra(double least, Linear expression, double most) {
    double constant = expression.constant();
    return new Row("search", "", expression.terms(), least - constant, most - constant);
  }

  List<Column> columns() {
    return columns;
  }

  List<Row> rows() {
    return rows;
  }
}
