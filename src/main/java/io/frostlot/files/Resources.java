package io.frostlot.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** JSON documents shipped in the jar; a fault in one of them is a fault of the program. */
final class Resources {
  private static final Map<String, Json> READ = new ConcurrentHashMap<>();

  private Resources() {}

  static Json.Obj json(String name) {
    return (Json.Obj) any(name);
  }

  /** Read once; the value does not change. */
  static Json any(String name) {
    return READ.computeIfAbsent(name, Resources::read);
  }

  private static Json read(String name) {
    Problems problems = new Problems();
    Optional<Json> json = JsonText.parse(text(name), name, problems);
    if (!problems.isEmpty()) {
      throw new IllegalStateException(problems.all().toString());
    }
    return json.orElseThrow();
  }

  private static String text(String name) {
    try (InputStream stream = Resources.class.getResourceAsStream("/io/frostlot/" + name)) {
      if (stream == null) {
        throw new IllegalStateException("not in the jar: " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
