package org.jawroom.reference.random;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** Writes a shop as the tables it would be read from, with all lengths exact in mm. */
public final class ShopCsv {

  /** One table with named cells, so that header and rows stay consistent. */
  private static final class Table {
    private final List<Map<String, String>> rows = new ArrayList<>();

    void row() {
      rows.add(new LinkedHashMap<>());
    }

    void put(String column, String cell) {
      rows.get(rows.size() - 1).put(column, cell);
    }

    String text() {
      StringBuilder text = new StringBuilder(String.join(",", rows.get(0).keySet())).append('\n');
      for (Map<String, String> row : rows) {
        text.append(String.join(",", row.values())).append('\n');
      }
      return text.toString();
    }
  }

  private ShopCsv() {}

  /** File name to text; tables without rows are omitted. */
  public static Map<String, String> files(Shop shop) {
    Map<String, Table> tables = new LinkedHashMap<>();
    for (String name :
        List.of(
            "settings",
            "machines",
            "guards",
            "vises",
            "vise_parts",
            "mounts",
            "jobs",
            "standing",
            "sets")) {
      tables.put(name, new Table());
    }
    settings(shop.settings(), tables.get("settings"));
    for (Machine machine : shop.machines()) {
      machine(machine, tables.get("machines"));
      machine.guardRows().forEach(guard -> guard(machine, guard, tables.get("guards")));
    }
    for (Vise vise : shop.vises()) {
      vise(vise, tables.get("vises"));
      vise.parts().forEach(part -> part(vise, part, tables.get("vise_parts")));
      vise.mounts().stream()
          .filter(mount -> !mount.own())
          .forEach(mount -> mount(vise, mount, tables.get("mounts")));
    }
    shop.jobs().forEach(job -> job(job, tables.get("jobs")));
    shop.standing().forEach(one -> standing(one, tables.get("standing")));
    shop.sets().forEach(set -> set(set, tables.get("sets")));
    Map<String, String> files = new LinkedHashMap<>();
    tables.forEach(
        (name, table) -> {
          if (!table.rows.isEmpty()) {
            files.put(name + ".csv", table.text());
          }
        });
    return files;
  }

  /** All files in one text, each after its name. */
  public static String text(Shop shop) {
    return files(shop).entrySet().stream()
        .map(file -> "-- " + file.getKey() + "\n" + file.getValue())
        .collect(Collectors.joining());
  }

  private static String mm(long length) {
    return BigDecimal.valueOf(length)
        .divide(BigDecimal.valueOf(Length.MM))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String mm(OptionalLong length) {
    return length.isPresent() ? mm(length.getAsLong()) : "";
  }

  private static String mm(Dimension dimension) {
    return switch (dimension.state()) {
      case KNOWN -> mm(dimension.length());
      case WITHIN -> range(dimension);
      case NONE -> "none";
      case BLANK -> "";
    };
  }

  private static String range(Dimension within) {
    if (!Length.isBounded(within.lo())) {
      return "at most " + mm(within.hi());
    }
    return Length.isBounded(within.hi())
        ? mm(within.lo()) + ".." + mm(within.hi())
        : "at least " + mm(within.lo());
  }

  private static String limit(long limit) {
    return Length.isBounded(limit) ? mm(limit) : "";
  }

  private static String turns(Set<Orientation> turns) {
    return turns.size() == 4
        ? ""
        : turns.stream().sorted().map(Orientation::word).collect(Collectors.joining(" "));
  }

  private static String letters(Axes axes, String none) {
    String letters = (axes.x() ? "x" : "") + (axes.y() ? "y" : "") + (axes.z() ? "z" : "");
    return letters.isEmpty() ? none : letters;
  }

  private static void settings(Settings settings, Table table) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("clearance", mm(settings.clearance()));
    values.put("hand_room", mm(settings.handRoom()));
    values.put("spacing", mm(settings.spacing()));
    values.put("clamp_room", mm(settings.clampRoom()));
    values.put("tap_room", mm(settings.tapRoom()));
    values.put("smaller_threads", settings.smallerThreads() ? "yes" : "no");
    values.put("jaw_play", mm(settings.jawPlay()));
    values.put("load_room", mm(settings.loadRoom()));
    values.put("comfort", mm(settings.comfort()));
    values.put("least_opening", mm(settings.leastOpening()));
    settings.shortestTool().ifPresent(length -> values.put("shortest_tool", mm(length)));
    settings.maxOverhang().ifPresent(length -> values.put("max_overhang", mm(length)));
    values.forEach(
        (name, value) -> {
          table.row();
          table.put("setting", name);
          table.put("value", value);
        });
  }

