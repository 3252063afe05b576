package org.jawroom.reference.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A shop printed after a disagreement must read back as the same shop. */
class ShopCsvTest {
  private static final String IMPOSSIBLE =
      ".*(mm\\)? is no (machine|guard|vise|shop|job)'s| off the table: | into each other: ).*";

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Profile.class)
  void files_readAgain_areTheSameShop(Profile profile) throws Exception {
    int read = 0;
    for (long seed = 0; seed < 20; seed++) {
      Shop shop = RandomJobs.shop(profile, seed);
      Path input = Files.createDirectory(folder.resolve("" + seed));
      for (Map.Entry<String, String> file : ShopCsv.files(shop).entrySet()) {
        write(input.resolve(file.getKey()), file.getValue());
      }

      Reading reading = ShopReader.read(input, Map.of());

      String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
      if (!reading.faults().isEmpty()) {
        // The solvers accept sizes and slots that no machine has; the reader refuses them.
        assertEquals(
            List.of(),
            reading.faults().stream()
                .map(Object::toString)
                .filter(fault -> !fault.matches(IMPOSSIBLE))
                .toList(),
            () -> text);
        continue;
      }
      read++;
      assertEquals(shop.machines(), reading.shop().get().machines(), () -> text);
      assertEquals(shop.vises(), reading.shop().get().vises(), () -> text);
      assertEquals(shop.jobs(), reading.shop().get().jobs(), () -> text);
      assertEquals(shop.settings(), reading.shop().get().settings(), () -> text);
    }
    assertTrue(read > 0 || profile.isOfImpossibleSize(), "only " + read);
  }

  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      names = {"PLAIN", "INCH", "STRAPPED", "EXTRA_MOUNTS", "SLOTS_ALONG_Y"})
  void files_ofSets_areTheSameSets(Profile profile) throws Exception {
    int read = 0;
    for (long seed = 0; seed < 20; seed++) {
      Shop shop = RandomSets.shop(profile, seed);
      Path input = Files.createDirectory(folder.resolve("" + seed));
      for (Map.Entry<String, String> file : ShopCsv.files(shop).entrySet()) {
        write(input.resolve(file.getKey()), file.getValue());
      }
      Reading reading = ShopReader.read(input, Map.of());
      if (reading.shop().isPresent()) {
        read++;
        String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
        assertEquals(names(shop), names(reading.shop().get()), () -> text);
      }
    }
    assertTrue(read > 5, "only " + read);
  }

  private static List<String> names(Shop shop) {
    return shop.sets().stream()
        .flatMap(set -> set.members().stream())
        .map(member -> member.count() + " " + member.vise().name())
        .toList();
  }

  private static void write(Path file, String text) throws IOException {
    Files.writeString(file, text);
  }
}
