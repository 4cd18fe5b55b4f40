package io.frostlot.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The rows of the README's table of fields, made from the schemas. */
final class FieldRows {
  private FieldRows() {}

  /** File, field, type, default and meaning, as rows of a Markdown table. */
  static List<String> all() {
    List<String> rows = new ArrayList<>(jsonRows("scenario"));
    for (String table :
        List.of("animals", "events", "needs", "freezers", "freezer-limits", "stock", "placed")) {
      rows.addAll(tableRows(table));
    }
    rows.addAll(jsonRows("profile"));
    rows.addAll(tableRows("prices"));
    rows.addAll(jsonRows("group"));
    rows.addAll(jsonRows("invoice"));
    rows.addAll(tableRows("ledger"));
    return rows;
  }

  /** Kinds and the bands of their size words, as rows of a Markdown table. */
  static List<String> bands() {
    return ((Json.Arr) Resources.any("prey.json"))
        .items().stream().map(kind -> bands((Json.Obj) kind)).toList();
  }

  private static String bands(Json.Obj kind) {
    String words =
        kind.objects("bands").stream()
            .map(
                band ->
                    band.text("sizeWord")
                        + " "
                        + band.get("leastG").shown()
                        + "-"
                        + band.get("mostG").shown())
            .collect(Collectors.joining(", "));
    return "| " + kind.text("kind") + " | " + words + " |";
  }

  private static List<String> tableRows(String name) {
    TableSchema schema = TableSchema.named(name);
    return schema.fields().stream()
        .map(
            field ->
                row(
                    schema.file(),
                    field.name(),
                    field.descriptor(),
                    range(field.descriptor(), field.constraints()),
                    field.isRequired() ? "required" : field.defaultText()))
        .toList();
  }

  private static List<String> jsonRows(String name) {
    JsonSchema schema = JsonSchema.named("schema/" + name + ".schema.json");
    return fieldRows(schema, schema.root(), "");
  }

  private static List<String> fieldRows(JsonSchema schema, Json.Obj object, String path) {
    List<String> rows = new ArrayList<>();
    List<String> required = object.has("required") ? object.texts("required") : List.of();
    Map<String, Json> properties =
        object.has("properties") ? object.object("properties").fields() : Map.of();
    properties.forEach(
        (name, json) -> {
          Json.Obj field = schema.resolve((Json.Obj) json);
          String standard =
              required.contains(name)
                  ? "required"
                  : field.has("default") ? shown(field.get("default")) : "";
          rows.add(
              row(schema.root().text("title"), path + name, field, range(field, field), standard));
          rows.addAll(fieldRows(schema, field, path + name + "."));
          for (String inner : List.of("items", "additionalProperties")) {
            if (field.has(inner) && field.get(inner) instanceof Json.Obj items) {
              String deeper = path + name + (inner.equals("items") ? "[]." : ".NAME.");
              rows.addAll(fieldRows(schema, schema.resolve(items), deeper));
            }
          }
        });
    return rows;
  }

  private static String row(
      String file, String field, Json.Obj descriptor, String range, String standard) {
    return "| "
        + String.join(
            " | ", file, "`" + field + "`", range, standard, descriptor.text("description"))
        + " |";
  }

  private static String shown(Json value) {
    if (value instanceof Json.Arr list) {
      return list.items().stream().map(FieldRows::shown).collect(Collectors.joining(", "));
    }
    if (value instanceof Json.Text text) {
      return text.value();
    }
    return value instanceof Json.Obj ? "" : value.shown();
  }

  private static String range(Json.Obj field, Json.Obj keywords) {
    if (keywords.has("enum")) {
      return String.join(", ", keywords.texts("enum"));
    }
    if (field.get("type") instanceof Json.Arr) {
      return "money";
    }
    if (field.has("interval") || field.has("format")) {
      return field.has("format") && field.text("format").equals("date") ? "date" : "period";
    }
    String limits =
        keywords.has("minimum")
            ? " " + keywords.get("minimum").shown() + " to " + keywords.get("maximum").shown()
            : "";
    String type = field.text("type");
    return switch (type) {
      case "integer" -> "whole number" + limits;
      case "number" -> "number" + limits;
      case "boolean" -> field.has("trueValues") ? "yes, no" : "true, false";
      case "array" -> "list";
      case "string" -> "text";
      default -> type;
    };
  }
}
