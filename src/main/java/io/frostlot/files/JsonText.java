package io.frostlot.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns JSON text into {@link Json} values with line and column; nesting at most 64 deep. */
final class JsonText {
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(64)
                  .maxStringLength(16_000_000)
                  .maxNumberLength(100)
                  .maxNameLength(1000)
                  .build())
          .build();
  private final String file;
  private final JsonParser parser;
  private final Problems problems;

  private JsonText(String file, JsonParser parser, Problems problems) {
    this.file = file;
    this.parser = parser;
    this.problems = problems;
  }

  /** The value, or empty with a problem added where the text is not JSON. */
  static Optional<Json> parse(String text, String file, Problems problems) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      return new JsonText(file, parser, problems).document();
    } catch (IOException e) {
      throw new IllegalStateException("reading from memory", e);
    }
  }

  private Optional<Json> document() throws IOException {
    try {
      parser.nextToken();
      Json value = value("");
      if (parser.nextToken() == null) {
        return Optional.of(value);
      }
      notJson("Something follows after its end.");
    } catch (StreamConstraintsException e) {
      notJson("It is nested too deep, or a number or name in it is too long.");
    } catch (JsonProcessingException e) {
      notJson(Problem.visible(e.getOriginalMessage()) + ".");
    }
    return Optional.empty();
  }

  private void notJson(String hint) {
    JsonLocation place = parser.currentLocation();
    Where where = new Where(file, place.getLineNr(), String.valueOf(place.getColumnNr()));
    problems.add(new Problem(where, "text that is not JSON", "a JSON document", hint));
  }

  private Json value(String path) throws IOException {
    Where where = where(path);
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> new Json.Obj(where, fields(path));
      case START_ARRAY -> new Json.Arr(where, items(path));
      case VALUE_STRING -> new Json.Text(where, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(where, parser.getText());
      case VALUE_TRUE, VALUE_FALSE -> new Json.Bool(where, token == JsonToken.VALUE_TRUE);
      default -> new Json.Nothing(where);
    };
  }

  private Map<String, Json> fields(String path) throws IOException {
    Map<String, Json> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      String inner = path.isEmpty() ? name : path + "." + name;
      Where where = where(inner);
      parser.nextToken();
      Json value = value(inner);
      if (fields.putIfAbsent(name, value) != null) {
        problems.add(
            new Problem(where, Problem.quote(name) + " a second time", "each field once", ""));
      }
    }
    return fields;
  }

  private List<Json> items(String path) throws IOException {
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(path + "[" + items.size() + "]"));
    }
    return items;
  }

  private Where where(String path) {
    JsonLocation place = parser.currentTokenLocation();
    String inner = path.length() <= 100 ? path : path.substring(0, 100) + "...";
    String column =
        place.getColumnNr() + (path.isEmpty() ? "" : " (" + Problem.visible(inner) + ")");
    return new Where(file, place.getLineNr(), column);
  }
}
