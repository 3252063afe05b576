package org.jawroom.golden;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A cell laid out from its tables alone, as a planner would with paper and pencil: boxes in whole
 * nanometres. It shares nothing with the solver, and knows only what such a cell needs: bolts, no
 * straps; guards without a height from the nose; a handle taken off while cutting and worked over
 * the top.
 */
final class PaperCell {
  static final CSVFormat TABLE =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private static final long FAR = 1_000_000_000_000L;

  /** Slot width and the bolt that goes with it, in mm. */
  private static final TreeMap<Integer, Integer> BOLTS =
      new TreeMap<>(Map.of(10, 8, 12, 10, 14, 12, 18, 16, 22, 20));

  /** {@code lo} and {@code hi} along x, y, z. */
  record Box(String name, String when, long[] lo, long[] hi, long tolerance, long clearance) {}

  /** A vise in a place; {@code turn} is where its handle points. */
  record Spot(String machine, String vise, String turn, String mount, long x, long y) {}

  private final Map<String, List<CSVRecord>> tables = new HashMap<>();

  PaperCell(Path folder) throws IOException {
    for (String name :
        List.of("machines", "guards", "vises", "mounts", "jobs", "settings", "standing")) {
      tables.put(
          name, TABLE.parse(Files.newBufferedReader(folder.resolve(name + ".csv"))).getRecords());
    }
  }

  List<CSVRecord> rows(String table) {
    return tables.get(table);
  }

  CSVRecord row(String table, String name) {
    return rows(table).stream().filter(row -> row.get(0).equals(name)).findFirst().orElseThrow();
  }

  long setting(String name) {
    return nm(row("settings", name).get("value"));
  }

  /** 0 for {@code none}. */
  static long nm(String mm) {
    return mm.equals("none")
        ? 0
        : new BigDecimal(mm).movePointRight(6).toBigIntegerExact().longValueExact();
  }

  private static long or(String mm, long blank) {
    return mm.isEmpty() ? blank : nm(mm);
  }

  // The vise.

  /** Its parts in the table frame, swept over these openings. */
  List<Box> parts(Spot spot, long from, long to) {
    CSVRecord vise = row("vises", spot.vise());
    boolean both = vise.get("jaws").equals("both");
    long jaw = nm(vise.get("jaw_width")) / 2;
    long bed = nm(vise.get("bed_height"));
    long top = bed + nm(vise.get("jaw_height"));
    long base = nm(vise.get("base_width")) / 2;
    long rear = nm(vise.get("rear_reach"));
    long front = nm(vise.get("front_reach"));
    long moving = nm(vise.get("moving_jaw_thickness"));
    List<Box> parts = new ArrayList<>();
    parts.add(part(spot, "base", "always", -rear, front, base, 0, bed));
    if (both) {
      parts.add(part(spot, "rear jaw", "always", -to / 2 - moving, -from / 2, jaw, bed, top));
      parts.add(part(spot, "front jaw", "always", from / 2, to / 2 + moving, jaw, bed, top));
    } else {
      long fixed = nm(vise.get("fixed_jaw_thickness"));
      parts.add(part(spot, "fixed jaw", "always", -fixed, 0, jaw, bed, top));
      parts.add(part(spot, "moving jaw", "always", from, to + moving, jaw, bed, top));
    }
    boolean screw = !vise.get("screw_height").isEmpty();
    long height = screw ? nm(vise.get("screw_height")) : 0;
    long half = screw ? nm(vise.get("screw_diameter")) / 2 : 0;
    if (!none(vise, "rear")) {
      long out = Math.max(projection(vise, "rear", from), projection(vise, "rear", to));
      parts.add(
          part(
              spot,
              "screw rear",
              "always",
              -rear - out,
              -rear,
              half,
              height - half,
              height + half));
    }
    long near = Math.min(projection(vise, "front", from), projection(vise, "front", to));
    long out = Math.max(projection(vise, "front", from), projection(vise, "front", to));
    if (!none(vise, "front")) {
      parts.add(
          part(
              spot,
              "screw front",
              "always",
              front,
              front + out,
              half,
              height - half,
              height + half));
    }
    if (!vise.get("handle_radius").equals("none")) {
      long radius = nm(vise.get("handle_radius"));
      long depth = nm(vise.get("handle_depth"));
      parts.add(
          part(
              spot,
              "handle",
              "loading",
              front + near,
              front + out + depth,
              radius,
              height - half,
              height + radius));
    }
    long bolt = bolt(spot);
    long stands = or(vise.get("bolt_grip"), bed) + 2 * bolt;
    for (long[] hole : holes(spot)) {
      long alongU = (hole[2] + bolt) / 2;
      long alongV = (hole[3] + bolt) / 2;
      parts.add(
          turned(
              spot,
              "bolts",
              "always",
              new long[] {hole[0] - alongU, hole[1] - alongV, 0},
              new long[] {hole[0] + alongU, hole[1] + alongV, stands}));
    }
    return parts;
  }

