package io.frostlot.files;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * Looks up the rate for the keeper's place: the longest postal prefix of its country, then its ISO
 * 3166-2 region, then the country.
 */
final class Zones {
  private final Json.Obj shipping;
  private final Problems problems;

  Zones(Json.Obj shipping, Problems problems) {
    this.shipping = shipping;
    this.problems = problems;
  }

  /** Empty, with a problem added, where the supplier does not ship there. */
  Optional<Json.Obj> rateTo(ScenarioFile scenario) {
    Map<String, Json> places = shipping.object("places").fields();
    Map<String, Json> zones = shipping.object("zones").fields();
    places.values().stream()
        .filter(zone -> !zones.containsKey(((Json.Text) zone).value()))
        .forEach(
            zone ->
                refuse(
                    zone, zone.shown(), "one of the zones " + String.join(", ", zones.keySet())));
    Json.Obj root = scenario.root();
    if (!scenario.sound("place", "postalCode")) {
      return Optional.empty();
    }
    if (!root.has("place")) {
      refuse(root, "no field \"place\"", "a place such as XF-01, because a supplier ships by zone");
      return Optional.empty();
    }
    String place = root.text("place");
    String postal = root.has("postalCode") ? root.text("postalCode") : "";
    Optional<String> nearest =
        places.keySet().stream()
            .filter(key -> rank(key, place, postal) > 0)
            .max(Comparator.comparingInt(key -> rank(key, place, postal)));
    if (nearest.isEmpty()) {
      refuse(
          root.get("place"),
          root.get("place").shown(),
          "a place of "
              + shipping.where().file()
              + " ("
              + String.join(", ", places.keySet())
              + ")");
    }
    return nearest
        .map(key -> shipping.object("places").text(key))
        .filter(zones::containsKey)
        .map(zone -> (Json.Obj) zones.get(zone));
  }

  /** How closely a key describes the place; 0 where it does not. */
  private static int rank(String key, String place, String postal) {
    String country = place.substring(0, 2);
    if (key.length() > 3 && key.charAt(2) == ' ') {
      String prefix = bare(key.substring(3));
      return key.startsWith(country) && bare(postal).startsWith(prefix) ? 2 + prefix.length() : 0;
    }
    if (key.equals(place)) {
      return key.equals(country) ? 1 : 2;
    }
    return key.equals(country) ? 1 : 0;
  }

  private static String bare(String postal) {
    return postal.replaceAll("[ -]", "").toUpperCase(java.util.Locale.ROOT);
  }

  private void refuse(Json at, String found, String expected) {
    problems.add(new Problem(at.where(), found, expected, ""));
  }
}