  private static void machine(Machine machine, Table table) {
    table.row();
    table.put("machine", machine.name());
    table.put("table_moves", letters(machine.tableMoves(), "none"));
    table.put("table_length", mm(machine.tableLength()));
    table.put("table_width", mm(machine.tableWidth()));
    table.put("travel_x", mm(machine.travelX()));
    table.put("travel_y", mm(machine.travelY()));
    table.put("spindle_x", mm(machine.spindleX()));
    table.put("spindle_y", mm(machine.spindleY()));
    table.put("slot_direction", machine.slots().direction().letter());
    boolean listed = !machine.slots().positions().isEmpty();
    table.put("slot_count", listed ? "" : "" + machine.slots().count());
    table.put("slot_width", mm(machine.slots().width()));
    table.put("slot_pitch", listed ? "" : mm(machine.slots().pitch()));
    table.put(
        "slot_positions",
        machine.slots().positions().stream().map(ShopCsv::mm).collect(Collectors.joining("; ")));
    table.put("slot_first", listed ? "" : mm(machine.slots().first()));
    table.put("slot_length", mm(machine.slots().length()));
    table.put("front_ledge", mm(machine.ledges().front()));
    table.put("rear_ledge", mm(machine.ledges().rear()));
    table.put("left_ledge", mm(machine.ledges().left()));
    table.put("right_ledge", mm(machine.ledges().right()));
    table.put("front_gap", mm(machine.gap(Side.FRONT)));
    table.put("rear_gap", mm(machine.gap(Side.REAR)));
    table.put("left_gap", mm(machine.gap(Side.LEFT)));
    table.put("right_gap", mm(machine.gap(Side.RIGHT)));
    table.put("nose_min", mm(machine.noseMin()));
    table.put("nose_max", mm(machine.noseMax()));
    table.put("max_load", machine.maxLoad().map(BigDecimal::toPlainString).orElse(""));
    table.put("load_x", mm(machine.loadX()));
    table.put("load_y", mm(machine.loadY()));
    table.put("turns", turns(machine.turns()));
    table.put("tolerance", mm(machine.provenance().tolerance()));
    table.put("status", machine.candidate() ? "candidate" : "owned");
    table.put("price", machine.price().map(BigDecimal::toPlainString).orElse(""));
  }

  private static void guard(Machine machine, Guard guard, Table table) {
    table.row();
    table.put("machine", machine.name());
    table.put("guard", guard.name());
    table.put("kind", guard.kind());
    table.put("carried_by", letters(guard.carriedBy(), "frame"));
    table.put("when", guard.when().word());
    table.put("side", guard.side().map(side -> side.word()).orElse(""));
    table.put("gap", guard.side().isPresent() ? mm(guard.gap()) : "");
    limits(table, "x", guard.limits().x());
    limits(table, "y", guard.limits().y());
    limits(table, "z", guard.limits().z());
    table.put("clearance", mm(guard.clearance()));
    table.put("tolerance", mm(guard.tolerance()));
  }

  private static void limits(Table table, String axis, Interval interval) {
    table.put(axis + "_min", limit(interval.lo()));
    table.put(axis + "_max", limit(interval.hi()));
  }

