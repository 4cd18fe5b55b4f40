package io.frostlot.cli;

import io.frostlot.bench.DrawnGroup;
import io.frostlot.bench.GroupDraw;
import io.frostlot.bench.RoomSize;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What {@code bench} is told about groups of keepers. */
final class GroupOptions {
  private static final int FEWEST_MEMBERS = 2;

  /** Of more not every subgroup is planned. */
  private static final int MOST_MEMBERS = 8;

  private static final int MOST_SECONDS = 100_000;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--group",
      paramLabel = "N",
      split = ",",
      description =
          "Measure drawn groups of N keepers who order together, 2 to 8, in place of rooms (with"
              + " rooms of size MEMBER, with --quick XS, unless others are given).")
  private List<Integer> members = new ArrayList<>();

  @Option(
      names = "--ways-seconds",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "With --group: plan every subgroup too, for at most N seconds a group (default: not).")
  private int ways;

  boolean areAsked() {
    return !members.isEmpty();
  }

  /** Refuses what does not go together. */
  void check(List<Path> folders) {
    if (ways < 0 || ways > MOST_SECONDS) {
      throw wrong("--ways-seconds: expected 0 to " + MOST_SECONDS);
    }
    if (ways > 0 && !areAsked()) {
      throw wrong("--ways-seconds: expected only with --group");
    }
    if (areAsked() && !folders.isEmpty()) {
      throw wrong("--group: expected without --folder");
    }
    for (int some : members) {
      if (some < FEWEST_MEMBERS || some > MOST_MEMBERS) {
        throw wrong(
            "--group: found " + some + ", expected " + FEWEST_MEMBERS + " to " + MOST_MEMBERS);
      }
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  /** Empty where subgroups are not to be planned. */
  Optional<Integer> waysSeconds() {
    return ways > 0 ? Optional.of(ways) : Optional.empty();
  }

  /** Every size with every seed. */
  List<DrawnGroup> drawn(List<RoomSize> sizes, List<Long> seeds) {
    List<DrawnGroup> drawn = new ArrayList<>();
    for (int some : members) {
      for (RoomSize size : sizes) {
        seeds.forEach(seed -> drawn.add(GroupDraw.of(some, size, seed)));
      }
    }
    return drawn;
  }
}
