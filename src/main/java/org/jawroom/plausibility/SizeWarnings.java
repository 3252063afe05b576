package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/**
 * Warnings about sizes that look like another unit than their row's: inches read as millimetres are
 * too small, millimetres read as inches too large. The limits are wide enough for any usual mill
 * and vise; common practice, no source.
 */
final class SizeWarnings {

  /** A plausible size: at least {@code least} and at most {@code most} millimetres. */
  private record Plausible(String column, int least, int most) {

    Optional<String> doubt(long length) {
      if (length < least * Length.MM) {
        return Optional.of("under " + least + " mm");
      }
      return length > most * Length.MM ? Optional.of("over " + most + " mm") : Optional.empty();
    }
  }

  private SizeWarnings() {}

  static List<Warning> of(Machine machine) {
    Findings found = new Findings("machines", machine.name());
    found.check("table_length", 100, 20_000, machine.tableLength());
    found.check("table_width", 100, 5_000, machine.tableWidth());
    found.check("travel_x", 50, 20_000, machine.travelX());
    found.check("travel_y", 50, 5_000, machine.travelY());
    found.check("slot_width", 4, 60, machine.slots().width());
    found.check("slot_pitch", 15, 1_000, machine.slots().pitch());
    for (Side side : Side.values()) {
      found.check(side.word() + "_ledge", 0, 1_000, machine.ledges().get(side));
      found.check(side.word() + "_gap", -2_000, 5_000, machine.gap(side));
    }
    found.check("nose_min", -1_000, 5_000, machine.noseMin());
    found.check("nose_max", 60, 5_000, machine.noseMax());
    return found.warnings;
  }

  static List<Warning> of(Vise vise) {
    Findings found = new Findings("vises", vise.name());
    found.check("jaw_width", 20, 1_000, vise.jaws().width());
    found.check("jaw_height", 5, 500, vise.jaws().height());
    found.check("bed_height", 10, 500, vise.base().bedHeight());
    found.check("opening_max", 10, 1_500, vise.opening().hi());
    if (vise.simple()) {
      found.check("base_width", 20, 1_500, vise.base().width());
      found.check("rear_reach", -1_500, 1_500, vise.base().rearReach());
      found.check("front_reach", 15, 2_500, vise.base().frontReach());
      found.check("fixed_jaw_thickness", 3, 500, vise.jaws().fixedThickness());
      found.check("moving_jaw_thickness", 3, 500, vise.jaws().movingThickness());
      found.check("rear_projection_closed", 0, 1_000, vise.screw().rear().closed());
      found.check("rear_projection_open", 0, 1_000, vise.screw().rear().open());
      found.check("front_projection_closed", 0, 1_000, vise.screw().front().closed());
      found.check("front_projection_open", 0, 1_000, vise.screw().front().open());
      found.check("screw_height", 3, 500, vise.screw().height());
      found.check("screw_diameter", 4, 150, vise.screw().diameter());
      found.check("handle_radius", 15, 800, vise.handle().radius());
      found.check("handle_depth", 3, 500, vise.handle().depth());
    }
    return found.warnings;
  }

  private static final class Findings {
    private final List<Warning> warnings = new ArrayList<>();
    private final String table;
    private final String row;

    Findings(String table, String row) {
      this.table = table;
      this.row = row;
    }

    void check(String column, int least, int most, Dimension dimension) {
      if (dimension.isKnown()) {
        check(column, least, most, dimension.length());
      }
    }

    void check(String column, int least, int most, long length) {
      new Plausible(column, least, most)
          .doubt(length)
          .ifPresent(
              doubt ->
                  warnings.add(
                      new Warning(
                          Seriousness.WRONG,
                          table,
                          row,
                          column,
                          SpokenLength.of(length)
                              + " looks like the wrong unit, being "
                              + doubt
                              + ". Check the row's unit")));
    }
  }
}
