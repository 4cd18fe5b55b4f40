package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.units.Litres;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the others have not collected yet of joint orders fits into the room that the host has
 * agreed to keep for them.
 *
 * <p>For each check day t: sum over pieces that came by t and are handed over after t of litres
 * &lt;= room.
 */
final class WaitingRoom implements Rule {
  private final World world;

  WaitingRoom(World world) {
    this.world = world;
  }

  private Litres room() {
    return world.joint().collecting().waiting().room();
  }

  @Override
  public String id() {
    return "waiting-room";
  }

  @Override
  public String says() {
    return "What waits to be collected fits into " + room() + ".";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  private boolean isNever() {
    return world.joint().collecting().days().isEmpty();
  }

  @Override
  public void impose(Program program) {
    Timeline timeline = program.decisions().timeline();
    if (isNever() || !timeline.isExact()) {
      return;
    }
    List<Flow> flows = program.decisions().flows();
    for (int day : timeline.checkDays()) {
      Linear litres = new Linear();
      for (Flow flow : flows) {
        flow.parts().stream()
            .filter(part -> day < part.coming().earliest() && came(part.lot().origin()) <= day)
            .forEach(part -> litres.plus(flow.item().litres().toDouble(), part.pieces()));
      }
      program.model().instance("The host keeps " + room() + " on " + Timeline.date(day) + ".");
      program.model().atMost(id(), litres, room().toDouble());
    }
  }

  private int came(Lot.Origin origin) {
    return origin instanceof Lot.Ordered ordered && world.joint().isJoint(ordered.slot())
        ? Timeline.day(ordered.slot().arrivesEarliest())
        : Integer.MAX_VALUE;
  }

  @Override
  public void judge(Plan plan, Books books) {
    if (isNever()) {
      return;
    }
    List<Integer> days =
        plan.lots().stream()
            .map(lot -> came(lot.origin()))
            .filter(day -> day < Integer.MAX_VALUE)
            .distinct()
            .toList();
    for (int day : days) {
      Litres waiting =
          waiting(plan, day)
              .map(lot -> lot.item().litres().times(lot.pieces()))
              .reduce(Litres.ZERO, Litres::plus);
      books.use(id(), "what waits on " + Timeline.date(day), waiting.toDouble(), room().toDouble());
      if (waiting.compareTo(room()) > 0) {
        books.breach(id(), "on " + Timeline.date(day), waiting, "at most " + room());
      }
    }
  }

  private Stream<Lot> waiting(Plan plan, int day) {
    return plan.lots().stream()
        .filter(lot -> came(lot.origin()) <= day && day < Timeline.day(lot.earliest()));
  }
}
