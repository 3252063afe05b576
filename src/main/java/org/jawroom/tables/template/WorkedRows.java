package org.jawroom.tables.template;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import org.jawroom.tables.schema.SettingColumns;
import org.jawroom.tables.schema.TableSpec;

/**
 * The initial rows of a template's tables: a worked row in millimetres and one in inches, invented,
 * and the settings at their defaults. Each row is a map from column to text.
 */
final class WorkedRows {
  private static final String MILL = TableSpec.WORKED + "mill in mm";
  private static final String KNEE = TableSpec.WORKED + "knee mill in inch";
  private static final String VISE = TableSpec.WORKED + "vise in mm";
  private static final String INCH_VISE = TableSpec.WORKED + "vise in inch";

  private static final List<Map<String, String>> MACHINES =
      List.of(
          Map.ofEntries(
              entry("machine", MILL),
              entry("unit", "mm"),
              entry("table_moves", "xy"),
              entry("table_length", "1000"),
              entry("table_width", "450"),
              entry("travel_x", "800"),
              entry("travel_y", "450"),
              entry("slot_count", "4"),
              entry("slot_width", "18"),
              entry("slot_pitch", "100"),
              entry("front_gap", "160"),
              entry("rear_gap", "45"),
              entry("left_gap", "120"),
              entry("right_gap", "120"),
              entry("source", "tape"),
              entry("nose_min", "120"),
              entry("nose_max", "680"),
              entry("front_ledge", "20"),
              entry("turns", "front"),
              entry("looked_for", "head; tool changer; nozzle; sill; cover"),
              entry("max_load", "500")),
          Map.ofEntries(
              entry("machine", KNEE),
              entry("unit", "in"),
              entry("table_moves", "xyz"),
              entry("table_length", "42"),
              entry("table_width", "9"),
              entry("travel_x", "26 1/2"),
              entry("travel_y", "12"),
              entry("slot_count", "3"),
              entry("slot_width", "5/8"),
              entry("slot_pitch", "2 1/2"),
              entry("front_gap", "none"),
              entry("rear_gap", "2-3/4"),
              entry("left_gap", "none"),
              entry("right_gap", "none"),
              entry("source", "rule"),
              entry("nose_min", "0"),
              entry("nose_max", "16"),
              entry("max_load", "400 lb")));

  private static final List<Map<String, String>> GUARDS =
      List.of(
          Map.of(
              "machine", MILL, "guard", "sill", "kind", "sill", "side", "front", "gap", "60",
              "z_max", "-40", "unit", "mm"),
          Map.of(
              "machine",
              MILL,
              "guard",
              "head",
              "kind",
              "head",
              "carried_by",
              "head",
              "x_min",
              "-130",
              "x_max",
              "130",
              "y_min",
              "-160",
              "z_min",
              "0",
              "unit",
              "mm"),
          Map.of(
              "machine", KNEE, "guard", "lamp", "kind", "other", "when", "cutting", "side", "left",
              "gap", "6 1/2", "unit", "in"));

  private static final List<Map<String, String>> VISES =
      List.of(
          Map.ofEntries(
              entry("vise", VISE),
              entry("unit", "mm"),
              entry("jaws", "one"),
              entry("jaw_width", "160"),
              entry("jaw_height", "45"),
              entry("bed_height", "75"),
              entry("opening_max", "165"),
              entry("base_width", "210"),
              entry("rear_reach", "70"),
              entry("front_reach", "260"),
              entry("fixed_jaw_thickness", "30"),
              entry("moving_jaw_thickness", "60"),
              entry("rear_projection_closed", "45"),
              entry("rear_projection_open", "none"),
              entry("front_projection_closed", "40"),
              entry("front_projection_open", "40"),
              entry("screw_height", "45"),
              entry("screw_diameter", "28"),
              entry("handle_radius", "133"),
              entry("handle_depth", "40"),
              entry("bolt_spacing", "182"),
              entry("bolt_u", "95"),
              entry("bolt_hole_u", "40"),
              entry("bolt_hole_v", "18"),
              entry("source", "caliper"),
              entry("turns", "front"),
              entry("mass", "38")),
          Map.ofEntries(
              entry("vise", INCH_VISE),
              entry("unit", "in"),
              entry("jaws", "both"),
              entry("jaw_width", "4"),
              entry("jaw_height", "1 1/2"),
              entry("bed_height", "2 1/4"),
              entry("opening_max", "4-3/4"),
              entry("base_width", "5"),
              entry("rear_reach", "4 1/2"),
              entry("front_reach", "4 1/2"),
              entry("moving_jaw_thickness", "1-3/4"),
              entry("rear_projection_closed", "none"),
              entry("rear_projection_open", "none"),
              entry("front_projection_closed", "1/2"),
              entry("front_projection_open", "1/2"),
              entry("screw_height", "1-1/8"),
              entry("screw_diameter", "3/4"),
              entry("handle_radius", "none"),
              entry("bolt_spacing", "none"),
              entry("source", "drawing"),
              entry("turns", "front right"),
              entry("mass", "40 lb")));

