package io.frostlot.app;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.World;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * One snake that takes a mouse of 50 g every Wednesday, a shop that is open on that day, a freezer,
 * four weeks to plan and 182 days of the tail.
 *
 * @param prices rows of the price sheet of the shop, below its header
 * @param extras further fields of its profile and of the policy
 */
public record OneMouseShop(String prices, Extras extras, Keeping keeping) {
  public static final String SINGLES = "Mouse,mouse,adult,50,50,50,1,1.00\n";

  /** A plain shop. */
  public OneMouseShop(String prices, Keeping keeping) {
    this(prices, new Extras("", ""), keeping);
  }

  /** Each begins with a comma where it is not empty. */
  public record Extras(String profile, String policy) {}

  /**
   * The freezer.
   *
   * @param lifeDays for which prey keeps
   * @param litres of room; a mouse takes one
   */
  public record Keeping(int lifeDays, int litres) {}

  /** Ordering is no effort, unless charges are given. */
  private String policy() {
    return extras.policy().contains("charges")
        ? extras.policy()
        : extras.policy() + ", \"charges\": {\"perOrder\": 0, \"perDeliveryDay\": 0}";
  }

  /** Writes the scenario folder. */
  public Path write(Path folder) {
    put(
        folder.resolve("scenario.json"),
        """
        {"name": "One mouse", "from": "2031-01-01", "planningDays": 28, "place": "XF",
         "currency": "EUR", "suppliers": ["shop"], "kgPerLitre": 0.05,
         "policy": {"endValue": "tail"%s}}
        """
            .formatted(policy()));
    put(
        folder.resolve("animals.csv"),
        """
        name,mass_g,weighed,weekdays,meal_g,largest_piece_g,kinds,late_days
        Ash,500,2031-01-01,wed,50,60,mouse,0
        """);
    put(
        folder.resolve("freezers.csv"),
        "name,usable_litres,kind,life_days\nChest,%d,deep,%d\n"
            .formatted(keeping.litres(), keeping.lifeDays()));
    put(
        folder.resolve("supplier-profiles/shop/profile.json"),
        """
        {"name": "Shop (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "shop", "openWeekdays": ["wed"]}%s}
        """
            .formatted(extras.profile()));
    put(
        folder.resolve("supplier-profiles/shop/prices.csv"),
        "item,kind,size_word,least_g,mean_g,most_g,pack_count,price\n" + prices);
    return folder;
  }

  /** The same as a world. */
  public World world(Path folder) {
    return World.of(((Reading.Accepted) ScenarioFolder.read(write(folder))).scenario());
  }

  private static void put(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
