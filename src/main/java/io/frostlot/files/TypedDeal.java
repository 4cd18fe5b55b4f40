package io.frostlot.files;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A deal typed word by word, written as the JSON that {@link DealsFile} reads.
 *
 * @param supplier its id
 * @param list {@code sales}, {@code orderDiscounts} or {@code freeShipping}
 * @param fields of the one entry, each a piece of JSON
 */
public record TypedDeal(String supplier, String list, Map<String, String> fields) {
  public TypedDeal {
    fields = new TreeMap<>(fields);
  }

  public String text() {
    return object(Map.of("supplier", quoted(supplier), list, "[" + object(fields) + "]"));
  }

  /** An object of pieces of JSON. */
  public static String object(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(field -> quoted(field.getKey()) + ": " + field.getValue())
        .collect(Collectors.joining(", ", "{", "}"));
  }

  public static String texts(List<String> texts) {
    return texts.stream().map(TypedDeal::quoted).collect(Collectors.joining(", ", "[", "]"));
  }

  public static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        quoted.append('\\').append(c);
      } else {
        quoted.append(c < ' ' ? "\\u%04x".formatted((int) c) : String.valueOf(c));
      }
    }
    return quoted.append('"').toString();
  }
}
