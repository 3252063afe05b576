package org.jawroom.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** The settings as options; an option overrides the table. */
final class SettingOptions {
  private final Map<String, String> given = new LinkedHashMap<>();

  /** The settings given, name to text. */
  Map<String, String> given() {
    return given;
  }

  @Option(
      names = "--show",
      order = 11,
      paramLabel = "mm|in",
      description = "unit that people read (the machine's; of a whole shop that of most machines)")
  void show(String text) {
    given.put("show", text);
  }

  @Option(
      names = "--decimal",
      order = 12,
      paramLabel = "point|comma",
      description = "whether 1,250 is one and a quarter (point: it is refused)")
  void decimal(String text) {
    given.put("decimal", text);
  }

  @Option(
      names = "--clearance",
      order = 13,
      paramLabel = "LENGTH",
      description = "clearance asked for where a guard has none of its own (6 mm)")
  void clearance(String text) {
    given.put("clearance", text);
  }

  @Option(
      names = "--hand-room",
      order = 14,
      paramLabel = "LENGTH",
      description = "least clearance of a handle while loading (25 mm)")
  void handRoom(String text) {
    given.put("hand_room", text);
  }

  @Option(
      names = "--shortest-tool",
      order = 15,
      paramLabel = "LENGTH",
      description = "nose to tip; heads then count in the verdict while cutting")
  void shortestTool(String text) {
    given.put("shortest_tool", text);
  }

  @Option(
      names = "--least-opening",
      order = 16,
      paramLabel = "LENGTH",
      description = "least part of the opening that is of use (25 mm)")
  void leastOpening(String text) {
    given.put("least_opening", text);
  }

  @Option(
      names = "--max-overhang",
      order = 17,
      paramLabel = "LENGTH",
      description = "how far a base may hang over a table edge (no limit)")
  void maxOverhang(String text) {
    given.put("max_overhang", text);
  }

  @Option(
      names = "--spacing",
      order = 18,
      paramLabel = "LENGTH",
      description = "least between two vises on one table (as clearance)")
  void spacing(String text) {
    given.put("spacing", text);
  }

  @Option(
      names = "--clamp-room",
      order = 19,
      paramLabel = "LENGTH",
      description = "what a strap clamp takes beside a base (60 mm)")
  void clampRoom(String text) {
    given.put("clamp_room", text);
  }

  @Option(
      names = "--jaw-play",
      order = 20,
      paramLabel = "LENGTH",
      description = "how much further the jaws open to let a part in (10 mm)")
  void jawPlay(String text) {
    given.put("jaw_play", text);
  }
}
