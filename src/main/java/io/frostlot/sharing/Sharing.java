package io.frostlot.sharing;

import io.frostlot.plan.LinearSolver;
import io.frostlot.units.Percent;

/**
 * Shares a bill in a {@link Way}.
 *
 * @param base part of what is shared that is split equally by base and weight
 */
public record Sharing(Percent base, LinearSolver solver) {

  /** Shares in major units, by member, not rounded. */
  public double[] of(Bill bill, Way way) {
    double common = bill.common();
    return switch (way) {
      case EQUAL -> bill.ownAndPart(common, burden -> 1);
      case WEIGHT -> bill.ownAndPart(common, burden -> burden.grams().toDouble());
      case VALUE -> bill.ownAndPart(common, burden -> burden.goods().toDouble());
      case SPACE -> bill.ownAndPart(common, burden -> burden.litres().toDouble());
      case BASE_AND_WEIGHT -> baseAndWeight(bill, common * base.fraction().doubleValue());
      case ALONE, SHAPLEY, NUCLEOLUS -> of(bill.game(), way);
    };
  }

  /** The same in a way that looks at what subgroups would pay. */
  public double[] of(Game game, Way way) {
    return switch (way) {
      case ALONE -> alone(game);
      case SHAPLEY -> Shapley.of(game);
      case NUCLEOLUS -> Nucleolus.of(game, solver);
      default -> throw new IllegalArgumentException(way + " looks at the goods");
    };
  }

  private static double[] baseAndWeight(Bill bill, double equally) {
    double[] shares = bill.ownAndPart(bill.common() - equally, burden -> burden.grams().toDouble());
    for (int i = 0; i < shares.length; i++) {
      shares[i] += equally / shares.length;
    }
    return shares;
  }

  private static double[] alone(Game game) {
    int count = game.members().size();
    double[] shares = new double[count];
    double sum = 0;
    for (int i = 0; i < count; i++) {
      shares[i] = game.reckoned(Subgroup.of(i));
      sum += shares[i];
    }
    for (int i = 0; i < count; i++) {
      shares[i] = sum > 0 ? shares[i] * game.toShare() / sum : game.toShare() / count;
    }
    return shares;
  }
}
