package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The size of a window is told as stty of POSIX.1-2017 does on common systems: rows, columns. */
class TerminalTest {
  @ParameterizedTest
  @CsvSource({
    "'', 24 80, 80",
    "'', '40 132', 132",
    "100, 40 132, 100",
    "wide, 40 132, 132",
    "'', '', 80",
    "'', 0 0, 80",
    "'', not a terminal, 80"
  })
  void what_is_typed_comes_before_the_window(String typed, String size, int columns) {
    assertThat(Terminal.columns(typed, () -> size + "\n")).isEqualTo(columns);
  }
}
