package org.jawroom.tables.template;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.template.sketch.GapSketch;
import org.jawroom.tables.template.sketch.MillSketch;
import org.jawroom.tables.template.sketch.TableSketch;
import org.jawroom.tables.template.sketch.ViseSketch;

/**
 * What is asked on each page of the measuring form: the columns of machines and vises that are read
 * off the machine or the vise, in the order in which one tapes them. Names and questions come from
 * the columns' descriptors.
 */
public enum FormContents {
  TABLE(
      TableSpec.MACHINES,
      "Machine: the table, its slots and the spindle",
      List.of(
          "table_length",
          "table_width",
          "slot_count",
          "slot_width",
          "slot_pitch",
          "slot_first",
          "slot_length",
          "travel_x",
          "travel_y",
          "spindle_x",
          "spindle_y",
          "max_load"),
      List.of(
          "The table is its flat top: a coolant trough round it does not count.",
          "The travel is what the table really reaches, switches and soft limits included, not the"
              + " brochure's figure.",
          Words.BLANK)),
  NOSE(
      TableSpec.MACHINES,
      "Machine: the spindle nose and the ledges",
      List.of("nose_min", "nose_max", "front_ledge", "rear_ledge", "left_ledge", "right_ledge"),
      List.of(
          "The nose is the lower face of the spindle itself, no holder and no tool in it. Rule from the"
              + " table top straight up to that face, not to the head's cover.",
          "Take it once with the nose as LOW over the table as it goes, once as HIGH: whatever moves, head,"
              + " quill clamped as it is run, or knee.",
          "Lock out before you reach under the spindle; block a head that can sink.",
          "A ledge left blank counts as 0: if you could not measure one, write the most it can be.",
          Words.BLANK)),
  GAPS(
      TableSpec.MACHINES,
      "Machine: the gaps round the table",
      List.of("front_gap", "rear_gap", "left_gap", "right_gap"),
      List.of(
          "Run the table to the end of its travel that brings the two nearest, overrun when homing"
              + " included; then lock out, and only then reach in with the tape.",
          "Tape to the nearest thing at any height between the lowest point of a handle and the top of"
              + " the tallest work: handles, hoses, bolt heads and cover lips, too.",
          "A gap is negative where the table runs under something: write the minus.",
          "Tick none only where there is nothing on that side.",
          Words.BLANK)),
  VISE_SIDE(
      TableSpec.VISES,
      "Vise: seen from the side",
      List.of(
          "rear_reach",
          "front_reach",
          "rear_projection_closed",
          "rear_projection_open",
          "front_projection_closed",
          "front_projection_open",
          "bed_height",
          "jaw_height",
          "fixed_jaw_thickness",
          "moving_jaw_thickness",
          "screw_height",
          "screw_diameter",
          "handle_radius",
          "handle_depth"),
      List.of(
          "Close the jaws before you look behind the vise: many a screw sticks out there only then.",
          Words.BLANK)),
  VISE_PLAN(
      TableSpec.VISES,
      "Vise: seen from above",
      List.of(
          "opening_min",
          "opening_max",
          "jaw_width",
          "base_width",
          "bolt_spacing",
          "bolt_u",
          "bolt_hole_u",
          "bolt_hole_v",
          "bolt_grip",
          "mass"),
      List.of(
          "Reaches and bolt_u start at the fixed jaw's face (both jaws moving: at the middle between them),"
              + " not at the back of the jaw.",
          "A hole is measured over all, as wide as it is where the bolt passes.",
          Words.BLANK));

  private final TableSpec table;
  private final String title;
  private final List<String> columns;
  private final List<String> traps;

  FormContents(TableSpec table, String title, List<String> columns, List<String> traps) {
    this.table = table;
    this.title = title;
    this.columns = columns;
    this.traps = traps;
  }

  /**
   * The page on whose sketch a column is read; guards are taped as the gaps are, bolts of mounts as
   * the vise's own. Empty if it is on none.
   */
  public static Optional<FormContents> of(String table, String column) {
    if (table.equals(TableSpec.GUARDS.tableName())) {
      return Optional.of(GAPS);
    }
    if (table.equals(TableSpec.MOUNTS.tableName())) {
      return Optional.of(VISE_PLAN);
    }
    return Arrays.stream(values())
        .filter(page -> page.table.tableName().equals(table) && page.columns.contains(column))
        .findFirst();
  }

  /** The table that takes the readings. */
  public TableSpec table() {
    return table;
  }

  public String title() {
    return title;
  }

  /** The descriptors of the columns asked for, in the order of the tape. */
  public List<ColumnSpec> columns() {
    return columns.stream()
        .map(
            name ->
                table.columns().stream()
                    .filter(column -> column.name().equals(name))
                    .findFirst()
                    .orElseThrow())
        .toList();
  }

  /** An enum's constants cannot use its own constants. */
  private static final class Words {
    static final String BLANK =
        "Tick not measured where you could not measure, and leave that cell blank: blank is unknown, never"
            + " zero, unless the form says otherwise. Known within bounds: 50..60, at most 60.";
  }

  /** What goes wrong on the way. */
  public List<String> traps() {
    return traps;
  }

  /** The sketch with all readings. */
  public BufferedImage sketch() {
    return sketch(Set.of());
  }

  /** The sketch with a frame round the names of the columns {@code marked}. */
  public BufferedImage sketch(Set<String> marked) {
    byte[] png =
        switch (this) {
          case TABLE -> TableSketch.plan(marked);
          case NOSE -> MillSketch.side(marked);
          case GAPS -> GapSketch.plan(marked);
          case VISE_SIDE -> ViseSketch.side(marked);
          case VISE_PLAN -> ViseSketch.plan(marked);
        };
    try {
      return ImageIO.read(new ByteArrayInputStream(png));
    } catch (IOException inMemory) {
      throw new UncheckedIOException(inMemory);
    }
  }
}
