package io.frostlot.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads a whole UTF-8 text file, with or without a byte order mark, of at most 16 million bytes.
 */
final class TextFile {
  private static final int MOST_BYTES = 16_000_000;

  private TextFile() {}

  /** Is there anything of this name, be it a file, a folder or a link that leads nowhere? */
  static boolean isThere(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  /** The text, or empty with a problem added. */
  static Optional<String> read(Path path, String name, Problems problems) {
    Where where = Where.file(name);
    if (!isThere(path)) {
      return refuse(problems, where, "no such file", "a file", "Maybe its name is misspelt.");
    }
    if (Files.isDirectory(path)) {
      return refuse(problems, where, "a folder", "a file", "");
    }
    if (!Files.isRegularFile(path)) {
      return refuse(
          problems, where, "no plain file", "a file", "Maybe a link leads nowhere or to itself.");
    }
    try (InputStream stream = Files.newInputStream(path)) {
      byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
      return bytes.length > MOST_BYTES
          ? refuse(problems, where, "a larger file", "at most 16,000,000 bytes", "")
          : decode(bytes, where, problems);
    } catch (IOException e) {
      return refuse(
          problems,
          where,
          "a file that cannot be read",
          "a readable file",
          "Maybe its permissions forbid it.");
    }
  }

  private static Optional<String> decode(byte[] bytes, Where where, Problems problems) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return refuse(
          problems,
          where,
          "bytes that are not UTF-8 text",
          "a UTF-8 text file",
          "Save it as CSV or JSON in UTF-8.");
    }
    if (text.startsWith("\uFEFF")) {
      text = text.substring(1);
    }
    if (text.isBlank()) {
      return refuse(problems, where, "an empty file", "text", "");
    }
    if (text.indexOf('\0') >= 0) {
      return refuse(
          problems,
          where,
          "a binary file",
          "a UTF-8 text file",
          "Save it as CSV or JSON in UTF-8.");
    }
    return Optional.of(text);
  }

  private static Optional<String> refuse(
      Problems problems, Where where, String found, String expected, String hint) {
    problems.add(new Problem(where, found, expected, hint));
    return Optional.empty();
  }
}
