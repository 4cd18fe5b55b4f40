package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WordingTest {
  @ParameterizedTest
  @CsvSource({"0.4, 0 g", "12, 12 g", "149, 149 g", "160, 0.2 kg", "1025, 1 kg", "3100, 3.1 kg"})
  void lightThingsAreToldInGrams(double grams, String said) {
    assertThat(Wording.mass(grams).replace(Wording.NO_BREAK, ' ')).isEqualTo(said);
  }
}
