package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.program.Glop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bags of mice are not cut here. */
class UncutBagTest {
  @TempDir Path folder;

  @BeforeEach
  void group() throws IOException {
    new InvoiceSamples(new GroupSamples(folder)).group("\"way\": \"equal\"");
    Path group = folder.resolve("group.json");
    String text = Files.readString(group);
    Files.writeString(group, text.replaceAll("\"cutting\": \\[[^\\]]*]", "\"cutting\": []"));
  }

  private SettleBox.Outcome bosShare(int pieces) throws IOException {
    Path invoice =
        new InvoiceSamples(new GroupSamples(folder)).invoice(InvoiceSamples.taken("bo", pieces));
    return new SettleBox(new Glop())
        .settle(folder, invoice, List.of(folder.resolve("supplier-profiles")));
  }

  @Test
  void a_part_of_it_cannot_be_taken_over() throws IOException {
    assertThat(bosShare(5)).isInstanceOf(SettleBox.Refused.class);
    assertThat(((SettleBox.Refused) bosShare(5)).problems().toString())
        .contains("found 5, expected all 10: a bag of Mouse x10 may not be cut")
        .contains("cutting in group.json");
  }

  @Test
  void all_of_it_can() throws IOException {
    assertThat(bosShare(10)).isInstanceOf(SettleBox.Done.class);
  }
}
