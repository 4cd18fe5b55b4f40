package io.frostlot.files;

import java.util.List;
import java.util.Optional;

/** A Table Schema (Frictionless, version 2) shipped in the jar: the columns of one CSV file. */
record TableSchema(String file, List<Field> fields) {
  static TableSchema named(String name) {
    Json.Obj json = Resources.json("schema/" + name + ".table-schema.json");
    return new TableSchema(
        json.text("title"), json.objects("fields").stream().map(Field::of).toList());
  }

  List<String> names() {
    return fields.stream().map(Field::name).toList();
  }

  Optional<Field> field(String name) {
    return fields.stream().filter(field -> field.name().equals(name)).findFirst();
  }

  /** One column; {@code constraints} is empty where the schema has none. */
  record Field(String name, Json.Obj descriptor, Json.Obj constraints, Cell cell) {
    static Field of(Json.Obj json) {
      Json.Obj constraints =
          json.has("constraints")
              ? json.object("constraints")
              : new Json.Obj(json.where(), java.util.Map.of());
      return new Field(json.text("name"), json, constraints, Cell.of(json, constraints));
    }

    boolean isRequired() {
      return constraints.has("required");
    }

    boolean isUnique() {
      return constraints.has("unique");
    }

    /** What a blank cell stands for; blank itself where there is no default. */
    String defaultText() {
      return descriptor.has("default") ? descriptor.text("default") : "";
    }
  }
}
