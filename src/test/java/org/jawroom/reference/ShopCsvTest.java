package org.jawroom.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is printed when the solvers disagree must read back as the very shop they disagree on. */
class ShopCsvTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Profile.class)
  void files_readAgain_areTheSameShop(Profile profile) throws Exception {
    for (long seed = 0; seed < 20; seed++) {
      Shop shop = RandomJobs.shop(profile, seed);
      Path input = Files.createDirectory(folder.resolve("" + seed));
      for (Map.Entry<String, String> file : ShopCsv.files(shop).entrySet()) {
        write(input.resolve(file.getKey()), file.getValue());
      }

      Reading reading = ShopReader.read(input, Map.of());

      String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
      assertEquals("[]", reading.faults().toString(), () -> text);
      assertEquals(shop.machines(), reading.shop().get().machines(), () -> text);
      assertEquals(shop.vises(), reading.shop().get().vises(), () -> text);
      assertEquals(shop.jobs(), reading.shop().get().jobs(), () -> text);
      assertEquals(
          shop.settings().jawPlay(), reading.shop().get().settings().jawPlay(), () -> text);
    }
  }

  private static void write(Path file, String text) throws IOException {
    Files.writeString(file, text);
  }
}