  private static final List<Map<String, String>> VISE_PARTS =
      List.of(
          Map.of(
              "vise",
              VISE,
              "part",
              "work stop",
              "u_min_closed",
              "-20",
              "u_max_closed",
              "60",
              "v_min",
              "82",
              "v_max",
              "140",
              "w_min",
              "90",
              "w_max",
              "125",
              "unit",
              "mm"),
          Map.of(
              "vise",
              INCH_VISE,
              "part",
              "hose",
              "when",
              "cutting",
              "u_min_closed",
              "-1 1/2",
              "u_max_closed",
              "1 1/2",
              "v_min",
              "2 1/2",
              "v_max",
              "3 3/4",
              "w_min",
              "1/2",
              "w_max",
              "2",
              "unit",
              "in"));

  private static final List<Map<String, String>> MOUNTS =
      List.of(
          Map.of(
              "vise",
              VISE,
              "mount",
              "rear pair",
              "u",
              "-35",
              "v",
              "-91",
              "hole_u",
              "18",
              "hole_v",
              "18",
              "unit",
              "mm"),
          Map.of(
              "vise",
              VISE,
              "mount",
              "rear pair",
              "u",
              "-35",
              "v",
              "91",
              "hole_u",
              "18",
              "hole_v",
              "18",
              "unit",
              "mm"),
          Map.of(
              "vise",
              INCH_VISE,
              "mount",
              "through bolts",
              "u",
              "-3 7/8",
              "v",
              "0",
              "hole_u",
              "9/16",
              "hole_v",
              "9/16",
              "unit",
              "in"),
          Map.of(
              "vise",
              INCH_VISE,
              "mount",
              "through bolts",
              "u",
              "3 7/8",
              "v",
              "0",
              "hole_u",
              "9/16",
              "hole_v",
              "9/16",
              "unit",
              "in"));

  private static final List<Map<String, String>> JOBS =
      List.of(
          Map.of(
              "job",
              TableSpec.WORKED + "bracket in mm",
              "part_length",
              "120",
              "part_width",
              "60",
              "part_height",
              "40",
              "unit",
              "mm"),
          Map.of(
              "job",
              TableSpec.WORKED + "block in inch",
              "part_length",
              "4 1/2",
              "part_width",
              "2",
              "part_height",
              "1 1/4",
              "unit",
              "in"));

  private static final List<Map<String, String>> CHECKS =
      List.of(
          Map.ofEntries(
              entry("machine", MILL),
              entry("vise", VISE),
              entry("handle_to", "front"),
              entry("from_left", "395"),
              entry("from_front", "260"),
              entry("part", "screw rear"),
              entry("guard", "rear cover"),
              entry("opening", "closed"),
              entry("situation", "cutting"),
              entry("axis", "y"),
              entry("found", "118.5"),
              entry("source", "rule"),
              entry("measured", "K. B., second shift"),
              entry("unit", "mm")));

  private static final List<Map<String, String>> STANDING =
      List.of(
          Map.of(
              "machine", MILL,
              "vise", VISE,
              "handle_to", "front",
              "from_left", "395",
              "from_front", "260",
              "mount", "base bolts",
              "source", "tape",
              "unit", "mm"));

  private static final List<Map<String, String>> SETS =
      List.of(
          Map.of("set", TableSpec.WORKED + "two at once", "vise", VISE, "count", "1"),
          Map.of("set", TableSpec.WORKED + "two at once", "vise", INCH_VISE, "count", "1"));

  private WorkedRows() {}

  static List<Map<String, String>> of(TableSpec table) {
    return switch (table) {
      case MACHINES -> MACHINES;
      case GUARDS -> GUARDS;
      case VISES -> VISES;
      case VISE_PARTS -> VISE_PARTS;
      case MOUNTS -> MOUNTS;
      case JOBS -> JOBS;
      case CHECKS -> CHECKS;
      case STANDING -> STANDING;
      case SETS -> SETS;
      case SETTINGS -> settings();
    };
  }

  /** Every setting, with its default as value if that can be written. */
  private static List<Map<String, String>> settings() {
    return SettingColumns.SETTINGS.stream()
        .map(setting -> Map.of("setting", setting.name(), "value", setting.standard().orElse("")))
        .toList();
  }
}
