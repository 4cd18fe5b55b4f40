package io.frostlot.bench;

import io.frostlot.plan.World;
import java.util.List;

/**
 * What methods are measured on.
 *
 * @param size of a drawn room, or the name of a folder
 * @param seed of a drawn room; empty for a folder
 * @param drawn the room, at most one
 */
public record Subject(String size, String seed, World world, List<DrawnRoom> drawn) {
  public Subject {
    drawn = List.copyOf(drawn);
  }

  public static Subject of(RoomSize size, long seed) {
    DrawnRoom room = RoomDraw.of(size, seed);
    return new Subject(size.name(), Long.toString(seed), World.of(room.scenario()), List.of(room));
  }

  public static Subject of(String folder, World world) {
    return new Subject(folder, "", world, List.of());
  }

  String name() {
    return seed.isEmpty() ? size : size + " " + seed;
  }
}
