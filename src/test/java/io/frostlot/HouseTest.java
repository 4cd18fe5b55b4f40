package io.frostlot;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The house as it is drawn: its rooms, their one direction, and what is kept out of them. */
@AnalyzeClasses(packages = "io.frostlot", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
  private static final int MOST_LINES = 250;

  /**
   * Each room with the rooms that it may know: only such as stand before it, so never in a circle.
   */
  private static final Map<String, List<String>> BELOW = below();

  @ArchTest
  static final ArchRule every_class_is_in_a_room =
      classes().should().resideInAnyPackage(packages(BELOW.keySet()));

  @ArchTest
  static void rooms_know_only_the_rooms_below(JavaClasses house) {
    List<String> before = new ArrayList<>();
    BELOW.forEach(
        (room, known) -> {
          assertThat(before).containsAll(known);
          before.add(room);
          others(room, known).check(house);
        });
  }

  @ArchTest
  static final ArchRule the_solver_is_in_program = only("program", "com.google.ortools..");

  @ArchTest
  static final ArchRule native_libraries_are_loaded_in_one_place =
      noClasses()
          .that()
          .doNotHaveSimpleName("NativeLibraries")
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName("com.google.ortools.Loader");

  @ArchTest static final ArchRule json_is_in_files = only("files", "com.fasterxml.jackson..");

  @ArchTest static final ArchRule csv_is_in_files = only("files", "org.apache.commons.csv..");

  @ArchTest static final ArchRule command_lines_are_in_cli = only("cli", "picocli..");

  @ArchTest
  static final ArchRule null_never_crosses_a_method =
      classes()
          .should(
              ArchCondition.from(describe("be in a @NullMarked package", HouseTest::nullMarked)));

  @ArchTest
  static final ArchRule today_is_a_parameter_below_the_edges =
      noClasses()
          .that()
          .resideOutsideOfPackages("io.frostlot.app", "io.frostlot.cli")
          .should()
          .callMethodWhere(target(name("now")).and(target(owner(resideInAPackage("java.time..")))))
          .as("no room below app and cli asks which day it is");

  @ArchTest
  static final ArchRule only_cli_prints =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.frostlot.cli")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethodWhere(
              target(name("printStackTrace")).and(target(owner(assignableTo(Throwable.class)))));

  @ArchTest
  static final ArchRule names_say_what_a_thing_is =
      noClasses().should().haveNameMatching(".*(Impl|Helper|Util|Utils|Manager|Base|Data|Info)");

  @ArchTest
  static final ArchRule nothing_is_set_afterwards =
      noMethods().should().haveNameMatching("set\\p{Upper}.*");

  @Test
  void no_file_is_longer_than_two_hundred_and_fifty_lines() throws IOException {
    List<Path> files = javaFiles();

    assertThat(files).hasSizeGreaterThan(100);
    assertThat(files.stream().filter(HouseTest::tooLong)).isEmpty();
  }

  private static Map<String, List<String>> below() {
    Map<String, List<String>> below = new LinkedHashMap<>();
    below.put("units", List.of());
    below.put("keeping", List.of("units"));
    below.put("supply", List.of("units"));
    below.put("storage", List.of("units", "supply"));
    below.put("forecast", List.of("units", "keeping", "supply", "storage"));
    below.put("plan", List.of("units", "keeping", "supply", "storage", "forecast"));
    for (String besides : List.of("program", "sharing", "report", "files")) {
      below.put(besides, and(below, "plan"));
    }
    for (String above : List.of("app", "bench", "cli")) {
      below.put(above, List.copyOf(below.keySet()));
    }
    return below;
  }

  private static List<String> and(Map<String, List<String>> below, String room) {
    return Stream.concat(below.get(room).stream(), Stream.of(room)).toList();
  }

  /** No class of a room depends on one of a room that it may not know. */
  private static ArchRule others(String room, List<String> known) {
    List<String> unknown = new ArrayList<>(BELOW.keySet());
    unknown.removeAll(known);
    unknown.remove(room);
    return noClasses()
        .that()
        .resideInAPackage("io.frostlot." + room)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages(unknown));
  }

  private static String[] packages(Collection<String> rooms) {
    return rooms.stream().map(room -> "io.frostlot." + room).toArray(String[]::new);
  }

  private static ArchRule only(String room, String library) {
    return noClasses()
        .that()
        .resideOutsideOfPackage("io.frostlot." + room)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library);
  }

  private static boolean nullMarked(JavaClass type) {
    return type.getPackage().isAnnotatedWith(NullMarked.class);
  }

  private static List<Path> javaFiles() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  private static boolean tooLong(Path file) {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count() > MOST_LINES;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
