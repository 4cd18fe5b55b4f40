package io.frostlot.program;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.World;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;

/**
 * A program of its own that plans tiny worlds over and over and prints what memory the process has
 * after the first few times and after so many more, in kB. Its heap is fixed and touched from the
 * start, so that what is added lies outside.
 */
final class ManySolves {
  private static final int WORLDS = 10;

  private ManySolves() {}

  public static void main(String[] arguments) throws IOException {
    int solves = Integer.parseInt(arguments[0]);
    List<World> worlds = LongStream.range(0, WORLDS).mapToObj(TinyWorlds::of).toList();
    solve(worlds, solves / 2);
    long before = residentKb();
    solve(worlds, solves);
    System.out.println(before);
    System.out.println(residentKb());
  }

  private static void solve(List<World> worlds, int times) {
    for (int i = 0; i < times; i++) {
      Engine.solve(worlds.get(i % WORLDS), Limits.ofSeconds(60), Watch.NONE);
    }
  }

  private static long residentKb() throws IOException {
    System.gc();
    return Files.readAllLines(Path.of("/proc/self/status")).stream()
        .filter(line -> line.startsWith("VmRSS:"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
        .findFirst()
        .orElseThrow();
  }
}
