package org.jawroom.shop.vise;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;

/**
 * Builds a {@link Vise}; whatever is not set takes the default of its column, or is blank if the
 * column has none. All lengths in half-nanometres, in the vise frame.
 */
public final class ViseBuilder {
  private String name;
  private String description = "";
  private int quantity = 1;
  private boolean simple = true;
  private Jaws jaws = new Jaws(false, 0, 0, 0, 0, Dimension.BLANK, Dimension.BLANK);
  private Interval opening = Interval.of(0, 0);
  private Base base = new Base(0, Dimension.BLANK, Dimension.BLANK, Dimension.BLANK);
  private Screw screw =
      new Screw(Projection.BLANK, Projection.BLANK, Dimension.BLANK, Dimension.BLANK);
  private Handle handle = new Handle(Dimension.BLANK, Dimension.BLANK, false, false);
  private Set<Orientation> turns = EnumSet.allOf(Orientation.class);
  private List<Mount> mounts = List.of();
  private OptionalLong boltGrip = OptionalLong.empty();
  private boolean strapFlange;
  private Optional<BigDecimal> mass = Optional.empty();
  private Optional<BigDecimal> clampForce = Optional.empty();
  private Optional<BigDecimal> price = Optional.empty();
  private Provenance provenance = new Provenance(0, true, "", "");
  private List<VisePart> parts = List.of();
  private Optional<Swivel> swivel = Optional.empty();

  ViseBuilder(String name) {
    this.name = name;
  }

  ViseBuilder(Vise vise) {
    this.name = vise.name();
    this.description = vise.description();
    this.quantity = vise.quantity();
    this.simple = vise.simple();
    this.jaws = vise.jaws();
    this.opening = vise.opening();
    this.base = vise.base();
    this.screw = vise.screw();
    this.handle = vise.handle();
    this.turns = vise.turns();
    this.mounts = vise.mounts();
    this.boltGrip = vise.boltGrip();
    this.strapFlange = vise.strapFlange();
    this.mass = vise.mass();
    this.clampForce = vise.clampForce();
    this.price = vise.price();
    this.provenance = vise.provenance();
    this.parts = vise.parts();
    this.swivel = vise.swivel();
  }

  public ViseBuilder name(String name) {
    this.name = name;
    return this;
  }

  public ViseBuilder description(String description) {
    this.description = description;
    return this;
  }

  /** The number owned; 1 unless set. */
  public ViseBuilder quantity(int quantity) {
    this.quantity = quantity;
    return this;
  }

  /** Whether the columns make up the body; otherwise the rows of {@code vise_parts} alone do. */
  public ViseBuilder simple(boolean simple) {
    this.simple = simple;
    return this;
  }

  public ViseBuilder jaws(Jaws jaws) {
    this.jaws = jaws;
    return this;
  }

  /** From the least to the greatest distance between the jaw faces. */
  public ViseBuilder opening(Interval opening) {
    this.opening = opening;
    return this;
  }

  public ViseBuilder base(Base base) {
    this.base = base;
    return this;
  }

  public ViseBuilder screw(Screw screw) {
    this.screw = screw;
    return this;
  }

  public ViseBuilder handle(Handle handle) {
    this.handle = handle;
    return this;
  }

  /** The turns allowed; all unless set. */
  public ViseBuilder turns(Set<Orientation> turns) {
    this.turns = turns;
    return this;
  }

  /** The vise's own pair of bolts first, then the mounts of other names. */
  public ViseBuilder mounts(List<Mount> mounts) {
    this.mounts = mounts;
    return this;
  }

  /** Thickness of the flange under a bolt's nut; the bed height unless set. */
  public ViseBuilder boltGrip(OptionalLong boltGrip) {
    this.boltGrip = boltGrip;
    return this;
  }

  public ViseBuilder strapFlange(boolean strapFlange) {
    this.strapFlange = strapFlange;
    return this;
  }

  /** In kg; blank unless set. */
  public ViseBuilder mass(Optional<BigDecimal> mass) {
    this.mass = mass;
    return this;
  }

  /** In kN; blank unless set. */
  public ViseBuilder clampForce(Optional<BigDecimal> clampForce) {
    this.clampForce = clampForce;
    return this;
  }

  public ViseBuilder price(Optional<BigDecimal> price) {
    this.price = price;
    return this;
  }

  /** Tolerance 0, marked as assumed, unless set. */
  public ViseBuilder provenance(Provenance provenance) {
    this.provenance = provenance;
    return this;
  }

  /** The rows of {@code vise_parts}, in input order; none unless set. */
  public ViseBuilder parts(List<VisePart> parts) {
    this.parts = parts;
    return this;
  }

  /** How it stands turned on its swivel base; square unless set. */
  public ViseBuilder swivel(Optional<Swivel> swivel) {
    this.swivel = swivel;
    return this;
  }

  /**
   * Builds the vise.
   *
   * @throws IllegalArgumentException if a rule of {@link Vise} is violated
   */
  public Vise build() {
    return new Vise(
        name,
        description,
        quantity,
        simple,
        jaws,
        opening,
        base,
        screw,
        handle,
        turns,
        mounts,
        boltGrip,
        strapFlange,
        mass,
        clampForce,
        price,
        provenance,
        parts,
        swivel);
  }
}
