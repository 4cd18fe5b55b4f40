package io.frostlot.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes group folders: bags of ten mice or ten rabbits at 10.00, boxes at 20.00 that arrive on 6
 * January 2031; a shop sells single mice at 4.00.
 */
public record GroupSamples(Path folder) {

  public void suppliers() throws IOException {
    put(
        "supplier-profiles/north/profile.json",
        """
        {"name": "North (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "boxing": {"boxPieces": 20},
         "shipping": {"toMe": {"firstBox": 20, "transitEarliestDays": 1}},
         "delivery": {"by": "carrier", "shipWeekdays": ["sun"],
                      "closed": ["2031-01-12/2031-12-31"]}}
        """);
    put(
        "supplier-profiles/north/prices.csv",
        """
        item,kind,least_g,most_g,pack_count,price,litres_per_piece
        Mouse,mouse,20,30,10,10,1
        Rabbit,rabbit,900,1100,10,10,1
        """);
    put(
        "supplier-profiles/corner/profile.json",
        """
        {"name": "Corner (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "shop"}}
        """);
    put(
        "supplier-profiles/corner/prices.csv",
        "item,kind,least_g,most_g,pack_count,price,litres_per_piece\nMouse,mouse,20,30,1,4,1\n");
  }

  /**
   * A member's folder.
   *
   * @param needs rows of kind, least and most grams, pieces and day
   */
  public void member(String name, String needs) throws IOException {
    member(name, needs, "north");
  }

  /**
   * A member's folder.
   *
   * @param needs rows of kind, least and most grams, pieces and day
   */
  public void member(String name, String needs, String... suppliers) throws IOException {
    put(name + "/needs.csv", "kind,least_g,most_g,pieces,date\n" + needs + "\n");
    put(name + "/freezers.csv", "name,usable_litres,kind,life_days\nBox,100,deep,30\n");
    put(
        name + "/scenario.json",
        """
        {"name": "Test", "from": "2031-01-01", "planningDays": 30, "currency": "EUR",
         "policy": {"endValue": "none",
          "charges": {"perOrder": 0, "perDeliveryDay": 0}}, "suppliers": ["%s"]}
        """
            .formatted(String.join("\", \"", suppliers)));
  }

  /** A trip to the shop costs 3.00. */
  public void trips() throws IOException {
    put(
        "supplier-profiles/corner/profile.json",
        """
        {"name": "Corner (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "orderCharges": [{"amount": 3}], "delivery": {"by": "shop"}}
        """);
  }

  /** Ann and bo, who each want five mice from the usual suppliers. */
  public void twoKeepers() throws IOException {
    suppliers();
    member("ann", "mouse,20,30,5,2031-01-10");
    member("bo", "mouse,20,30,5,2031-01-10");
    group("", "ann", "bo");
  }

  /**
   * The group file; everybody may be host, mice may be cut into portions of five.
   *
   * @param more further fields of the file, each after a comma
   */
  public void group(String more, String... members) throws IOException {
    StringBuilder names = new StringBuilder();
    for (String name : members) {
      names.append(names.isEmpty() ? "" : ", ");
      names.append("{\"name\": \"%1$s\", \"scenario\": \"%1$s\"}".formatted(name));
    }
    put(
        "group.json",
        """
        {"name": "Group", "members": [%s], "hosts": ["%s"],
         "cutting": [{"item": "Mouse", "packCount": 10, "leastPieces": 5}]%s}
        """
            .formatted(names, String.join("\", \"", members), more));
  }

  public void put(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }
}
