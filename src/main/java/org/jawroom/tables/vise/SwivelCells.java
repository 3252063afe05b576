package org.jawroom.tables.vise;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.Row;

/** The swivel base of a vise's row. */
final class SwivelCells {
  private SwivelCells() {}

  /**
   * How a vise stands at each angle but 0; none, with faults, if the row is unsound.
   *
   * @param base of a simple vise
   * @param vises all rows of the table, none of which may have the name of a turned vise
   */
  static List<Swivel> read(Owners.Owner owner, Optional<Base> base, Owners vises) {
    Row row = owner.row();
    Set<BigDecimal> angles = row.angles("swivel_angles");
    OptionalLong pivot = row.length("swivel_u");
    OptionalLong radius = row.length("swivel_radius");
    if (!angles.isEmpty() && row.isBlank("swivel_u")) {
      row.fault("swivel_u", "is blank, but swivel_angles needs the place of the pivot");
    }
    if (radius.isPresent()) {
      base.ifPresent(own -> refuseBeyondBase(row, own, pivot, radius.getAsLong()));
    }
    // An unsound row has its names, too, so that no row that refers to one has a fault for it.
    angles.forEach(angle -> call(owner, Swivel.name(owner.name(), angle), vises));
    if (!row.isSound() || pivot.isEmpty()) {
      return List.of();
    }
    return angles.stream()
        .map(angle -> new Swivel(owner.name(), angle, pivot.getAsLong(), radius))
        .toList();
  }

  private static void call(Owners.Owner owner, String turned, Owners vises) {
    vises
        .named(turned)
        .ifPresent(
            other ->
                other
                    .row()
                    .fault(
                        "vise",
                        "is what "
                            + owner.name()
                            + " is called when it is turned; give it another name"));
    if (!owner.name().isEmpty()) {
      vises.alsoCalled(owner, turned);
    }
  }

  /** The base is measured over the flange, so that what is bolted stands within it. */
  private static void refuseBeyondBase(Row row, Base base, OptionalLong pivot, long radius) {
    refuse(row, "base_width", base.width(), 2 * radius, "is across the flange, too");
    if (pivot.isPresent()) {
      refuse(
          row,
          "rear_reach",
          base.rearReach(),
          radius - pivot.getAsLong(),
          "goes to the end of the casting or of the flange, whichever is farther");
      refuse(
          row,
          "front_reach",
          base.frontReach(),
          radius + pivot.getAsLong(),
          "goes to the end of the casting or of the flange, whichever is farther");
    }
  }

  private static void refuse(
      Row row, String column, Dimension reading, long least, String because) {
    if (!reading.isBlank() && reading.values(0).hi() < least) {
      row.fault(
          "swivel_radius",
          "is more than " + column + " leaves room for: " + column + " " + because);
    }
  }
}
