package org.jawroom.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.cli.JsonCheck;
import org.jawroom.launch.Main;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.BeforeAll;

/** {@code explain --json} of the first machine and the first vise of any shop. */
class ExplainFuzzTest {
  private static FuzzedFolder folder;

  @BeforeAll
  static void makeFolder() throws IOException {
    folder = FuzzedFolder.make();
  }

  @FuzzTest
  void explain_anyShop_printsJsonOrRefuses(byte[] input) throws IOException {
    Path tables = folder.tables(input);
    List<String> names = names(tables);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] args = {"explain", "--json", "--", tables.toString(), names.get(0), names.get(1)};
    int status = Main.run(args, new PrintWriter(out), new PrintWriter(err));
    String said = status + "\n" + out + err;
    assertTrue(
        List.of(ExitStatus.DONE, ExitStatus.REFUSED, ExitStatus.WRONG_USE, ExitStatus.UNREADABLE)
            .contains(status),
        said);
    assertFalse(said.contains("\tat "), said);
    if (status == ExitStatus.DONE) {
      assertTrue(JsonCheck.isValid(out.toString()), said);
      assertEquals("", err.toString());
    } else {
      assertEquals("", out.toString());
      assertFalse(err.toString().isBlank(), said);
    }
  }

  private static List<String> names(Path tables) {
    Optional<Shop> shop;
    try {
      shop = ShopReader.read(tables, Map.of()).shop();
    } catch (UnreadableInput unreadable) {
      shop = Optional.empty();
    }
    return List.of(
        shop.map(sound -> sound.machines().get(0).name()).orElse("mill"),
        shop.map(sound -> sound.vises().get(0).name()).orElse("vise"));
  }
}
