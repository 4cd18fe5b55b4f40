package io.frostlot.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One pass over one document. A value that is wrong is reported and left out, and so is what it is
 * a part of; only the document itself and its top-level lists stand without their wrong parts, so
 * that the rest can be looked at too.
 */
final class JsonCheck {
  private final JsonSchema schemas;
  private final Problems problems;

  JsonCheck(JsonSchema schemas, Problems problems) {
    this.schemas = schemas;
    this.problems = problems;
  }

  /** The value with defaults filled in, or empty where it is wrong. */
  Optional<Json> value(Json value, Json.Obj unresolved) {
    Json.Obj schema = schemas.resolve(unresolved);
    if (!JsonSchema.isOfType(value, schema)) {
      return refuse(value, JsonSchema.expected(schema), "");
    }
    if (value instanceof Json.Obj object) {
      Set<String> wrong = new HashSet<>();
      Json.Obj right = fields(object, schema, wrong, false);
      return wrong.isEmpty() ? Optional.of(right) : Optional.empty();
    }
    if (value instanceof Json.Arr list) {
      int before = problems.count();
      Json.Arr right = items(list, schema);
      return problems.count() == before ? Optional.of(right) : Optional.empty();
    }
    return new JsonScalar(schema, problems).check(value);
  }

  /**
   * The fields that are right, with defaults for those left out.
   *
   * @param wrong receives the names of the others
   * @param top keep the right items of a list that has wrong ones
   */
  Json.Obj fields(Json.Obj object, Json.Obj schema, Set<String> wrong, boolean top) {
    Map<String, Json> known =
        schema.has("properties") ? schema.object("properties").fields() : Map.of();
    Map<String, Json> right = new LinkedHashMap<>();
    object
        .fields()
        .forEach(
            (name, value) -> {
              int before = problems.count();
              if (isKnown(name, value, known, schema)) {
                Json.Obj inner =
                    schemas.resolve(
                        (Json.Obj) known.getOrDefault(name, schema.get("additionalProperties")));
                Optional<? extends Json> checked =
                    top && value instanceof Json.Arr list && JsonSchema.isOfType(value, inner)
                        ? Optional.of(items(list, inner))
                        : value(value, inner);
                checked.ifPresent(it -> right.put(name, it));
              }
              if (problems.count() > before) {
                wrong.add(name);
              }
            });
    known.keySet().stream()
        .filter(name -> !object.has(name))
        .forEach(
            name -> {
              Json.Obj inner = schemas.resolve((Json.Obj) known.get(name));
              leftOut(name, object, schema, inner)
                  .ifPresentOrElse(
                      it -> right.put(name, it),
                      () -> {
                        if (isRequired(name, schema)) {
                          wrong.add(name);
                        }
                      });
            });
    return new Json.Obj(object.where(), right);
  }

  private boolean isKnown(String name, Json value, Map<String, Json> known, Json.Obj schema) {
    if (schema.get("additionalProperties") instanceof Json.Bool) {
      if (!known.containsKey(name)) {
        refuse(
            value.where(),
            "a field " + Problem.quote(name),
            "only known fields",
            Nearest.hint(name, known.keySet()));
      }
      return known.containsKey(name);
    }
    Json.Obj names = schema.has("propertyNames") ? schema.object("propertyNames") : schema;
    if (names.has("pattern") && !Pattern.compile(names.text("pattern")).matcher(name).find()) {
      refuse(value.where(), "a field " + Problem.quote(name), names.text("title"), "");
      return false;
    }
    return true;
  }

  private static boolean isRequired(String name, Json.Obj schema) {
    return schema.has("required") && schema.texts("required").contains(name);
  }

  private Optional<Json> leftOut(String name, Json.Obj object, Json.Obj schema, Json.Obj inner) {
    if (isRequired(name, schema)) {
      return refuse(
          object.where(), "no field " + Problem.quote(name), JsonSchema.expected(inner), "");
    }
    return inner.has("default")
        ? value(inner.get("default").at(object.where()), inner)
        : Optional.empty();
  }

  private Json.Arr items(Json.Arr list, Json.Obj schema) {
    int size = list.items().size();
    if (schema.has("minItems") && size < schema.integer("minItems")) {
      refuse(list.where(), "a list of " + size, "at least " + schema.integer("minItems"), "");
    }
    if (schema.has("maxItems") && size > schema.integer("maxItems")) {
      refuse(list.where(), "a list of " + size, "at most " + schema.integer("maxItems"), "");
      return new Json.Arr(list.where(), List.of());
    }
    boolean unique = schema.has("uniqueItems") && schema.yes("uniqueItems");
    Set<String> seen = new HashSet<>();
    List<Json> right = new ArrayList<>();
    for (Json item : list.items()) {
      if (unique && item instanceof Json.Text text && !seen.add(text.value())) {
        refuse(item, "each item once", "");
        continue;
      }
      value(item, schema.object("items")).ifPresent(right::add);
    }
    return new Json.Arr(list.where(), right);
  }

  private Optional<Json> refuse(Json value, String expected, String hint) {
    return refuse(value.where(), value.shown(), expected, hint);
  }

  private Optional<Json> refuse(Where where, String found, String expected, String hint) {
    problems.add(new Problem(where, found, expected, hint));
    return Optional.empty();
  }
}
