package io.frostlot.files;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Handling;
import io.frostlot.units.Period;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** {@code events.csv}: when animals are handled. */
final class EventsFile {
  private final List<Event> events;

  /** An event of one animal, or of all where {@code animal} is empty. */
  private record Event(String animal, Handling handling) {
    boolean concerns(Animal other) {
      return animal.isEmpty() || animal.equals(other.name());
    }
  }

  private EventsFile(List<Event> events) {
    this.events = events;
  }

  /**
   * The events that are right.
   *
   * @param animals names of all animals
   * @param allKnown no animal had to be left out
   */
  static EventsFile read(Table table, Set<String> animals, boolean allKnown) {
    for (Row row : table.rows()) {
      String animal = row.textOr("animal", "");
      if (allKnown && !animal.isEmpty() && !animals.contains(animal)) {
        row.wrong("animal", "an animal of animals.csv", Nearest.hint(animal, animals));
      }
    }
    return new EventsFile(
        table.rows().stream().filter(Row::isSound).map(EventsFile::event).toList());
  }

  private static Event event(Row row) {
    Period days = row.periodOr("days", Period.ALWAYS);
    return new Event(row.textOr("animal", ""), new Handling(days, row.textOr("what", "")));
  }

  /** The same animal with what concerns it. */
  Animal with(Animal animal) {
    return animal.withHandling(
        events.stream()
            .filter(event -> event.concerns(animal))
            .map(Event::handling)
            .sorted(
                Comparator.comparing((Handling it) -> it.days().from())
                    .thenComparing(it -> it.days().to())
                    .thenComparing(Handling::what))
            .distinct()
            .toList());
  }
}
