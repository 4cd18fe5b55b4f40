package io.frostlot.cli;

import static io.frostlot.cli.CommandRun.GOOD;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.app.GroupSamples;
import io.frostlot.app.InvoiceSamples;
import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import io.frostlot.program.Engine;
import io.frostlot.report.ParsedPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages to print beside what is printed. */
class PageOptionTest {
  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void place() {
    file = folder.resolve("page.html");
  }

  private CommandRun plan(Planner planner, String... more) {
    return run(planner, Stream.concat(Stream.of("plan", GOOD), Stream.of(more)).toList());
  }

  private CommandRun run(Planner planner, List<String> arguments) {
    return CommandRun.of(
        planner,
        false,
        Stream.concat(arguments.stream(), Stream.of("--page", file.toString()))
            .toArray(String[]::new));
  }

  private ParsedPage page() throws IOException {
    return ParsedPage.of(Files.readString(file));
  }

  private static List<String> sorted(List<String> words) {
    return words.stream().sorted().toList();
  }

  @Test
  void a_plan_s_page_holds_the_letter_and_all_that_follows_it() throws IOException {
    CommandRun run = plan(new OnePackPlanner());

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(sorted(page().words())).isEqualTo(sorted(ParsedPage.words(run.out())));
    assertThat(page().all("//h1")).containsExactly("Frostlot: what to order for Reading room");
    assertThat(page().all("//h2"))
        .containsSubsequence(
            "Order next", "How sure this is", "The simplest plan within 2 %", "What to find out");
  }

  @Test
  void a_page_comes_with_every_format() throws IOException {
    String letter = plan(new OnePackPlanner(), "--plan-only").out();
    assertThat(plan(new OnePackPlanner(), "--format", "csv").out()).startsWith("supplier,");
    assertThat(sorted(page().words())).isEqualTo(sorted(ParsedPage.words(letter)));

    assertThat(plan(new OnePackPlanner(), "--format", "json").out()).startsWith("{");
    assertThat(page().all("//h2")).contains("Compared with habits");
  }

  @Test
  void a_page_says_why_there_is_no_plan() throws IOException {
    Files.writeString(file, "an earlier plan");
    Planner planner = (world, limits, watch) -> new Answer.Impossible(List.of("A < B."), true);

    assertThat(plan(planner).exitCode()).isEqualTo(ExitCode.IMPOSSIBLE);
    assertThat(page().all("//h1")).containsExactly("Frostlot: no plan for Reading room");
    assertThat(page().all("//li")).contains("A < B.");
  }

  @Test
  void a_page_that_cannot_be_written_is_told_before_anything_is_planned() {
    for (Path place : List.of(folder, folder.resolve("none/page.html"))) {
      file = place;
      CommandRun run = plan(new OnePackPlanner());
      assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
      assertThat(run.err())
          .contains(place + ": found a place that cannot be written to", "nothing was planned")
          .doesNotContain("Exception");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void a_letter_is_printed_even_where_its_page_cannot_be_written_any_more() {
    Planner planner =
        (world, limits, watch) -> {
          assertThat(file.toFile().mkdir() || file.toFile().isDirectory()).isTrue();
          return new OnePackPlanner().plan(world, limits, watch);
        };

    CommandRun run = plan(planner, "--plan-only");
    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.out()).contains("ORDER NEXT");
    assertThat(run.err()).contains("found a place that cannot be written to");
  }

  /** Two members, of whom one has a name with a sign that is markup. */
  private List<String> share() throws IOException {
    new GroupSamples(folder).twoKeepers();
    Path group = folder.resolve("group.json");
    Files.writeString(
        group,
        Files.readString(group)
            .replace("\"name\": \"bo\"", "\"name\": \"bo & co\"")
            .replace("\"bo\"]", "\"bo & co\"]"));
    return List.of("share", folder.toString(), "--effort", "20", "--seconds", "100", "--ways");
  }

  @Test
  void a_group_s_page_holds_all_that_its_letter_holds() throws IOException {
    CommandRun run = run(Engine::solve, share());

    assertThat(run.exitCode()).as(run.err()).isZero();
    List<String> letter = ParsedPage.words(run.out());
    List<String> words = page().words();
    assertThat(letter)
        .hasSizeGreaterThan(200)
        .allSatisfy(
            word ->
                assertThat(Collections.frequency(words, word))
                    .as(word)
                    .isGreaterThanOrEqualTo(Collections.frequency(letter, word)));
  }

  /** Goods and shares by hand: half a bag at 10.00, and half of a box at 20.00. */
  @Test
  void a_group_s_page_has_one_sheet_to_sign_for_every_member() throws IOException {
    CommandRun run =
        run(Engine::solve, Stream.concat(share().stream(), Stream.of("--format=json")).toList());

    JsonNode members = new ObjectMapper().readTree(run.out()).get("members");
    assertThat(members).extracting(it -> it.get("name").asText()).containsExactly("ann", "bo & co");
    assertThat(page().all("//section[@class='sheet']")).hasSize(2);
    for (JsonNode member : members) {
      String sheet =
          "//section[@class='sheet'][h2='Sheet of %s']".formatted(member.get("name").asText());
      assertThat(page().all(sheet)).hasSize(1);
      assertThat(page().all(sheet + "//tr[starts-with(th, 'goods')]/td"))
          .containsExactly(member.get("goods").asText())
          .containsExactly("5.00");
      assertThat(page().all(sheet + "//tr[@class='total']/td"))
          .containsExactly(member.get("pays").asText())
          .containsExactly("15.00");
      assertThat(page().all(sheet + "/p[@class='sign']")).hasSize(1);
      assertThat(page().all(sheet + "/p[@class='foot']").get(0))
          .contains("Salmonella", "wash hands", "dry ice (-78.5 C)", "never thaw", "ask a vet");
    }
  }

  /** Sums by hand as in the letter: bo takes over 10 of cy's pieces, and half of the shipping. */
  @Test
  void a_settled_order_s_page_has_the_new_sheets() throws IOException {
    InvoiceSamples samples = new InvoiceSamples(new GroupSamples(folder));
    samples.group("\"way\": \"equal\"");
    Path invoice = samples.invoice(", \"droppedOut\": [\"cy\"]" + InvoiceSamples.taken("bo", 10));
    List<String> settle = List.of("settle", folder.toString(), invoice.toString());

    assertThat(run(Engine::solve, settle).exitCode()).isZero();
    assertThat(page().all("//section[@class='sheet']/h2"))
        .containsExactly("Sheet of ann", "Sheet of bo", "Sheet of cy", "Sheet of dee");
    assertThat(page().all("//section[h2='Sheet of bo']//tr[@class='total']/td"))
        .containsExactly("25.50");

    file = folder;
    CommandRun refused = run(Engine::solve, settle);
    assertThat(refused.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(refused.err()).contains("Nothing was settled.");
    assertThat(refused.out()).isEmpty();
  }
}