  private static boolean none(CSVRecord vise, String end) {
    return vise.get(end + "_projection_closed").equals("none")
        && vise.get(end + "_projection_open").equals("none");
  }

  /** Halfway open, halfway between its ends; a part of a nanometre counts as a whole one. */
  private static long projection(CSVRecord vise, String end, long opening) {
    long closed = nm(vise.get(end + "_projection_closed"));
    long open = nm(vise.get(end + "_projection_open"));
    long least = nm(vise.get("opening_min"));
    long range = nm(vise.get("opening_max")) - least;
    return closed + -Math.floorDiv(-Math.multiplyExact(open - closed, opening - least), range);
  }

  private Box part(
      Spot spot, String name, String when, long u0, long u1, long v, long w0, long w1) {
    return turned(spot, name, when, new long[] {u0, -v, w0}, new long[] {u1, v, w1});
  }

  private Box turned(Spot spot, String name, String when, long[] lo, long[] hi) {
    long[] one = at(spot, lo[0], lo[1]);
    long[] other = at(spot, hi[0], hi[1]);
    return new Box(
        name,
        when,
        new long[] {Math.min(one[0], other[0]), Math.min(one[1], other[1]), lo[2]},
        new long[] {Math.max(one[0], other[0]), Math.max(one[1], other[1]), hi[2]},
        nm(row("vises", spot.vise()).get("tolerance")),
        0);
  }

  /** A point (u, v) of the vise on the table. */
  private static long[] at(Spot spot, long u, long v) {
    return switch (spot.turn()) {
      case "front" -> new long[] {spot.x() + v, spot.y() - u};
      case "right" -> new long[] {spot.x() + u, spot.y() + v};
      case "rear" -> new long[] {spot.x() - v, spot.y() + u};
      case "left" -> new long[] {spot.x() - u, spot.y() - v};
      default -> throw new IllegalArgumentException(spot.turn());
    };
  }

  // The bolts.

  /** u, v, hole along u, hole along v. */
  private List<long[]> holes(Spot spot) {
    if (spot.mount().equals("base bolts")) {
      CSVRecord vise = row("vises", spot.vise());
      long half = nm(vise.get("bolt_spacing")) / 2;
      long u = nm(vise.get("bolt_u"));
      long holeU = nm(vise.get("bolt_hole_u"));
      long holeV = nm(vise.get("bolt_hole_v"));
      return List.of(new long[] {u, -half, holeU, holeV}, new long[] {u, half, holeU, holeV});
    }
    return rows("mounts").stream()
        .filter(row -> row.get("vise").equals(spot.vise()))
        .filter(row -> row.get("mount").equals(spot.mount()))
        .map(
            row ->
                new long[] {
                  nm(row.get("u")), nm(row.get("v")), nm(row.get("hole_u")), nm(row.get("hole_v"))
                })
        .toList();
  }

  List<String> mounts(String vise) {
    List<String> mounts = new ArrayList<>();
    CSVRecord row = row("vises", vise);
    if (!row.get("bolt_spacing").isEmpty() && !row.get("bolt_spacing").equals("none")) {
      mounts.add("base bolts");
    }
    rows("mounts").stream()
        .filter(mount -> mount.get("vise").equals(vise))
        .map(mount -> mount.get("mount"))
        .distinct()
        .forEach(mounts::add);
    return mounts;
  }

