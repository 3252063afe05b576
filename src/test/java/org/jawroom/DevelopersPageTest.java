package org.jawroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What DEVELOPERS.md says of rooms and classes agrees with the code. */
class DevelopersPageTest {
  private static final Path ROOT = Path.of("src/main/java/org/jawroom");
  private static final Path PAGE = Path.of("DEVELOPERS.md");

  /** A class with its room, as {@code `report.csv.PairingsCsv`}. */
  private static final Pattern CLASS = Pattern.compile("`((?:[a-z]+\\.)+[A-Z][A-Za-z0-9]*)");

  /** A class alone, as {@code `FreeSpace`} or {@code `FreeSpace.find`}. */
  private static final Pattern ALONE = Pattern.compile("`([A-Z][a-z0-9]+(?:[A-Z][a-z0-9]*)+)[`.(]");

  private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

  /**
   * Room, class and member of it, as {@code report.Reports.DETAILED}; the class alone may stand.
   */
  private static final Pattern MEMBER =
      Pattern.compile("((?:[a-z]+\\.)*)([A-Z]\\w*)(?:\\.(\\w+))?");

  private static final Pattern IMPORT =
      Pattern.compile("(?m)^import (?:static )?org\\.jawroom\\.(\\w+)\\.");

  private static final Pattern ARROW = Pattern.compile("(\\w+) ─+► (?=(\\w+))");

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

  /**
   * A row of the table names classes with their room, or alone if the room is that of the class
   * before; and members that the class has.
   */
  @Test
  void classes_ofTheTableOfChanges_standInTheRoomNamed() throws IOException {
    String page = Files.readString(PAGE);
    String table =
        page.substring(page.indexOf("\n## Where to change what"), page.indexOf("\n## Tests"));
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (String row : table.lines().filter(line -> line.startsWith("| ")).toList()) {
      Path room = ROOT;
      for (MatchResult name : QUOTED.matcher(row).results().toList()) {
        Matcher matcher = MEMBER.matcher(name.group(1));
        if (isRoom(name.group(1))) {
          room = room(name.group(1));
        } else if (matcher.matches() && !matcher.group(2).endsWith("Test")) {
          room = matcher.group(1).isEmpty() ? room : room(matcher.group(1));
          Path file = room.resolve(matcher.group(2) + ".java");
          if (!Files.exists(file)
              || matcher.group(3) != null
                  && !Files.readString(file).matches("(?s).*\\b" + matcher.group(3) + "\\b.*")) {
            wrong.add(name.group(1));
          }
          compared++;
        }
      }
    }
    assertTrue(compared > 100, "only " + compared);
    assertEquals(List.of(), wrong);
  }

  /** Every arrow is a dependency of the code, and every dependency lies along arrows. */
  @Test
  void picture_ofTheRooms_isThatOfTheCode() throws IOException {
    String page = Files.readString(PAGE);
    String picture = page.split("```", 3)[1];
    Map<String, Set<String>> drawn = new TreeMap<>();
    ARROW.matcher(picture).results().forEach(arrow -> add(drawn, arrow.group(1), arrow.group(2)));
    Map<String, Set<String>> real = new TreeMap<>();
    try (Stream<Path> files = Files.walk(ROOT)) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        String from = ROOT.relativize(file).getName(0).toString();
        IMPORT
            .matcher(Files.readString(file))
            .results()
            .map(imported -> imported.group(1))
            .filter(to -> !to.equals(from))
            .forEach(to -> add(real, from, to));
      }
    }
    List<String> wrong = new ArrayList<>();
    drawn.forEach(
        (from, all) ->
            all.stream()
                .filter(to -> !real.getOrDefault(from, Set.of()).contains(to))
                .forEach(to -> wrong.add("drawn, but not imported: " + from + " to " + to)));
    real.forEach(
        (from, all) ->
            all.stream()
                .filter(to -> !reached(drawn, from).contains(to))
                .forEach(to -> wrong.add("not drawn: " + from + " to " + to)));
    assertEquals(List.of(), wrong);
  }

  private static void add(Map<String, Set<String>> arrows, String from, String to) {
    arrows.computeIfAbsent(from, key -> new TreeSet<>()).add(to);
  }

  private static Set<String> reached(Map<String, Set<String>> arrows, String from) {
    Set<String> reached = new TreeSet<>();
    Deque<String> ahead = new ArrayDeque<>(List.of(from));
    while (!ahead.isEmpty()) {
      for (String next : arrows.getOrDefault(ahead.pop(), Set.of())) {
        if (reached.add(next)) {
          ahead.push(next);
        }
      }
    }
    return reached;
  }

  private static boolean isRoom(String name) {
    return name.matches("[a-z.]+") && Files.isDirectory(room(name));
  }

  private static Path room(String name) {
    return ROOT.resolve(name.replace('.', '/'));
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
