package io.frostlot.program;

import com.google.ortools.Loader;
import com.sun.jna.Platform;
import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.Optional;
import java.util.Properties;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/**
 * The native libraries of OR-Tools, kept unpacked for the next run: unpacking them takes longer
 * than solving a small scenario, and the copy that OR-Tools makes for itself would be left behind.
 *
 * <p>They lie in the user's own cache folder (XDG Base Directory Specification 0.8), one folder a
 * version. Where that cannot be written, and on Windows, whose libraries must be loaded one by one,
 * OR-Tools loads them in its own way.
 */
final class NativeLibraries {
  private static final String POM =
      "/META-INF/maven/com.google.ortools/ortools-java/pom.properties";
  private static boolean loaded;

  private NativeLibraries() {}

  static synchronized void load() {
    if (loaded) {
      return;
    }
    Optional<Path> kept = Platform.isWindows() ? Optional.empty() : kept(cache());
    if (kept.filter(NativeLibraries::loadFrom).isEmpty()) {
      Loader.loadNativeLibraries();
    }
    loaded = true;
  }

  private static boolean loadFrom(Path folder) {
    try {
      System.load(folder.resolve(System.mapLibraryName("jniortools")).toString());
      return true;
    } catch (UnsatisfiedLinkError e) {
      return false;
    }
  }

  /** The folder with all libraries, unpacked now if need be; empty where that does not work. */
  static Optional<Path> kept(Path cache) {
    if (!cache.isAbsolute()) {
      return Optional.empty();
    }
    try {
      Path folder = cache.resolve("ortools-" + version() + "-" + Platform.RESOURCE_PREFIX);
      if (!Files.isDirectory(folder)) {
        unpack(folder);
      }
      return Optional.of(folder.toAbsolutePath());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Path cache() {
    String chosen = Optional.ofNullable(System.getenv("XDG_CACHE_HOME")).orElse("");
    Path all =
        Path.of(chosen).isAbsolute()
            ? Path.of(chosen)
            : Path.of(System.getProperty("user.home"), ".cache");
    return all.resolve("frostlot");
  }

  private static String version() throws IOException {
    Properties pom = new Properties();
    try (InputStream in = resource(POM).openStream()) {
      pom.load(in);
    }
    return pom.getProperty("version", "unknown");
  }

  /** Unpacks beside the folder first: another process sees all of it or nothing. */
  private static void unpack(Path folder) throws IOException {
    Files.createDirectories(folder.getParent());
    Path part = Files.createTempDirectory(folder.getParent(), "part");
    try {
      copyAll(part);
      Files.move(part, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      remove(part);
      if (!Files.isDirectory(folder)) {
        throw e;
      }
    }
  }

  private static void copyAll(Path part) throws IOException {
    String inside = "ortools-" + Platform.RESOURCE_PREFIX + "/";
    JarURLConnection connection = (JarURLConnection) resource("/" + inside).openConnection();
    connection.setUseCaches(false);
    try (JarFile jar = connection.getJarFile()) {
      for (JarEntry entry : Collections.list(jar.entries())) {
        if (entry.getName().startsWith(inside) && !entry.isDirectory()) {
          Path name = Path.of(entry.getName()).getFileName();
          try (InputStream in = jar.getInputStream(entry)) {
            Files.copy(in, part.resolve(name));
          }
        }
      }
    }
  }

  private static void remove(Path part) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(part)) {
      for (Path file : files) {
        Files.delete(file);
      }
    }
    Files.delete(part);
  }

  private static URL resource(String name) throws IOException {
    return Optional.ofNullable(NativeLibraries.class.getResource(name))
        .orElseThrow(() -> new IOException("no " + name));
  }
}
