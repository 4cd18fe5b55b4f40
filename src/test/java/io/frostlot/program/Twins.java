package io.frostlot.program;

import io.frostlot.keeping.Animal;
import io.frostlot.plan.Scenario;
import java.util.ArrayList;
import java.util.List;

/** Every animal twice. */
final class Twins {
  private Twins() {}

  static Scenario of(Scenario one) {
    List<Animal> twins = new ArrayList<>(one.collection().animals());
    one.collection().animals().forEach(animal -> twins.add(animal.named(animal.name() + " again")));
    return new Scenario(
        one.name(),
        one.planning(),
        one.currency(),
        new Scenario.Collection(twins, one.collection().needs()),
        one.larder(),
        one.suppliers(),
        one.away(),
        one.policy());
  }
}
