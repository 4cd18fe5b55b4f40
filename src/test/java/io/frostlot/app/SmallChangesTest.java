package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.PlanJson;
import io.frostlot.files.Samples;
import io.frostlot.plan.Answer;
import io.frostlot.plan.DueSoon;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The small room, and again after one small change of what was typed: a mass, a price, a count of
 * the stock, a skipped meal. {@code -Dfrostlot.changes=200} asks for more changes, and {@code
 * -Dfrostlot.changes.days=84} for all days of the demo.
 */
class SmallChangesTest {
  private static final int CHANGES = Integer.getInteger("frostlot.changes", 3);
  private static final int DAYS = Integer.getInteger("frostlot.changes.days", 42);
  private static final Limits LIMITS = Limits.ofSeconds(600);
  private static final double HALF_CENT = 0.005;
  private final MakePlan makePlan = new MakePlan(new EnginePlanner());
  @TempDir private Path folder;
  private Path room;
  private Path earlier;

  /** Another value of a column, from the cells of a row by column. */
  private record Edit(String file, String column, Function<Map<String, String>, String> value) {}

  @BeforeEach
  void plan_the_room_as_it_is() throws IOException {
    room = folder.resolve("scenarios/room");
    Samples.copy(Path.of("scenarios/small-room"), room);
    Samples.copy(Path.of("supplier-profiles"), folder.resolve("supplier-profiles"));
    String scenario = Files.readString(room.resolve("scenario.json"));
    Files.writeString(
        room.resolve("scenario.json"),
        scenario
            .replace("\"planningDays\": 84", "\"planningDays\": " + DAYS)
            .replace("\"tailDays\": 91", "\"tailDays\": " + DAYS));
    MakePlan.Ready ready = ready(List.of());
    String json = PlanJson.text(ready.inputs(), makePlan.plan(ready, LIMITS, Watch.NONE));
    earlier = Files.writeString(folder.resolve("plan.json"), json);
  }

  private MakePlan.Ready ready(List<Path> since) {
    return (MakePlan.Ready) makePlan.prepare(new MakePlan.Request(room, List.of(), since));
  }

  private Answer.Judged best(World world) {
    Answer answer = new EnginePlanner().plan(world, LIMITS, Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan();
  }

  private static String scaled(String number, Random random, int decimals) {
    BigDecimal factor = BigDecimal.valueOf(92 + random.nextInt(17), 2);
    return new BigDecimal(number)
        .multiply(factor)
        .setScale(decimals, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** Up to 8 % of a mass or a price, up to two pieces, or the first meal of an animal. */
  private static Edit edit(Random random) {
    String animals = "scenarios/room/animals.csv";
    return switch (random.nextInt(4)) {
      case 0 -> new Edit(animals, "mass_g", row -> scaled(row.get("mass_g"), random, 1));
      case 1 -> {
        String supplier = random.nextBoolean() ? "frostmere" : "lantern-corner";
        String prices = "supplier-profiles/" + supplier + "/prices.csv";
        yield new Edit(prices, "price", row -> scaled(row.get("price"), random, 2));
      }
      case 2 ->
          new Edit(
              "scenarios/room/stock.csv",
              "pieces",
              row -> "" + Math.max(1, Integer.parseInt(row.get("pieces")) + random.nextInt(5) - 2));
      default ->
          new Edit(
              animals,
              "next_meal",
              row -> {
                int days = Integer.parseInt(row.get("every_days"));
                return LocalDate.parse(row.get("next_meal")).plusDays(days).toString();
              });
    };
  }

  /** Changes one cell of a column, and gives back the file as it was. */
  private String change(Edit edit, Random random) throws IOException {
    Path file = folder.resolve(edit.file());
    String before = Files.readString(file);
    List<String> lines = new ArrayList<>(before.lines().toList());
    int line = 1 + random.nextInt(lines.size() - 1);
    List<String> columns = List.of(lines.get(0).split(","));
    List<String> cells = List.of(lines.get(line).split(",", -1));
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      row.put(columns.get(i), cells.get(i));
    }
    row.put(edit.column(), edit.value().apply(row));
    lines.set(line, String.join(",", row.values()));
    Files.writeString(file, String.join("\n", lines) + "\n");
    return before;
  }

  private static int changes(DueSoon dueSoon, Answer.Judged judged) {
    return dueSoon.changedBy(judged.plan()).size() + dueSoon.addedBy(judged.plan()).size();
  }

  private static double money(Answer.Judged judged) {
    return judged.standing().money().toDouble();
  }

  /**
   * With the charge c a plan P of n changes is best, without it a plan Q of m changes: P + c n is
   * at most Q + c m, and Q at most P. So n is at most m, and what P costs more is at most c (m -
   * n).
   */
  @Test
  void fewer_orders_due_soon_change_and_each_that_stays_costs_at_most_the_charge()
      throws IOException {
    Tally tally = new Tally();
    for (int seed = 0; seed < CHANGES; seed++) {
      Random random = new Random(seed);
      Edit edit = edit(random);
      String before = change(edit, random);
      World world = ready(List.of(earlier)).inputs().world();
      Files.writeString(folder.resolve(edit.file()), before);
      Answer.Judged calm = best(world);
      Answer.Judged free = best(world.withDueSoon(DueSoon.NONE));
      compare(world.dueSoon(), calm, free, "change " + seed + ": " + edit.column());
      tally.add(world.dueSoon(), calm, free);
    }
    assertThat(tally.due).as("orders due soon").isPositive();
    System.out.println(CHANGES + " small changes; " + tally);
  }

  private static void compare(
      DueSoon dueSoon, Answer.Judged calm, Answer.Judged free, String about) {
    assertThat(calm.standing().sameBeforeMoney(free.standing())).as(about).isTrue();
    int fewer = changes(dueSoon, free) - changes(dueSoon, calm);
    assertThat(fewer).as(about).isNotNegative();
    assertThat(dearer(dueSoon, calm, free))
        .as(about)
        .isBetween(-HALF_CENT, fewer * dueSoon.charge().toDouble() + HALF_CENT);
  }

  private static double dearer(DueSoon dueSoon, Answer.Judged calm, Answer.Judged free) {
    return money(calm) - dueSoon.chargeOf(calm.plan()).toDouble() - money(free);
  }

  /** What came of all changes. */
  private static final class Tally {
    private int due;
    private int changed;
    private int changedFreely;
    private int added;
    private int addedFreely;
    private double dearer;

    void add(DueSoon dueSoon, Answer.Judged calm, Answer.Judged free) {
      due += dueSoon.orders().size();
      changed += dueSoon.changedBy(calm.plan()).size();
      changedFreely += dueSoon.changedBy(free.plan()).size();
      added += dueSoon.addedBy(calm.plan()).size();
      addedFreely += dueSoon.addedBy(free.plan()).size();
      dearer += dearer(dueSoon, calm, free);
    }

    @Override
    public String toString() {
      return "%d orders due soon: with the charge %d change and %d are new, without it %d and %d; %.2f dearer in all"
          .formatted(due, changed, added, changedFreely, addedFreely, dearer);
    }
  }
}
