package org.jawroom.shop.vise;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.Require;

/**
 * A vise: its row of {@code vises} and its rows of {@code vise_parts} and {@code mounts}. Lengths
 * in half-nanometres, in the vise frame.
 *
 * @param simple whether the columns of the row make up its body; otherwise its {@code parts} alone
 *     do
 * @param opening from the least to the greatest distance between the jaw faces, both included
 * @param turns the turns allowed
 * @param mounts its own pair of bolts first (unless the row says {@code none}), then the mounts of
 *     {@code mounts} in order of first appearance
 * @param boltGrip thickness of the flange under the bolt's nut; empty: the bed height is used
 * @param strapFlange whether it has a flange for strap clamps
 * @param mass kg; empty if blank
 * @param clampForce kN; empty if blank
 * @param price of one more; empty: none can be bought
 * @param swivel how it stands turned on its swivel base; empty: its jaws stand square
 */
public record Vise(
    String name,
    String description,
    int quantity,
    boolean simple,
    Jaws jaws,
    Interval opening,
    Base base,
    Screw screw,
    Handle handle,
    Set<Orientation> turns,
    List<Mount> mounts,
    OptionalLong boltGrip,
    boolean strapFlange,
    Optional<BigDecimal> mass,
    Optional<BigDecimal> clampForce,
    Optional<BigDecimal> price,
    Provenance provenance,
    List<VisePart> parts,
    Optional<Swivel> swivel) {
  public Vise {
    Require.named("vise", name);
    turns = Set.copyOf(turns);
    mounts = List.copyOf(mounts);
    parts = List.copyOf(parts);
    Require.notNegative("quantity", quantity);
    Require.notNegative("opening", opening.lo());
    boltGrip.ifPresent(length -> Require.notNegative("bolt grip", length));
    Require.price(price);
  }

  /** The name of its row, which it shares with the same vise turned on its swivel base. */
  public String row() {
    return swivel.map(Swivel::of).orElse(name);
  }

  /** Whether it stands turned on its swivel base. */
  public boolean isTurned() {
    return swivel.isPresent();
  }

  /** This vise as it stands turned on its swivel base. */
  public Vise turned(Swivel by) {
    return toBuilder().name(by.name()).swivel(Optional.of(by)).build();
  }

  /**
   * This vise, turned, with its jaws kept to some openings: what turns is judged over these alone.
   */
  public Vise within(Interval openings) {
    return toBuilder().swivel(swivel.map(by -> by.within(openings))).build();
  }

  /** Height of the jaw tops above the underside, with the tallest plates. */
  public long top() {
    return base.bedHeight() + jaws.tallestHeight();
  }

  /** A builder for a vise of that name, with all defaults. */
  public static ViseBuilder builder(String name) {
    return new ViseBuilder(name);
  }

  /** A builder preset with this vise. */
  public ViseBuilder toBuilder() {
    return new ViseBuilder(this);
  }

  /** A copy with other jaws. */
  public Vise withJaws(Jaws jaws) {
    return toBuilder().jaws(jaws).build();
  }

  /** A copy with another base. */
  public Vise withBase(Base base) {
    return toBuilder().base(base).build();
  }

  /** A copy with another screw. */
  public Vise withScrew(Screw screw) {
    return toBuilder().screw(screw).build();
  }

  /** A copy with another handle or handle use. */
  public Vise withHandle(Handle handle) {
    return toBuilder().handle(handle).build();
  }

  /** A copy with other turns allowed. */
  public Vise withTurns(Set<Orientation> turns) {
    return toBuilder().turns(turns).build();
  }

  /** A copy with another provenance. */
  public Vise withProvenance(Provenance provenance) {
    return toBuilder().provenance(provenance).build();
  }

  /** A copy with other rows of {@code vise_parts}. */
  public Vise withParts(List<VisePart> parts) {
    return toBuilder().parts(parts).build();
  }

  /**
   * Whether a setter tapes across the jaws to the side of its base; else to the middle of the jaws.
   */
  public boolean isTapedFromBase() {
    return simple && base.width().isKnown();
  }

  /** The names of its mounts, that of strap clamps last. */
  public List<String> mountNames() {
    Stream<String> clamps = hasClampMount() ? Stream.of(Mount.CLAMPS) : Stream.empty();
    return Stream.concat(mounts.stream().map(Mount::name), clamps).toList();
  }

  /**
   * Whether strap clamps may hold it, which makes a mount beside its bolts. Turned, its body may
   * stand over the flange, so that they may not.
   */
  public boolean hasClampMount() {
    return simple && strapFlange && !isTurned();
  }
}
