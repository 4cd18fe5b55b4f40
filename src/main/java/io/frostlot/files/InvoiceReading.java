package io.frostlot.files;

import io.frostlot.plan.Invoice;
import java.util.List;

/** What reading an invoice came to. */
public sealed interface InvoiceReading {
  /** Everything was right. */
  record Accepted(Invoice invoice) implements InvoiceReading {}

  /**
   * Something was wrong.
   *
   * @param problems at least one
   */
  record Refused(List<Problem> problems) implements InvoiceReading {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
