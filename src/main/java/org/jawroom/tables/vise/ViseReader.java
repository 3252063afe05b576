package org.jawroom.tables.vise;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.ProvenanceCells;
import org.jawroom.tables.row.Row;

/** Parses one row of {@code vises}. */
public final class ViseReader {
  private final Owners.Owner owner;
  private final Owners vises;
  private final Row row;
  private final Ledger ledger;

  /**
   * A reader of one row.
   *
   * @param vises all rows of the table
   */
  public ViseReader(Owners.Owner owner, Owners vises, Ledger ledger) {
    this.owner = owner;
    this.vises = vises;
    this.row = owner.row();
    this.ledger = ledger;
  }

  /**
   * The vise, then the same at each angle of its swivel base. Empty, with faults, if the row is
   * unsound.
   *
   * @param partsKnown whether all of its rows of vise_parts could be read
   */
  public List<Vise> read(List<VisePart> parts, List<MountReader.Named> bolts, boolean partsKnown) {
    String thing = "vise " + owner.name();
    OptionalInt quantity = row.count("quantity");
    boolean simple = !row.says("shape", "parts");
    Jaws jaws = jaws(thing);
    OptionalLong openingMin = row.length("opening_min");
    OptionalLong openingMax = row.length("opening_max");
    refuseOpeningBackwards(openingMin, openingMax);
    Base base = BaseCells.read(row);
    Screw screw =
        new Screw(
            projection("rear_projection_closed", "rear_projection_open"),
            projection("front_projection_closed", "front_projection_open"),
            row.dimension("screw_height"),
            row.dimension("screw_diameter"));
    Handle handle =
        new Handle(
            row.dimension("handle_radius"),
            row.dimension("handle_depth"),
            row.says("handle", "on"),
            row.says("handle_swing", "full"));
    Set<Orientation> turns = row.turns("turns");
    List<Mount> mounts = MountReader.mounts(row, bolts);
    OptionalLong grip = row.length("bolt_grip");
    boolean strapFlange = row.says("strap_flange", "yes");
    Optional<BigDecimal> mass = row.mass("mass");
    Optional<BigDecimal> clampForce = row.number("clamp_force");
    Optional<BigDecimal> price = row.price("price");
    Provenance provenance = ProvenanceCells.read(row, thing, ledger);
    String description = row.text("description");
    row.unit();
    List<Swivel> swivels =
        SwivelCells.read(owner, simple ? Optional.of(base) : Optional.empty(), vises);
    if (!simple && parts.isEmpty() && partsKnown) {
      row.fault("shape", "asks for rows of vise_parts, but this vise has none there");
    }
    if (!row.isSound()) {
      return List.of();
    }
    if (grip.isEmpty()) {
      ledger.tookDefault(row, thing + ": bolt_grip blank, so its bolts taken as bed_height high");
    }
    Vise vise =
        Vise.builder(owner.name())
            .description(description)
            .quantity(quantity.getAsInt())
            .simple(simple)
            .jaws(jaws)
            .opening(new Interval(openingMin.getAsLong(), openingMax.getAsLong()))
            .base(base)
            .screw(screw)
            .handle(handle)
            .turns(turns)
            .mounts(mounts)
            .boltGrip(grip)
            .strapFlange(strapFlange)
            .mass(mass)
            .clampForce(clampForce)
            .price(price)
            .provenance(provenance)
            .parts(parts)
            .build();
    return Stream.concat(Stream.of(vise), swivels.stream().map(vise::turned)).toList();
  }

  private Jaws jaws(String thing) {
    long width = row.length("jaw_width").orElse(0);
    long height = row.length("jaw_height").orElse(0);
    OptionalLong platesWidth = row.length("plates_width");
    OptionalLong platesHeight = row.length("plates_height");
    if (row.isBlank("plates_width") && row.isBlank("plates_height")) {
      ledger.tookDefault(row, thing + ": plates blank, so no jaw plates larger than the jaws");
    }
    return new Jaws(
        row.says("jaws", "both"),
        width,
        height,
        platesWidth.orElse(width),
        platesHeight.orElse(height),
        row.dimension("fixed_jaw_thickness"),
        row.dimension("moving_jaw_thickness"));
  }

  private Projection projection(String closed, String open) {
    return new Projection(row.dimension(closed), row.dimension(open));
  }

  private void refuseOpeningBackwards(OptionalLong min, OptionalLong max) {
    if (min.isPresent() && max.isPresent() && min.getAsLong() > max.getAsLong()) {
      row.fault("opening_min", "is above opening_max, " + row.raw("opening_max"));
    }
  }
}
