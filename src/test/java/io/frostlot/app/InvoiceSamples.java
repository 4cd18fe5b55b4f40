package io.frostlot.app;

import java.io.IOException;
import java.nio.file.Path;

/**
 * An invoice of two bags of ten mice at 10.00 and 21.00 of shipping: ann and bo have half of the
 * first bag each, cy has the second; ann received it.
 */
public record InvoiceSamples(GroupSamples samples) {

  /** Four members, of whom dee wants nothing. */
  public void group(String sharing) throws IOException {
    samples.suppliers();
    for (String member : new String[] {"ann", "bo", "cy", "dee"}) {
      samples.member(member, "mouse,20,30,5,2031-01-10");
    }
    samples.group(", \"sharing\": {" + sharing + "}", "ann", "bo", "cy", "dee");
  }

  /**
   * The file.
   *
   * @param more further fields, each after a comma
   */
  public Path invoice(String more) throws IOException {
    samples.put(
        "invoice.json",
        """
        {"supplier": "north", "ordered": "2031-01-05", "host": "ann",
         "lines": [{"item": "Mouse", "packCount": 10, "packs": 2}],
         "charges": [{"label": "shipping", "amount": "21.00"}], "total": "41.00",
         "portions": [
           {"member": "ann", "item": "Mouse", "packCount": 10, "bag": 1, "pieces": 5},
           {"member": "bo", "item": "Mouse", "packCount": 10, "bag": 1, "pieces": 5},
           {"member": "cy", "item": "Mouse", "packCount": 10, "bag": 2, "pieces": 10}]%s}
        """
            .formatted(more));
    return samples.folder().resolve("invoice.json");
  }

  /** Pieces of cy's bag that somebody takes over. */
  public static String taken(String member, int pieces) {
    return """
    , "takenOver": [{"member": "%s", "from": "cy", "item": "Mouse", "packCount": 10, "bag": 2,
                     "pieces": %d}]\
    """
        .formatted(member, pieces);
  }

  /** Pieces of a bag that were lost, one unit of money paid back. */
  public static String lost(int bag, int pieces) {
    return """
    , "lost": [{"item": "Mouse", "packCount": 10, "bag": %d, "pieces": %d, "refund": "1.00"}]\
    """
        .formatted(bag, pieces);
  }
}
