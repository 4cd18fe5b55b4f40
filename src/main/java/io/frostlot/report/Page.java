package io.frostlot.report;

/**
 * What letters are written to: it grows downwards, and says what each thing is, not how it looks.
 * Amounts and details belong to the entry or the point before them, if there is one under the last
 * heading.
 */
interface Page {
  /** What it is all about; the first thing on it. */
  void title(String title);

  void heading(String heading);

  /** Of something that may have been told before. */
  default void heading(String heading, boolean again) {
    heading(again ? heading + " (after a longer look)" : heading);
  }

  /** A heading with which new paper begins, where there is paper, up to the next heading. */
  void sheet(String heading);

  /** What stands in short at the foot of each such sheet, since somebody takes it home. */
  void foot(String sentence);

  /** One of several things of a kind under a heading, by its name. */
  void entry(String name);

  /** What comes does not belong to what stands above it. */
  void gap();

  void say(String sentence);

  /** One of a list. */
  void point(String sentence);

  /** An answer in short, behind a word that says to what. */
  void fact(String label, String sentence);

  /** A part of an entry or of a point, behind what it is about. */
  void detail(String label, String sentence);

  /** One of the amounts that stand below each other. */
  void amount(String label, String amount);

  /** What amounts come to. */
  void total(String label, String amount);

  void table(Table table);

  /** Room for somebody to sign. */
  void sign(String label);
}
