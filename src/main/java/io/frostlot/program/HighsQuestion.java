package io.frostlot.program;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.nio.file.Path;

/**
 * What one process asks another to minimise.
 *
 * @param model columns of which those that follow from others are whole too
 * @param milliseconds most, by the clock
 * @param nodes most of the branch and bound
 * @param answers folder for the answers
 */
record HighsQuestion(Model model, Linear objective, long milliseconds, int nodes, Path answers) {

  /** A task, with what belongs to it alone put into the model. */
  static HighsQuestion of(Model model, Scip.Task task, Path answers) {
    Model asked = new Model();
    double[] fixed = task.fixed();
    for (int i = 0; i < model.columns().size(); i++) {
      Model.Column column = model.columns().get(i);
      boolean free = i >= fixed.length || Double.isNaN(fixed[i]);
      double least = free ? column.least() : fixed[i];
      double most = free ? column.most() : fixed[i];
      if (column.isWhole(task.relaxed())) {
        asked.whole(least, most);
      } else {
        asked.real(least, most);
      }
    }
    model.rows().forEach(asked::add);
    task.extra().forEach(asked::add);
    int nodes = Scip.nodes(task.budget().rounds());
    return new HighsQuestion(asked, task.objective(), task.budget().milliseconds(), nodes, answers);
  }

  void write(DataOutput out) throws IOException {
    out.writeUTF(answers.toString());
    out.writeLong(milliseconds);
    out.writeInt(nodes);
    out.writeInt(model.columns().size());
    for (Model.Column column : model.columns()) {
      out.writeDouble(column.least());
      out.writeDouble(column.most());
      out.writeBoolean(column.isWhole(false));
    }
    out.writeInt(model.rows().size());
    for (Model.Row row : model.rows()) {
      out.writeDouble(row.least());
      write(row.terms(), out);
      out.writeDouble(row.most());
    }
    write(objective.terms(), out);
    out.writeDouble(objective.constant());
  }

  private static void write(Linear.Terms terms, DataOutput out) throws IOException {
    out.writeInt(terms.variables().length);
    for (int i = 0; i < terms.variables().length; i++) {
      out.writeInt(terms.variables()[i]);
      out.writeDouble(terms.coefficients()[i]);
    }
  }

  static HighsQuestion read(DataInput in) throws IOException {
    Path answers = Path.of(in.readUTF());
    long milliseconds = in.readLong();
    int nodes = in.readInt();
    Model model = new Model();
    for (int columns = in.readInt(); columns > 0; columns--) {
      double least = in.readDouble();
      double most = in.readDouble();
      if (in.readBoolean()) {
        model.whole(least, most);
      } else {
        model.real(least, most);
      }
    }
    for (int rows = in.readInt(); rows > 0; rows--) {
      double least = in.readDouble();
      model.row("", least, terms(in), in.readDouble());
    }
    Linear objective = terms(in).plus(in.readDouble());
    return new HighsQuestion(model, objective, milliseconds, nodes, answers);
  }

  private static Linear terms(DataInput in) throws IOException {
    Linear terms = new Linear();
    for (int count = in.readInt(); count > 0; count--) {
      Var variable = new Var(in.readInt());
      terms.plus(in.readDouble(), variable);
    }
    return terms;
  }
}
