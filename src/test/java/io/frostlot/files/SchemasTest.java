package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Holds the shipped schemas to their standards, and readers and samples to the schemas; the judge
 * of JSON Schema is another implementation of it (networknt).
 */
class SchemasTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final JsonSchemaFactory FACTORY =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

  /** Field types and, by type, the constraints of Table Schema 2.0 (datapackage.org) that apply. */
  private static final Map<String, Set<String>> CONSTRAINTS_BY_TYPE =
      Map.of(
          "string", Set.of("required", "unique", "minLength", "maxLength", "pattern", "enum"),
          "integer", Set.of("required", "unique", "minimum", "maximum", "enum"),
          "number", Set.of("required", "unique", "minimum", "maximum", "enum"),
          "date", Set.of("required", "unique", "minimum", "maximum", "enum"),
          "boolean", Set.of("required", "enum"),
          "list", Set.of("required", "unique", "minLength", "maxLength", "enum"));

  static Stream<Path> jsonSamples() {
    List<Path> samples = new ArrayList<>(Samples.files(Samples.folder("good")));
    samples.addAll(Samples.files(Samples.folder("cases")));
    for (String folder : List.of("scenarios", "supplier-profiles")) {
      if (Files.isDirectory(Path.of(folder))) {
        samples.addAll(Samples.files(Path.of(folder)));
      }
    }
    return samples.stream()
        .filter(
            path ->
                Set.of("scenario.json", "profile.json", "group.json")
                    .contains(path.getFileName().toString()));
  }

  private static String schemaOf(Path sample) {
    return sample.getFileName().toString().replace(".json", "");
  }

  private static JsonNode resource(String name) {
    try {
      return MAPPER.readTree(SchemasTest.class.getResourceAsStream("/io/frostlot/" + name));
    } catch (java.io.IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("jsonSamples")
  void the_reader_and_an_independent_validator_agree(Path sample) {
    Problems problems = new Problems();
    List<Json> json = JsonText.parse(text(sample), "sample", problems).stream().toList();
    JsonNode tree;
    try {
      tree = MAPPER.readerFor(JsonNode.class).readTree(text(sample));
    } catch (JsonProcessingException e) {
      assertThat(problems.isEmpty()).isFalse();
      return;
    }
    int textual = problems.count();
    json.forEach(
        it -> JsonSchema.named("schema/" + schemaOf(sample) + ".schema.json").check(it, problems));

    boolean right =
        FACTORY
            .getSchema(resource("schema/" + schemaOf(sample) + ".schema.json"))
            .validate(tree)
            .isEmpty();

    // Days that do not exist and periods that end before they start go beyond the keywords.
    long beyond =
        problems.all().stream()
            .filter(
                it -> it.expected().startsWith("a period") || it.expected().startsWith("a date"))
            .count();
    if (textual == 0 && beyond == 0) {
      assertThat(problems.isEmpty()).as(problems.all().toString()).isEqualTo(right);
    }
    assertThat(right || !problems.isEmpty()).as(problems.all().toString()).isTrue();
  }

  private static String text(Path sample) {
    String text = Samples.text(sample);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "scenario",
        "profile",
        "prey",
        "plan",
        "deals",
        "sale",
        "freezer",
        "compare",
        "explain",
        "group",
        "share",
        "invoice",
        "settlement",
        "ledger"
      })
  void every_json_schema_is_one_by_its_standard_and_uses_only_known_keywords(String name) {
    JsonNode schema = resource("schema/" + name + ".schema.json");

    assertThat(
            FACTORY
                .getSchema(java.net.URI.create("https://json-schema.org/draft/2020-12/schema"))
                .validate(schema))
        .isEmpty();
    assertThat(keywords(schema)).isSubsetOf(JsonSchema.KEYWORDS);
  }

  private static Set<String> keywords(JsonNode schema) {
    Set<String> keywords = new HashSet<>();
    schema.fieldNames().forEachRemaining(keywords::add);
    for (String many : List.of("properties", "$defs")) {
      schema.path(many).forEach(inner -> keywords.addAll(keywords(inner)));
    }
    for (String one : List.of("items", "additionalProperties", "propertyNames")) {
      if (schema.path(one).isObject()) {
        keywords.addAll(keywords(schema.get(one)));
      }
    }
    return keywords;
  }

  @Test
  void the_shipped_kinds_follow_their_schema() {
    assertThat(
            FACTORY.getSchema(resource("schema/prey.schema.json")).validate(resource("prey.json")))
        .isEmpty();
    // mouse pinky 1-3 g, adult 17-26 g; day-old chick about 40 g: common practice
    Kinds kinds = Kinds.shipped();
    assertThat(kinds.band("mouse", "Pinky").orElseThrow().mean().toDouble()).isEqualTo(2);
    assertThat(kinds.band("mouse", "adult").orElseThrow().mean().toDouble()).isEqualTo(21.5);
    assertThat(kinds.band("chick", "day-old").orElseThrow().mean().toDouble()).isEqualTo(40);
    assertThat(kinds.band("soft-furred-rat", "adult").orElseThrow().guessed()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "animals",
        "events",
        "needs",
        "freezers",
        "freezer-limits",
        "stock",
        "placed",
        "prices",
        "order-sheet",
        "share-sheet",
        "settlement",
        "ledger",
        "balances"
      })
  void every_table_schema_keeps_the_rules_of_its_standard(String name) {
    JsonNode schema = resource("schema/" + name + ".table-schema.json");
    List<String> names = new ArrayList<>();
    for (JsonNode field : schema.get("fields")) {
      String type = field.get("type").asText();
      names.add(field.get("name").asText());
      assertThat(CONSTRAINTS_BY_TYPE).as(field.toString()).containsKey(type);
      assertThat(field.get("description").asText()).as(field.toString()).endsWith(".");
      List<String> constraints = new ArrayList<>();
      field.path("constraints").fieldNames().forEachRemaining(constraints::add);
      assertThat(constraints).as(field.toString()).isSubsetOf(CONSTRAINTS_BY_TYPE.get(type));
      assertThat(type.equals("list")).isEqualTo(field.has("delimiter"));
      assertThat(type.equals("boolean")).isEqualTo(field.has("trueValues"));
    }
    assertThat(names).doesNotHaveDuplicates().allMatch(it -> it.matches("[a-z][a-z0-9_]*"));
    schema.path("primaryKey").forEach(key -> assertThat(names).contains(key.asText()));
  }
}
