package io.frostlot.program;

import java.util.Arrays;

/**
 * A linear expression: a constant plus coefficients on variables; grows in place, terms on the same
 * variable add up when it is read.
 */
final class Linear {
  private int[] variables = new int[8];
  private double[] coefficients = new double[8];
  private int size;
  private double constant;

  static Linear of(Var variable) {
    return new Linear().plus(1, variable);
  }

  static Linear constant(double value) {
    return new Linear().plus(value);
  }

  Linear plus(double coefficient, Var variable) {
    if (coefficient != 0) {
      if (size == variables.length) {
        variables = Arrays.copyOf(variables, 2 * size);
        coefficients = Arrays.copyOf(coefficients, 2 * size);
      }
      variables[size] = variable.index();
      coefficients[size++] = coefficient;
    }
    return this;
  }

  Linear plus(double value) {
    constant += value;
    return this;
  }

  Linear plus(double factor, Linear other) {
    for (int i = 0; i < other.size; i++) {
      plus(factor * other.coefficients[i], new Var(other.variables[i]));
    }
    constant += factor * other.constant;
    return this;
  }

  Linear plus(Linear other) {
    return plus(1, other);
  }

  Linear minus(Linear other) {
    return plus(-1, other);
  }

  Linear copy() {
    return new Linear().plus(this);
  }

  double constant() {
    return constant;
  }

  boolean hasNoTerms() {
    return size == 0;
  }

  /** The value at a point. */
  double at(double[] point) {
    double value = constant;
    for (int i = 0; i < size; i++) {
      value += coefficients[i] * point[variables[i]];
    }
    return value;
  }

  /** Terms with duplicates added up and zeros dropped, by variable. */
  Terms terms() {
    Integer[] order = new Integer[size];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> Integer.compare(variables[a], variables[b]));
    int[] indices = new int[size];
    double[] values = new double[size];
    int n = 0;
    for (int at : order) {
      if (n > 0 && indices[n - 1] == variables[at]) {
        values[n - 1] += coefficients[at];
      } else {
        indices[n] = variables[at];
        values[n++] = coefficients[at];
      }
    }
    int kept = 0;
    for (int i = 0; i < n; i++) {
      if (Math.abs(values[i]) > 1e-12) {
        indices[kept] = indices[i];
        values[kept++] = values[i];
      }
    }
    return new Terms(Arrays.copyOf(indices, kept), Arrays.copyOf(values, kept));
  }

  /** Variable indices, rising, and their coefficients. */
  record Terms(int[] variables, double[] coefficients) {}
}
