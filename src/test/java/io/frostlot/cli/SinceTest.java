package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.app.EnginePlanner;
import io.frostlot.app.OneMouseShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A mouse at 1.00 is eaten on each of four Wednesdays, and the earlier plan fetches all four on the
 * first. With a week less to plan three are enough, so that the fourth is 1.00 too much.
 */
class SinceTest {
  private static final String FETCH_ONCE =
      ", \"tailDays\": 0, \"charges\": {\"perOrder\": \"0.30\", \"perDeliveryDay\": 0}";
  @TempDir private Path folder;

  private Path room(String policy) {
    return new OneMouseShop(
            OneMouseShop.SINGLES,
            new OneMouseShop.Extras("", FETCH_ONCE + policy),
            new OneMouseShop.Keeping(60, 10))
        .write(folder.resolve("room"));
  }

  private static String plan(Path room, String... more) {
    List<String> line = new ArrayList<>(List.of("plan", room.toString(), "--seconds=600"));
    line.addAll(List.of(more));
    CommandRun run = CommandRun.of(new EnginePlanner(), false, line.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.PLAN);
    return run.out();
  }

  private Path earlier() throws IOException {
    return Files.writeString(
        folder.resolve("plan.json"), plan(room(""), "--format=json", "--plan-only"));
  }

  private Path shorter(String policy) throws IOException {
    Path room = room(policy);
    Path scenario = room.resolve("scenario.json");
    String text = Files.readString(scenario);
    Files.writeString(scenario, text.replace("\"planningDays\": 28", "\"planningDays\": 21"));
    return room;
  }

  private static JsonNode json(String text) throws IOException {
    return new ObjectMapper().readTree(text);
  }

  @Test
  void what_would_save_less_than_the_charge_stays() throws IOException {
    String since = "--since=" + earlier();
    Path room = shorter("");
    String letter = plan(room, since);
    assertThat(letter.replaceAll("\\s+", " "))
        .contains(
            "The one order due by Wed 15 Jan 2031 stays as it was. To change one would save at"
                + " most 5.00 EUR.",
            "What is reckoned for changing orders due soon is left out on both sides.");
    assertThat(plan(room, since, "--format=csv")).contains("Mouse,mouse,adult,1,4,");
    JsonNode plan = json(plan(room, since, "--format=json", "--plan-only"));
    assertThat(plan.get("dueSoon")).hasSize(1);
    assertThat(plan.at("/dueSoon/0/kept").asBoolean()).isTrue();
  }

  @Test
  void what_saves_more_than_the_charge_is_changed_and_the_letter_says_why() throws IOException {
    String since = "--since=" + earlier();
    Path room = shorter(", \"calm\": {\"days\": 7, \"charge\": \"0.99\"}");
    assertThat(plan(room, since, "--plan-only").replaceAll("\\s+", " "))
        .contains(
            "Of 1 order due by Wed 8 Jan 2031 none stays as planned before; 1 changed or dropped, 0"
                + " added. For each change 0.99 EUR are reckoned. To change nothing and meet as"
                + " many meals would cost at least 0.99 EUR more.",
            "3 x Mouse, pack of 1 instead of 4",
            "orders due soon that are changed or new");
    JsonNode plan = json(plan(room, since, "--format=json", "--plan-only"));
    assertThat(plan.at("/dueSoon/0/kept").asBoolean(true)).isFalse();
    assertThat(plan.get("bill"))
        .anySatisfy(
            line -> {
              assertThat(line.get("rule").asText()).isEqualTo("changed-due-soon");
              assertThat(line.get("kind").asText()).isEqualTo("reckoned");
              assertThat(line.get("amount").asText()).isEqualTo("0.99");
            });
  }

  @Test
  void the_plan_of_another_scenario_is_compared_with_but_not_kept() throws IOException {
    Path earlier = earlier();
    Files.writeString(earlier, Files.readString(earlier).replace("One mouse", "Two mice"));
    assertThat(plan(shorter(""), "--since=" + earlier, "--plan-only").replaceAll("\\s+", " "))
        .contains("The earlier plan is for Two mice: none of its orders is kept.")
        .contains("3 x Mouse, pack of 1 instead of 4");
  }

  /** Where every meal must be met and there is no room, it is still said what clashes. */
  @Test
  void an_impossible_room_names_its_clash_whatever_was_planned_before() throws IOException {
    Path earlier = earlier();
    Path room = shorter(", \"meals\": \"all\"");
    Files.writeString(
        room.resolve("freezers.csv"), "name,usable_litres,kind,life_days\nChest,0.5,deep,60\n");
    CommandRun run =
        CommandRun.of(new EnginePlanner(), false, "plan", room.toString(), "--since=" + earlier);
    assertThat(run.exitCode()).isEqualTo(ExitCode.IMPOSSIBLE);
    assertThat(run.out()).contains("Chest");
  }
}
