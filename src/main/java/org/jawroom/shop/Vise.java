package org.jawroom.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;

/**
 * A vise, as its row of {@code vises} and its rows of {@code vise_parts} and {@code mounts} tell
 * it.
 *
 * @param simple whether the columns of the row make up its body; else only its {@code parts} do
 * @param opening from the least distance between the jaw faces to the greatest
 * @param turns which turns are allowed
 * @param mounts its own pair of bolts first (unless the row says {@code none}), then the rows of
 *     {@code mounts} in the order their names appear
 * @param boltGrip thickness of the flange under the bolt's nut; empty: bolts stand bed height high
 * @param strapFlange whether it has a flange for strap clamps
 * @param mass kg; empty if blank
 * @param clampForce kN; empty if blank
 * @param price of one more; empty: no more can be had
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
    List<VisePart> parts) {
  public Vise {
    Check.named("vise", name);
    turns = Set.copyOf(turns);
    mounts = List.copyOf(mounts);
    parts = List.copyOf(parts);
    Check.notNegative("quantity", quantity);
    Check.notNegative("opening", opening.lo());
    boltGrip.ifPresent(length -> Check.notNegative("bolt grip", length));
    Check.price(price);
  }

  /** The top of the jaws above the underside, the tallest plates on. */
  public long top() {
    return base.bedHeight() + jaws.tallestHeight();
  }

  /** Starts a vise of that name. */
  public static ViseBuilder builder(String name) {
    return new ViseBuilder(name);
  }

  /** Starts a vise that is the same but for what is set. */
  public ViseBuilder toBuilder() {
    return new ViseBuilder(this);
  }

  /** The same vise with other jaws. */
  public Vise withJaws(Jaws jaws) {
    return toBuilder().jaws(jaws).build();
  }

  /** The same vise on another casting. */
  public Vise withBase(Base base) {
    return toBuilder().base(base).build();
  }

  /** The same vise with another screw. */
  public Vise withScrew(Screw screw) {
    return toBuilder().screw(screw).build();
  }

  /** The same vise with its handle used otherwise. */
  public Vise withHandle(Handle handle) {
    return toBuilder().handle(handle).build();
  }

  /** The same vise with other turns allowed. */
  public Vise withTurns(Set<Orientation> turns) {
    return toBuilder().turns(turns).build();
  }

  /** The same vise, known better or worse. */
  public Vise withProvenance(Provenance provenance) {
    return toBuilder().provenance(provenance).build();
  }

  /** The same vise with other rows of parts. */
  public Vise withParts(List<VisePart> parts) {
    return toBuilder().parts(parts).build();
  }
}
