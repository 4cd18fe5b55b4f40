package io.frostlot.app;

import io.frostlot.files.GroupFolder;
import io.frostlot.files.GroupReading;
import io.frostlot.files.InvoiceFile;
import io.frostlot.files.InvoiceReading;
import io.frostlot.files.Problem;
import io.frostlot.plan.Group;
import io.frostlot.plan.LinearSolver;
import io.frostlot.plan.Settlement;
import io.frostlot.sharing.Settling;
import io.frostlot.sharing.Sharing;
import java.nio.file.Path;
import java.util.List;

/** Settles the invoice of a joint order that was placed; nothing is planned. */
public final class SettleBox {
  private final LinearSolver solver;

  public SettleBox(LinearSolver solver) {
    this.solver = solver;
  }

  /** What it came to. */
  public sealed interface Outcome {}

  /**
   * Something cannot be used.
   *
   * @param problems of all files, at least one
   */
  public record Refused(List<Problem> problems) implements Outcome {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /** It is settled. */
  public record Done(Settlement settlement) implements Outcome {}

  /**
   * Reads the group and the invoice, and divides it.
   *
   * @param profiles folder of supplier profiles, at most one; none: beside the group
   */
  public Outcome settle(Path folder, Path invoice, List<Path> profiles) {
    GroupReading reading =
        profiles.isEmpty() ? GroupFolder.read(folder) : GroupFolder.read(folder, profiles.get(0));
    if (reading instanceof GroupReading.Refused refused) {
      return new Refused(refused.problems());
    }
    Group group = ((GroupReading.Accepted) reading).group();
    InvoiceReading read = InvoiceFile.read(group, invoice);
    if (read instanceof InvoiceReading.Refused refused) {
      return new Refused(refused.problems());
    }
    Sharing sharing = new Sharing(group.terms().base(), solver);
    return new Done(
        new Settling(group, sharing).settle(((InvoiceReading.Accepted) read).invoice()));
  }
}
