package io.frostlot.files;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Checks JSON against a JSON Schema (2020-12) shipped in the jar and fills in its defaults. Of the
 * standard it knows the keywords in {@link #KEYWORDS}; {@code $ref} only to {@code #/$defs/NAME}.
 * {@code title} of a definition is the phrase for what is expected.
 */
final class JsonSchema {
  static final Set<String> KEYWORDS =
      Set.of(
          "$schema",
          "$ref",
          "$defs",
          "title",
          "description",
          "default",
          "type",
          "enum",
          "pattern",
          "format",
          "minLength",
          "maxLength",
          "minimum",
          "maximum",
          "minItems",
          "maxItems",
          "uniqueItems",
          "items",
          "required",
          "properties",
          "additionalProperties",
          "propertyNames");
  private final Json.Obj root;

  private JsonSchema(Json.Obj root) {
    this.root = root;
  }

  static JsonSchema named(String name) {
    return new JsonSchema(Resources.json(name));
  }

  Json.Obj root() {
    return root;
  }

  /**
   * The document without the top-level fields that are wrong.
   *
   * @param wrong names of those
   */
  record Checked(Json.Obj document, Set<String> wrong) {
    /** Were all of these fields right, or left out? */
    boolean sound(String... names) {
      return Set.of(names).stream().noneMatch(wrong::contains);
    }
  }

  /** Empty only where the document is no object; otherwise what could be used of it. */
  Optional<Checked> check(Json value, Problems problems) {
    if (!(value instanceof Json.Obj document)) {
      problems.add(new Problem(value.where(), value.shown(), "an object {...}", ""));
      return Optional.empty();
    }
    Set<String> wrong = new HashSet<>();
    Json.Obj right = new JsonCheck(this, problems).fields(document, root, wrong, true);
    return Optional.of(new Checked(right, Set.copyOf(wrong)));
  }

  /** A schema with the definition that it refers to; its own keywords come first. */
  Json.Obj resolve(Json.Obj schema) {
    if (!schema.has("$ref")) {
      return schema;
    }
    String name = schema.text("$ref").substring("#/$defs/".length());
    Map<String, Json> merged = new LinkedHashMap<>(root.object("$defs").object(name).fields());
    merged.putAll(schema.fields());
    merged.remove("$ref");
    return new Json.Obj(schema.where(), merged);
  }

  static boolean isOfType(Json value, Json.Obj schema) {
    if (!schema.has("type")) {
      return value instanceof Json.Text;
    }
    List<String> types =
        schema.get("type") instanceof Json.Arr
            ? schema.texts("type")
            : List.of(schema.text("type"));
    return types.stream()
        .anyMatch(
            type ->
                switch (type) {
                  case "object" -> value instanceof Json.Obj;
                  case "array" -> value instanceof Json.Arr;
                  case "boolean" -> value instanceof Json.Bool;
                  case "integer", "number" -> value instanceof Json.Num;
                  case "null" -> value instanceof Json.Nothing;
                  default -> value instanceof Json.Text;
                });
  }

  /** The phrase for what a schema takes. */
  static String expected(Json.Obj schema) {
    if (schema.has("title")) {
      return schema.text("title");
    }
    if (schema.has("enum")) {
      return "one of " + String.join(", ", schema.texts("enum"));
    }
    return switch (schema.text("type")) {
      case "object" -> "an object {...}";
      case "array" -> "a list [...]";
      case "boolean" -> "true or false";
      case "integer" -> NumberRange.of(true, schema).expected();
      case "number" -> NumberRange.of(false, schema).expected();
      default -> "text in quotes";
    };
  }
}
