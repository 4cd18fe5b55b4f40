package io.frostlot.files;

import io.frostlot.plan.Cutting;
import io.frostlot.plan.Group;
import io.frostlot.plan.Invoice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Who gets what of an invoice, and what happened to it. */
final class InvoiceParts {
  private static final String LATE =
      "Whoever joins late is first added to the members in group.json, with some pieces wanted.";

  private final List<String> members;
  private final Cutting cutting;
  private final Map<String, Invoice.Line> lines;
  private final Problems problems;
  private final Map<String, Integer> held = new HashMap<>();

  /**
   * A reader.
   *
   * @param lines of the invoice, by pack id
   */
  InvoiceParts(Group group, Map<String, Invoice.Line> lines, Problems problems) {
    members = group.names();
    cutting = group.agreement().cutting();
    this.lines = lines;
    this.problems = problems;
  }

  /** Every piece of every bag, once; incomplete where problems were added. */
  List<Invoice.Portion> portions(Json.Obj json) {
    List<Invoice.Portion> portions = new ArrayList<>();
    Map<Invoice.Bag, Integer> pieces = new HashMap<>();
    Set<List<Object>> seen = new HashSet<>();
    for (Json.Obj portion : json.objects("portions")) {
      member(portion, "member", "");
      int count = portion.integer("pieces");
      int wanted = portion.has("wanted") ? portion.integer("wanted") : count;
      if (wanted > count) {
        refuse(portion.get("wanted"), "at most the " + count + " pieces");
      }
      bag(portion)
          .ifPresent(
              bag -> {
                if (!seen.add(List.of(portion.text("member"), bag))) {
                  refuse(portion.get("bag"), "one portion of a bag for a member");
                }
                pieces.merge(bag, count, Integer::sum);
                int most = Math.min(wanted, count);
                portions.add(new Invoice.Portion(portion.text("member"), bag, count, most));
              });
    }
    whole(json, pieces);
    return portions;
  }

  /** Nothing bought is left without an owner, nothing is handed out that was not bought. */
  private void whole(Json.Obj json, Map<Invoice.Bag, Integer> pieces) {
    Map<String, Integer> bags = new TreeMap<>();
    pieces.forEach(
        (bag, count) -> {
          bags.merge(bag.pack().id(), 1, Integer::sum);
          if (count != bag.pack().pieces()) {
            problem(
                json.get("portions"),
                count + " pieces of bag " + bag.number() + " of " + bag.pack().id(),
                "all " + bag.pack().pieces() + " of them, once");
          }
        });
    lines.forEach(
        (id, line) -> {
          int count = bags.getOrDefault(id, 0);
          if (count != line.packs()) {
            problem(
                json.get("portions"),
                (count == 1 ? "1 bag" : count + " bags") + " of " + id,
                line.packs() + " as on the invoice");
          }
        });
  }

  /** Those who dropped out, then what changed hands, then what was lost. */
  List<Invoice.Mishap> mishaps(Json.Obj json, List<Invoice.Portion> portions) {
    portions.forEach(it -> held.put(key(it.member(), it.bag()), it.pieces()));
    List<Invoice.Mishap> mishaps = new ArrayList<>();
    for (Json out : json.items("droppedOut")) {
      String member = ((Json.Text) out).value();
      if (!members.contains(member) || member.equals(json.text("host"))) {
        refuse(out, "a member other than the host: " + others(json.text("host")));
      }
      mishaps.add(new Invoice.DropsOut(member));
    }
    json.objects("takenOver").forEach(it -> take(it, mishaps));
    Map<Invoice.Bag, Integer> lost = new HashMap<>();
    for (Json.Obj some : json.objects("lost")) {
      Optional<Invoice.Bag> bag = bag(some);
      int pieces = some.integer("pieces");
      if (bag.isPresent() && portions.stream().noneMatch(it -> it.bag().equals(bag.get()))) {
        refuse(some.get("bag"), "a bag of " + bag.get().pack().id() + " among the portions");
      } else if (bag.isPresent()
          && lost.merge(bag.get(), pieces, Integer::sum) > bag.get().pack().pieces()) {
        refuse(some.get("pieces"), "no more than the bag holds");
      }
      bag.ifPresent(it -> mishaps.add(new Invoice.Lost(it, pieces, some.money("refund"))));
    }
    return mishaps;
  }

  private void take(Json.Obj json, List<Invoice.Mishap> mishaps) {
    member(json, "member", LATE);
    member(json, "from", "");
    if (json.text("member").equals(json.text("from"))) {
      refuse(json.get("from"), "another member");
      return;
    }
    Optional<Invoice.Bag> bag = bag(json);
    if (bag.isEmpty()) {
      return;
    }
    int pieces = json.integer("pieces");
    int has = held.getOrDefault(key(json.text("from"), bag.get()), 0);
    if (has < pieces) {
      refuse(json.get("pieces"), "at most the " + has + " that " + json.text("from") + " has");
      return;
    }
    if (pieces < has && !cutting.mayCut(bag.get().pack())) {
      problems.add(
          new Problem(
              json.get("pieces").where(),
              json.get("pieces").shown(),
              "all " + has + ": a bag of " + bag.get().pack().id() + " may not be cut",
              "If you have agreed to cut it, add it to cutting in group.json."));
      return;
    }
    held.merge(key(json.text("from"), bag.get()), -pieces, Integer::sum);
    held.merge(key(json.text("member"), bag.get()), pieces, Integer::sum);
    mishaps.add(new Invoice.Takes(json.text("member"), json.text("from"), bag.get(), pieces));
  }

  private String others(String host) {
    return members.stream().filter(it -> !it.equals(host)).collect(Collectors.joining(", "));
  }

  private static String key(String member, Invoice.Bag bag) {
    return member + '/' + bag.pack().id() + '/' + bag.number();
  }

  private Optional<Invoice.Bag> bag(Json.Obj json) {
    String id = PlanFile.packId(json);
    Optional<Invoice.Line> line = Optional.ofNullable(lines.get(id));
    if (line.isEmpty()) {
      problem(json.get("item"), Problem.quote(id), "a row of the invoice");
    }
    return line.map(it -> new Invoice.Bag(it.pack(), json.integer("bag")));
  }

  private void member(Json.Obj json, String field, String hint) {
    if (!members.contains(json.text(field))) {
      Json typed = json.get(field);
      String expected = "one of the members " + String.join(", ", members);
      problems.add(new Problem(typed.where(), typed.shown(), expected, hint));
    }
  }

  private void refuse(Json value, String expected) {
    problem(value, value.shown(), expected);
  }

  private void problem(Json at, String found, String expected) {
    problems.add(new Problem(at.where(), found, expected, ""));
  }
}
