package io.frostlot.files;

import io.frostlot.plan.Group;
import java.util.List;

/** What reading a group folder came to. */
public sealed interface GroupReading {
  /**
   * Everything was right.
   *
   * @param warnings sentences on what was accepted but should be looked at
   */
  record Accepted(Group group, List<String> warnings) implements GroupReading {
    public Accepted {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Something was wrong.
   *
   * @param problems of all files, at least one
   */
  record Refused(List<Problem> problems) implements GroupReading {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