  /** The thickness of its bolts; 0 if none that goes with the slot, nor the next two, passes. */
  private long bolt(Spot spot) {
    int slot = Integer.parseInt(row("machines", spot.machine()).get("slot_width"));
    Integer key = BOLTS.floorKey(slot);
    for (int steps = 0; key != null && steps < 3; steps++, key = BOLTS.lowerKey(key)) {
      long bolt = BOLTS.get(key) * 1_000_000L;
      if (holes(spot).stream().allMatch(hole -> hole[2] >= bolt && hole[3] >= bolt)) {
        return bolt;
      }
    }
    return 0;
  }

  /** The centre lines of the slots, across them, in the table frame. */
  List<Long> slots(String machine) {
    CSVRecord row = row("machines", machine);
    long edge = -nm(row.get(slotsAlong(machine) == 0 ? "table_width" : "table_length")) / 2;
    if (!row.get("slot_positions").isEmpty()) {
      return Arrays.stream(row.get("slot_positions").split(";"))
          .map(at -> edge + nm(at.strip()))
          .toList();
    }
    int count = Integer.parseInt(row.get("slot_count"));
    long pitch = or(row.get("slot_pitch"), 0);
    long first = -(count - 1) * pitch / 2;
    if (!row.get("slot_first").isEmpty()) {
      first = edge + nm(row.get("slot_first"));
    }
    List<Long> slots = new ArrayList<>();
    for (int j = 0; j < count; j++) {
      slots.add(first + j * pitch);
    }
    return slots;
  }

  /** The number of the slot nearest to each bolt, 1 at the front or the left. */
  List<Integer> slotsOf(Spot spot) {
    List<Long> slots = slots(spot.machine());
    int across = 1 - slotsAlong(spot.machine());
    List<Integer> numbers = new ArrayList<>();
    for (long[] hole : holes(spot)) {
      long bolt = at(spot, hole[0], hole[1])[across];
      int nearest = 0;
      for (int j = 1; j < slots.size(); j++) {
        if (Math.abs(slots.get(j) - bolt) < Math.abs(slots.get(nearest) - bolt)) {
          nearest = j;
        }
      }
      numbers.add(nearest + 1);
    }
    return numbers;
  }

  /** 0: the slots run along x, 1: along y. */
  int slotsAlong(String machine) {
    return row("machines", machine).get("slot_direction").equals("y") ? 1 : 0;
  }

  /** Whether every bolt of it stands in a slot and the base hangs over no edge by too much. */
  boolean isBolted(Spot spot) {
    CSVRecord machine = row("machines", spot.machine());
    long bolt = bolt(spot);
    int along = slotsAlong(spot.machine());
    long[] half = half(machine);
    boolean swap = spot.turn().equals("front") || spot.turn().equals("rear");
    for (long[] hole : holes(spot)) {
      long[] centre = at(spot, hole[0], hole[1]);
      long offX = ((swap ? hole[3] : hole[2]) - bolt) / 2;
      long offY = ((swap ? hole[2] : hole[3]) - bolt) / 2;
      long across = along == 0 ? offY : offX;
      long lengthwise = along == 0 ? offX : offY;
      if (slots(spot.machine()).stream()
              .noneMatch(slot -> Math.abs(centre[1 - along] - slot) <= across)
          || Math.abs(centre[along]) > half[along] - bolt + lengthwise) {
        return false;
      }
    }
    Box base = parts(spot, 0, 0).get(0);
    long most = setting("max_overhang");
    String turns = machine.get("turns");
    return bolt > 0
        && (turns.isEmpty() || List.of(turns.split(" ")).contains(spot.turn()))
        && base.hi()[0] - half[0] <= most
        && base.hi()[1] - half[1] <= most
        && -half[0] - base.lo()[0] <= most
        && -half[1] - base.lo()[1] <= most;
  }

  private static long[] half(CSVRecord machine) {
    return new long[] {nm(machine.get("table_length")) / 2, nm(machine.get("table_width")) / 2};
  }

  // The guards.

