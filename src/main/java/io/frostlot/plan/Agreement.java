package io.frostlot.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a group has agreed on ordering together.
 *
 * @param hosts names of keepers at whose place a joint order may come, the preferred first
 * @param handOvers days on which the others collect; none: on the day of arrival
 */
public record Agreement(List<String> hosts, Set<LocalDate> handOvers, Cutting cutting) {
  public Agreement {
    hosts = List.copyOf(hosts);
    handOvers = Set.copyOf(handOvers);
  }

  /** The first host who is among some keepers and can receive; empty where there is none. */
  public Optional<Keeper> host(List<Keeper> keepers) {
    return hosts.stream()
        .flatMap(name -> keepers.stream().filter(keeper -> keeper.name().equals(name)))
        .filter(Keeper::canReceive)
        .findFirst();
  }
}
