package io.frostlot.program;

import com.google.ortools.init.OrToolsVersion;

/** Which solvers plans are made with. */
public final class SolverVersion {
  private SolverVersion() {}

  public static String says() {
    NativeLibraries.load();
    return "OR-Tools " + OrToolsVersion.getVersionString();
  }
}
