package io.frostlot.plan;

import java.util.List;

/**
 * What a plan was made from.
 *
 * @param digest fingerprint of the scenario; a plan with another one is stale
 * @param warnings sentences on what was accepted but should be looked at
 */
public record Inputs(World world, String digest, List<String> warnings) {
  public Inputs {
    warnings = List.copyOf(warnings);
  }
}
