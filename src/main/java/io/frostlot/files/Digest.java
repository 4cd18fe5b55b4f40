package io.frostlot.files;

import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * The fingerprint of a scenario: SHA-256 over all its values, records by their components, lists in
 * their (canonical) order, sets sorted. The order of rows, spaces, notes and the way that numbers
 * are written do not change it; any value that planning can see does.
 */
public final class Digest {
  private Digest() {}

  /** 64 hexadecimal digits. */
  public static String of(Scenario scenario) {
    return ofValues(scenario);
  }

  /** That of a world: of its scenario, and of which meals, slots and pledges of it are there. */
  public static String of(World world) {
    return ofValues(world);
  }

  /** That of some texts. */
  static String of(List<String> texts) {
    return ofValues(texts);
  }

  private static String ofValues(Object values) {
    try {
      byte[] text = canonical(values).getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Unambiguous: each value is preceded by its length or count. */
  private static String canonical(Object value) {
    if (value instanceof Record record) {
      return group(
          record.getClass().getSimpleName(),
          Stream.of(record.getClass().getRecordComponents())
              .map(component -> canonical(component(record, component)))
              .toList());
    }
    if (value instanceof List<?> list) {
      return group("list", list.stream().map(Digest::canonical).toList());
    }
    if (value instanceof Collection<?> set) {
      return group("set", set.stream().map(Digest::canonical).sorted().toList());
    }
    String text = value.toString();
    return text.length() + ":" + text;
  }

  private static String group(String name, List<String> parts) {
    return name + "[" + parts.size() + "|" + String.join("", parts) + "]";
  }

  private static Object component(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a record that hides " + component, e);
    }
  }
}