  /** What a machine's guards fill in a situation, seen from the table. */
  List<Box> guards(String name, boolean loading) {
    CSVRecord machine = row("machines", name);
    long[] half = half(machine);
    long tolerance = nm(machine.get("tolerance"));
    List<Box> guards = new ArrayList<>();
    for (String side : List.of("front", "rear", "left", "right")) {
      String gap = machine.get(side + "_gap");
      if (!gap.equals("none")) {
        String called =
            switch (side) {
              case "front" -> "door";
              case "rear" -> "rear cover";
              default -> side + " guard";
            };
        if (!loading || !called.equals("door")) {
          guards.add(wall(machine, called, side, nm(gap), "frame", loading, FAR, tolerance, -1));
        }
      }
    }
    for (CSVRecord row : rows("guards")) {
      if (!row.get("machine").equals(name)) {
        continue;
      }
      long own = or(row.get("tolerance"), tolerance);
      long clearance = or(row.get("clearance"), -1);
      long top = or(row.get("z_max"), FAR);
      if (!row.get("side").isEmpty()) {
        guards.add(
            wall(
                machine,
                row.get("guard"),
                row.get("side"),
                nm(row.get("gap")),
                row.get("carried_by"),
                loading,
                top,
                own,
                clearance));
      } else {
        long[] lo = new long[3];
        long[] hi = new long[3];
        for (int axis = 0; axis < 2; axis++) {
          String letter = axis == 0 ? "x" : "y";
          long[] shift = shift(machine, row.get("carried_by"), axis, loading);
          lo[axis] = or(row.get(letter + "_min"), -FAR) + shift[0];
          hi[axis] = or(row.get(letter + "_max"), FAR) + shift[1];
        }
        lo[2] = or(row.get("z_min"), -FAR);
        hi[2] = top;
        guards.add(new Box(row.get("guard"), "always", lo, hi, own, clearance));
      }
    }
    guards.add(
        new Box(
            "table",
            "loading",
            new long[] {-half[0], -half[1] - or(machine.get("front_ledge"), 0), -FAR},
            new long[] {half[0], half[1], 0},
            tolerance,
            -1));
    return guards;
  }

  /** How far a guard goes to and fro along an axis, seen from the table. */
  private static long[] shift(CSVRecord machine, String carrier, int axis, boolean loading) {
    String letter = axis == 0 ? "x" : "y";
    boolean moves = carrier.equals("frame") && machine.get("table_moves").contains(letter);
    long half = nm(machine.get("travel_" + letter)) / 2;
    if (!moves) {
      return new long[] {0, 0};
    }
    if (!loading) {
      return new long[] {-half, half};
    }
    String stated = axis == 0 ? "" : machine.get("load_y");
    long at = axis == 0 ? 0 : stated.isEmpty() ? half : nm(stated) - nm(machine.get("spindle_y"));
    return new long[] {at, at};
  }

  /** All beyond a face taped from the table's edge, the table all the way there. */
  private static Box wall(
      CSVRecord machine,
      String name,
      String side,
      long gap,
      String carrier,
      boolean loading,
      long top,
      long tolerance,
      long clearance) {
    int axis = side.equals("front") || side.equals("rear") ? 1 : 0;
    boolean above = side.equals("rear") || side.equals("right");
    long nearest = half(machine)[axis] + gap;
    long[] sweep = shift(machine, carrier, axis, false);
    long[] shift = shift(machine, carrier, axis, loading);
    long[] lo = {-FAR, -FAR, -FAR};
    long[] hi = {FAR, FAR, top};
    if (above) {
      lo[axis] = nearest - sweep[0] + shift[0];
    } else {
      hi[axis] = -nearest - sweep[1] + shift[1];
    }
    return new Box(name, "always", lo, hi, tolerance, clearance);
  }

  // What is between them.

  /** The least margin of these parts on a machine. */
  long margin(String machine, List<Box> parts, boolean handRoom) {
    long least = FAR;
    for (boolean loading : new boolean[] {false, true}) {
      for (Box guard : guards(machine, loading)) {
        for (Box part : parts) {
          boolean handle = part.name().equals("handle");
          if (handle && !loading || guard.name().equals("table") && (!handle || !loading)) {
            continue;
          }
          long asked = guard.clearance() < 0 ? setting("clearance") : guard.clearance();
          if (handRoom && handle) {
            asked = Math.max(asked, setting("hand_room"));
          }
          least = Math.min(least, gap(part, guard) - asked - part.tolerance() - guard.tolerance());
        }
      }
    }
    return least;
  }

