package io.frostlot.files;

import io.frostlot.plan.Scenario;
import java.util.List;

/** What reading a scenario folder came to. */
public sealed interface Reading {
  /**
   * Everything was right.
   *
   * @param warnings sentences on what was accepted but should be looked at, such as old prices
   * @param digest SHA-256 of the scenario in canonical order, in hexadecimal (see {@link Digest})
   */
  record Accepted(Scenario scenario, List<String> warnings, String digest) implements Reading {
    public Accepted {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Something was wrong.
   *
   * @param problems of all files, at least one
   */
  record Refused(List<Problem> problems) implements Reading {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
