package io.frostlot.files;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.plan.Scenario;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Litres;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A member of a group who only says which pieces it wants and by when. */
final class WantedPart {
  private static final Litres ROOM = Litres.of(BigDecimal.valueOf(100_000));
  private final Scenario like;
  private final Problems problems;
  private final Kinds kinds = Kinds.shipped();

  /**
   * Reads such members.
   *
   * @param like whose days, money, suppliers and policy it has
   */
  WantedPart(Scenario like, Problems problems) {
    this.like = like;
    this.problems = problems;
  }

  /** A scenario of needs only; empty with problems added. */
  Optional<Scenario> read(Json.Obj member) {
    List<Need> needs = new ArrayList<>();
    int before = problems.count();
    for (Json.Obj wanted : member.objects("wanted")) {
      LocalDate by = wanted.date("by");
      if (!like.planning().contains(by)) {
        Json typed = wanted.get("by");
        String expected = "a day within " + Days.text(like.planning());
        problems.add(new Problem(typed.where(), typed.shown(), expected, ""));
      }
      String kind = wanted.text("kind");
      Optional<Item.Spread> band = kinds.band(kind, wanted.text("sizeWord"));
      if (band.isEmpty()) {
        Json typed = wanted.get("sizeWord");
        String known = kinds.sizeWords(kind);
        String expected = known.isEmpty() ? "a kind with size words" : "one of " + known;
        problems.add(new Problem(typed.where(), typed.shown(), expected, ""));
      } else if (problems.count() == before) {
        needs.add(
            new Need(
                "wanted " + (needs.size() + 1),
                kind,
                band.get().least(),
                band.get().most(),
                wanted.integer("pieces"),
                new Meal.Days(like.planning().from(), by, by)));
      }
    }
    return problems.count() == before ? Optional.of(scenario(member, needs)) : Optional.empty();
  }

  private Scenario scenario(Json.Obj member, List<Need> needs) {
    Freezer place = new Freezer("place", ROOM, "deep", Freezer.Life.of(36_500), true);
    return new Scenario(
        member.text("name"),
        like.planning(),
        like.currency(),
        new Scenario.Collection(List.of(), needs),
        new Scenario.Larder(List.of(place), List.of(), List.of()),
        like.suppliers(),
        List.of(),
        like.policy());
  }
}