  private static void vise(Vise vise, Table table) {
    table.row();
    table.put("vise", vise.name());
    table.put("jaws", vise.jaws().both() ? "both" : "one");
    table.put("jaw_width", mm(vise.jaws().width()));
    table.put("jaw_height", mm(vise.jaws().height()));
    table.put("plates_width", mm(vise.jaws().platesWidth()));
    table.put("plates_height", mm(vise.jaws().platesHeight()));
    table.put("bed_height", mm(vise.base().bedHeight()));
    table.put("opening_min", mm(vise.opening().lo()));
    table.put("opening_max", mm(vise.opening().hi()));
    table.put("base_width", mm(vise.base().width()));
    table.put("rear_reach", mm(vise.base().rearReach()));
    table.put("front_reach", mm(vise.base().frontReach()));
    table.put("fixed_jaw_thickness", mm(vise.jaws().fixedThickness()));
    table.put("moving_jaw_thickness", mm(vise.jaws().movingThickness()));
    table.put("rear_projection_closed", mm(vise.screw().rear().closed()));
    table.put("rear_projection_open", mm(vise.screw().rear().open()));
    table.put("front_projection_closed", mm(vise.screw().front().closed()));
    table.put("front_projection_open", mm(vise.screw().front().open()));
    table.put("screw_height", mm(vise.screw().height()));
    table.put("screw_diameter", mm(vise.screw().diameter()));
    table.put("handle_radius", mm(vise.handle().radius()));
    table.put("handle_depth", mm(vise.handle().depth()));
    table.put("handle", vise.handle().onWhileCutting() ? "on" : "off");
    table.put("handle_swing", vise.handle().fullSwing() ? "full" : "upper");
    table.put("turns", turns(vise.turns()));
    Mount own = vise.mounts().stream().filter(Mount::own).findFirst().orElse(null);
    Bolt second = own == null ? null : own.bolts().get(1);
    String spacing = "none";
    if (second != null) {
      spacing = second.v().isKnown() ? mm(2 * second.v().length()) : "";
    }
    table.put("bolt_spacing", spacing);
    table.put("bolt_u", second == null ? "" : mm(second.u()));
    table.put("bolt_hole_u", second == null ? "" : mm(second.holeU()));
    table.put("bolt_hole_v", second == null ? "" : mm(second.holeV()));
    table.put("bolt_grip", mm(vise.boltGrip()));
    table.put("strap_flange", vise.strapFlange() ? "yes" : "no");
    table.put("mass", vise.mass().map(BigDecimal::toPlainString).orElse(""));
    table.put("tolerance", mm(vise.provenance().tolerance()));
    table.put("shape", vise.simple() ? "simple" : "parts");
    table.put("quantity", "" + vise.quantity());
    table.put("price", vise.price().map(BigDecimal::toPlainString).orElse(""));
  }

  private static void part(Vise vise, VisePart part, Table table) {
    table.row();
    table.put("vise", vise.name());
    table.put("part", part.name());
    table.put("when", part.when().word());
    table.put("u_min_closed", mm(part.uClosed().lo()));
    table.put("u_max_closed", mm(part.uClosed().hi()));
    table.put("u_min_open", mm(part.uOpen().lo()));
    table.put("u_max_open", mm(part.uOpen().hi()));
    table.put("v_min", mm(part.v().lo()));
    table.put("v_max", mm(part.v().hi()));
    table.put("w_min", mm(part.w().lo()));
    table.put("w_max", mm(part.w().hi()));
    table.put("tolerance", mm(part.tolerance()));
  }

  private static void mount(Vise vise, Mount mount, Table table) {
    for (Bolt bolt : mount.bolts()) {
      table.row();
      table.put("vise", vise.name());
      table.put("mount", mount.name());
      table.put("u", mm(bolt.u()));
      table.put("v", mm(bolt.v()));
      table.put("hole_u", mm(bolt.holeU()));
      table.put("hole_v", mm(bolt.holeV()));
    }
  }

  private static void job(Job job, Table table) {
    table.row();
    table.put("job", job.name());
    table.put("part_length", mm(job.length()));
    table.put("part_width", mm(job.width()));
    table.put("part_height", mm(job.height()));
    table.put("grip", mm(job.grip()));
    table.put("mass", job.mass().map(BigDecimal::toPlainString).orElse(""));
    table.put("tool_length", mm(job.toolLength()));
    table.put("jaws_along", job.jawsAlong().map(axis -> axis.letter()).orElse(""));
    table.put("machines", String.join(";", job.machines()));
    table.put("quantity", "" + job.quantity());
  }

  private static void standing(Standing standing, Table table) {
    table.row();
    table.put("machine", standing.machine().name());
    table.put("vise", standing.vise().name());
    table.put("handle_to", standing.place().handleTo().word());
    table.put("from_left", mm(standing.place().fromLeft()));
    table.put("from_front", mm(standing.place().fromFront()));
    table.put("mount", standing.mount());
    table.put("tolerance", mm(standing.tolerance()));
  }

  private static void set(ViseSet set, Table table) {
    for (ViseSet.Member member : set.members()) {
      table.row();
      table.put("set", set.name());
      table.put("vise", member.vise().name());
      table.put("count", "" + member.count());
      table.put("machines", String.join(";", set.machines()));
    }
  }
}
