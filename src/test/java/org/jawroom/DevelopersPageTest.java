package org.jawroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What DEVELOPERS.md says of rooms and classes is there. */
class DevelopersPageTest {
  private static final Path ROOT = Path.of("src/main/java/org/jawroom");
  private static final Path PAGE = Path.of("DEVELOPERS.md");

  /** A class with its room, as {@code `report.csv.PairingsCsv`}. */
  private static final Pattern CLASS = Pattern.compile("`((?:[a-z]+\\.)+[A-Z][A-Za-z0-9]*)");

  /** A class alone, as {@code `FreeSpace`} or {@code `FreeSpace.find`}. */
  private static final Pattern ALONE = Pattern.compile("`([A-Z][a-z0-9]+(?:[A-Z][a-z0-9]*)+)[`.(]");

  @Test
  void classes_namedWithTheirRooms_standThere() throws IOException {
    Set<String> missing = new TreeSet<>();
    List<String> named = found(CLASS);
    for (String name : named) {
      if (!Files.exists(ROOT.resolve(name.replace('.', '/') + ".java"))) {
        missing.add(name);
      }
    }
    assertTrue(named.size() > 50, "only " + named.size());
    assertEquals(Set.of(), missing);
  }

  @Test
  void classes_namedAlone_existSomewhere() throws IOException {
    Set<String> there = new TreeSet<>(Set.of("BigInteger", "Graphics2D"));
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".java"))
          .forEach(file -> there.add(file.substring(0, file.length() - ".java".length())));
    }
    List<String> named = found(ALONE);
    assertTrue(named.size() > 50, "only " + named.size());
    assertEquals(
        Set.of(), named.stream().filter(name -> !there.contains(name)).collect(Collectors.toSet()));
  }

  @Test
  void rooms_eachOfTheFirstLevel_areInTheTable() throws IOException {
    String page = Files.readString(PAGE);
    try (Stream<Path> rooms = Files.list(ROOT)) {
      List<String> unnamed =
          rooms
              .map(room -> room.getFileName().toString())
              .filter(room -> !page.contains("`" + room + "`"))
              .toList();
      assertEquals(List.of(), unnamed);
    }
  }

  private static List<String> found(Pattern pattern) throws IOException {
    Matcher matcher = pattern.matcher(Files.readString(PAGE));
    return matcher.results().map((MatchResult match) -> match.group(1)).distinct().toList();
  }
}