  private static long gap(Box part, Box guard) {
    long gap = Long.MIN_VALUE;
    for (int axis = 0; axis < 3; axis++) {
      gap =
          Math.max(
              gap,
              Math.max(guard.lo()[axis] - part.hi()[axis], part.lo()[axis] - guard.hi()[axis]));
    }
    return gap;
  }

  /** The gap between two vises along the slots, the second one's after the first's. */
  static long between(List<Box> first, List<Box> second, int along) {
    long gap = FAR;
    for (Box one : first) {
      for (Box other : second) {
        if (!one.name().equals("handle") || !other.name().equals("handle")) {
          gap = Math.min(gap, other.lo()[along] - one.hi()[along]);
        }
      }
    }
    return gap;
  }

  /** The full opening. */
  long[] opening(String vise) {
    CSVRecord row = row("vises", vise);
    return new long[] {nm(row.get("opening_min")), nm(row.get("opening_max"))};
  }

  // The work.

  /** Whether a vise can hold a job wherever it stands: size, weight, tool. */
  boolean isOpenTo(CSVRecord job, String machineName, List<String> vises, String viseName) {
    CSVRecord machine = row("machines", machineName);
    CSVRecord vise = row("vises", viseName);
    long width = nm(job.get("part_width"));
    long[] opening = opening(viseName);
    double load =
        Double.parseDouble(job.get("mass"))
            + vises.stream()
                .mapToDouble(it -> Double.parseDouble(row("vises", it).get("mass")))
                .sum();
    long room = nm(machine.get("nose_max")) - nm(job.get("tool_length")) - setting("clearance");
    List<String> allowed = List.of(job.get("machines").split(";"));
    return (job.get("machines").isEmpty() || allowed.contains(machineName))
        && width >= opening[0]
        && width + 2_000_000 <= opening[1]
        && or(job.get("grip"), 0) <= nm(vise.get("jaw_height"))
        && load <= Double.parseDouble(machine.get("max_load"))
        && under(job, vise) + nm(job.get("part_height")) <= room;
  }

  private static long under(CSVRecord job, CSVRecord vise) {
    long bed = nm(vise.get("bed_height"));
    return job.get("grip").isEmpty() ? bed : bed + nm(vise.get("jaw_height")) - nm(job.get("grip"));
  }

  private Box work(CSVRecord job, Spot spot) {
    CSVRecord vise = row("vises", spot.vise());
    long width = nm(job.get("part_width"));
    long back = vise.get("jaws").equals("both") ? -width / 2 : 0;
    long under = under(job, vise);
    long top = under + nm(job.get("part_height"));
    return part(
        spot, "work", "always", back, back + width, nm(job.get("part_length")) / 2, under, top);
  }

  /** Whether it is held in this place, beside what else stands on the table. */
  boolean holds(CSVRecord job, Spot spot, List<List<Box>> before, List<List<Box>> after) {
    boolean alongX = spot.turn().equals("front") || spot.turn().equals("rear");
    String asked = job.get("jaws_along");
    if (!asked.equals("any") && asked.equals("x") != alongX) {
      return false;
    }
    long width = nm(job.get("part_width"));
    List<Box> parts =
        new ArrayList<>(parts(spot, width, Math.min(width + 10_000_000, opening(spot.vise())[1])));
    Box work = work(job, spot);
    parts.add(work);
    int along = slotsAlong(spot.machine());
    long spacing = setting("spacing");
    CSVRecord machine = row("machines", spot.machine());
    long reachX = nm(machine.get("travel_x")) / 2;
    long reachY = nm(machine.get("travel_y")) / 2;
    long y = nm(machine.get("spindle_y"));
    return work.lo()[0] >= -reachX
        && work.hi()[0] <= reachX
        && work.lo()[1] >= y - reachY
        && work.hi()[1] <= y + reachY
        && before.stream().allMatch(it -> between(it, List.of(work), along) >= spacing)
        && after.stream().allMatch(it -> between(List.of(work), it, along) >= spacing)
        && margin(spot.machine(), parts, false) >= 0;
  }
}
