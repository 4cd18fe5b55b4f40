package io.frostlot.files;

import io.frostlot.plan.BillLines;
import io.frostlot.plan.Books;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Order;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** A plan written as JSON before (see {@link PlanJson}). */
public final class PlanFile {
  private final Json.Obj root;

  private PlanFile(Json.Obj root) {
    this.root = root;
  }

  /** What reading came to. */
  public sealed interface Reading<T> {}

  /** Everything was right. */
  public record Read<T>(T value) implements Reading<T> {}

  /**
   * Something was wrong.
   *
   * @param problems at least one
   */
  public record Refused<T>(List<Problem> problems) implements Reading<T> {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file that must hold a plan, not an answer without one. */
  public static Reading<PlanFile> read(Path path) {
    Problems problems = new Problems();
    String name = String.valueOf(path.getFileName());
    Optional<Json.Obj> root =
        TextFile.read(path, name, problems)
            .flatMap(text -> JsonText.parse(text, name, problems))
            .flatMap(json -> JsonSchema.named("schema/plan.schema.json").check(json, problems))
            .map(JsonSchema.Checked::document);
    if (!problems.isEmpty() || root.isEmpty()) {
      return new Refused<>(problems.all());
    }
    PlanFile plan = new PlanFile(root.get());
    if (!(root.get().get("cost") instanceof Json.Text)) {
      Json status = root.get().get("status");
      return new Refused<>(
          List.of(new Problem(status.where(), status.shown(), "an answer with a plan", "")));
    }
    return new Read<>(plan);
  }

  /** The digest of the inputs that it was made from. */
  public String digest() {
    return root.text("digest");
  }

  /** The name of the scenario that it was made for. */
  public String scenario() {
    return root.text("scenario");
  }

  /** A problem where its money is in another currency, and cannot be compared. */
  public Optional<Problem> otherCurrency(String expected) {
    Json found = root.get("currency");
    return root.text("currency").equals(expected)
        ? Optional.empty()
        : Optional.of(
            new Problem(found.where(), found.shown(), expected + ", as in the scenario", ""));
  }

  /** What it says of itself. */
  public Outline outline() {
    List<Outline.Ordered> orders = new ArrayList<>();
    for (Json.Obj order : root.objects("orders")) {
      TreeMap<String, Integer> packs = new TreeMap<>();
      order.objects("packs").forEach(pack -> packs.put(packId(pack), pack.integer("packs")));
      orders.add(
          new Outline.Ordered(
              order.text("supplier"),
              order.date("orderBy"),
              order.date("arrivesEarliest"),
              packs,
              order.money("total")));
    }
    return new Outline(
        digest(),
        new Outline.Totals(root.money("cost"), root.money("cash")),
        orders,
        root.objects("unmetMeals").stream()
            .map(meal -> new Outline.Unmet(meal.text("animal"), meal.date("day")))
            .toList());
  }

  /** How it stands before money; what an older file does not say falls short of nothing. */
  public Difference.Side side() {
    List<Shortfall> gaveWay = root.objects("gaveWay").stream().map(PlanFile::shortfall).toList();
    return new Difference.Side(
        new Standing(
            unmet(true),
            unmet(false),
            gaveWay.stream().mapToLong(Shortfall::amount).sum(),
            root.money("cost")),
        root.has("lateMeals")
            ? root.integer("lateMeals")
            : root.objects("animals").stream().mapToInt(animal -> animal.integer("late")).sum(),
        gaveWay);
  }

  private int unmet(boolean must) {
    return root.objects("unmetMeals").stream()
        .filter(meal -> meal.yes("must") == must)
        .mapToInt(meal -> meal.integer("meals"))
        .sum();
  }

  private static Shortfall shortfall(Json.Obj json) {
    return new Shortfall(
        json.text("rule"),
        Typed.read(Shortfall.Unit.class, json.text("unit")),
        json.integer("amount"),
        List.of());
  }

  /** Its bill; the amounts sum to the cost where nobody has changed the file. */
  public BillLines bill() {
    Map<Books.Account, SortedMap<String, Money>> lines = new TreeMap<>();
    for (Json.Obj line : root.objects("bill")) {
      Books.Account account = Typed.read(Books.Account.class, line.text("kind"));
      lines
          .computeIfAbsent(account, it -> new TreeMap<>())
          .merge(line.text("rule"), line.money("amount"), Money::plus);
    }
    return new BillLines(lines);
  }

  /** A problem where its bill does not sum to its cost, so that it was changed by hand. */
  public Optional<Problem> wrongSum() {
    Json cost = root.get("cost");
    return bill().total().equals(root.money("cost"))
        ? Optional.empty()
        : Optional.of(
            new Problem(cost.where(), cost.shown(), bill().total() + ", the sum of its bill", ""));
  }

  /** Code of the currency of its money. */
  public String currency() {
    return root.text("currency");
  }

  /** As the price sheet's rows are named in a plan. */
  static String packId(Json.Obj pack) {
    return pack.text("item") + " x" + pack.integer("packCount");
  }

  /**
   * The plan itself, every name in it found in the world; what it costs is for the rules to judge.
   */
  public Reading<Plan> plan(World world) {
    Problems problems = new Problems();
    Plan plan = new PlanPart(world, problems).read(root);
    return problems.isEmpty() ? new Read<>(plan) : new Refused<>(problems.all());
  }

  /** The plan in a world that has moved on, or else its orders that can be named there, if any. */
  public Optional<Plan> asFarAsKnown(World world) {
    if (plan(world) instanceof Read<Plan> whole) {
      return Optional.of(whole.value());
    }
    PlanOrderPart reader = new PlanOrderPart(world, new Problems());
    List<Order> orders =
        root.objects("orders").stream().flatMap(json -> reader.read(json).stream()).toList();
    return Optional.of(new Plan(orders, List.of(), List.of(), List.of()))
        .filter(plan -> !plan.orders().isEmpty());
  }
}
