package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.GroupSamples;
import io.frostlot.program.Engine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the letter says of one joint order. */
class ShareOrderTest {
  @TempDir Path folder;

  /** Two bags at list price 10.00, from two on at 7.50, and a box at 20.00: 35.00. */
  @Test
  void the_amounts_of_an_order_add_up_to_what_is_paid() throws IOException {
    GroupSamples samples = new GroupSamples(folder);
    samples.suppliers();
    samples.group("", "ann", "bo");
    samples.member("ann", "mouse,20,30,10,2031-01-10");
    samples.member("bo", "mouse,20,30,10,2031-01-10");
    Path profile = folder.resolve("supplier-profiles/north/profile.json");
    String breaks =
        """
        {"breaks": [{"item": "Mouse", "packCount": 10,
                     "steps": [{"fromPacks": 2, "price": "7.50"}]}],
        """;
    Files.writeString(profile, Files.readString(profile).replaceFirst("\\{", breaks));

    CommandRun run =
        CommandRun.of(
            Engine::solve,
            false,
            "share",
            folder.toString(),
            "--effort=20",
            "--seconds=100",
            "--profiles=" + folder.resolve("supplier-profiles"));

    assertThat(run.out())
        .as(run.err())
        .containsPattern("2 x Mouse, 10 a bag +list 10.00")
        .containsPattern("charges and tax, less discounts and price breaks \\.+ 15.00\n")
        .containsPattern("to pay \\.+ 35.00\n");
  }
}
