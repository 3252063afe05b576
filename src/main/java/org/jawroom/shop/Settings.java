package org.jawroom.shop;

import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Require;

/**
 * Settings of the whole shop; lengths in half-nanometres.
 *
 * @param clearance the required clearance of guards without one of their own
 * @param handRoom least required clearance of a handle while loading, for a plain {@code fits}
 * @param spacing least distance between two vises on one table
 * @param clampRoom width of a strap clamp beside the base, on either side
 * @param tapRoom how far the vise must be movable every way to be tapped square
 * @param smallerThreads whether bolts may have a smaller thread than the one that goes with the
 *     slot
 * @param shortestTool nose to tip; empty: guards that move along z yield a nose height instead of
 *     entering the verdict
 * @param jawPlay how far the jaws open beyond a job's width to let the part in
 * @param loadRoom how far the jaws must be able to open beyond a job's width
 * @param comfort the margin above which more is worth nothing by itself
 * @param leastOpening least width of an opening range that makes a pairing {@code limited}
 * @param maxOverhang greatest overhang of a base over a table edge; empty: no limit
 * @param evidence what was found on the machines; it changes no number
 */
public record Settings(
    long clearance,
    long handRoom,
    long spacing,
    long clampRoom,
    long tapRoom,
    boolean smallerThreads,
    OptionalLong shortestTool,
    long jawPlay,
    long loadRoom,
    long comfort,
    long leastOpening,
    OptionalLong maxOverhang,
    Evidence evidence) {

  /** Openings are printed in steps of 0.01 mm; the least opening may not be smaller. */
  public static final long OPENING_GRAIN = Length.MM / 100;

  /**
   * Clearance 6 mm (about a quarter inch: common practice, no source), hand room 25 mm (ISO 13854);
   * the others are common practice, no source.
   */
  public static final Settings DEFAULTS = builder().build();

  public Settings {
    Require.notNegative("clearance", clearance);
    Require.notNegative("hand room", handRoom);
    Require.notNegative("spacing", spacing);
    Require.notNegative("clamp room", clampRoom);
    Require.notNegative("tap room", tapRoom);
    Require.notNegative("jaw play", jawPlay);
    Require.notNegative("load room", loadRoom);
    Require.notNegative("comfort", comfort);
    shortestTool.ifPresent(length -> Require.notNegative("shortest tool", length));
    maxOverhang.ifPresent(length -> Require.notNegative("max overhang", length));
    if (leastOpening < OPENING_GRAIN) {
      throw new IllegalArgumentException("least opening under 0.01 mm: " + leastOpening);
    }
  }

  /** A builder that holds the defaults. */
  public static Builder builder() {
    return new Builder();
  }

  /** A builder that holds these settings. */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.clearance = clearance;
    builder.handRoom = handRoom;
    builder.spacing = OptionalLong.of(spacing);
    builder.clampRoom = clampRoom;
    builder.tapRoom = tapRoom;
    builder.smallerThreads = smallerThreads;
    builder.shortestTool = shortestTool;
    builder.jawPlay = jawPlay;
    builder.loadRoom = loadRoom;
    builder.comfort = comfort;
    builder.leastOpening = leastOpening;
    builder.maxOverhang = maxOverhang;
    builder.evidence = evidence;
    return builder;
  }

  /** Builds settings from the defaults; lengths in half-nanometres. */
  public static final class Builder {
    private long clearance = 6 * Length.MM;
    private long handRoom = 25 * Length.MM;
    private OptionalLong spacing = OptionalLong.empty();
    private long clampRoom = 60 * Length.MM;
    private long tapRoom = 2 * Length.MM;
    private boolean smallerThreads = true;
    private OptionalLong shortestTool = OptionalLong.empty();
    private long jawPlay = 10 * Length.MM;
    private long loadRoom = 2 * Length.MM;
    private long comfort = 3 * Length.MM;
    private long leastOpening = 25 * Length.MM;
    private OptionalLong maxOverhang = OptionalLong.empty();
    private Evidence evidence = Evidence.NONE;

    private Builder() {}

    public Builder clearance(long length) {
      this.clearance = length;
      return this;
    }

    public Builder handRoom(long length) {
      this.handRoom = length;
      return this;
    }

    /** Unless set, the clearance. */
    public Builder spacing(long length) {
      this.spacing = OptionalLong.of(length);
      return this;
    }

    public Builder clampRoom(long length) {
      this.clampRoom = length;
      return this;
    }

    public Builder tapRoom(long length) {
      this.tapRoom = length;
      return this;
    }

    public Builder smallerThreads(boolean allowed) {
      this.smallerThreads = allowed;
      return this;
    }

    public Builder shortestTool(OptionalLong length) {
      this.shortestTool = length;
      return this;
    }

    public Builder jawPlay(long length) {
      this.jawPlay = length;
      return this;
    }

    public Builder loadRoom(long length) {
      this.loadRoom = length;
      return this;
    }

    public Builder comfort(long length) {
      this.comfort = length;
      return this;
    }

    public Builder leastOpening(long length) {
      this.leastOpening = length;
      return this;
    }

    public Builder maxOverhang(OptionalLong length) {
      this.maxOverhang = length;
      return this;
    }

    public Builder evidence(Evidence evidence) {
      this.evidence = evidence;
      return this;
    }

    /**
     * The settings.
     *
     * @throws IllegalArgumentException if a length is negative or the least opening under 0.01 mm
     */
    public Settings build() {
      return new Settings(
          clearance,
          handRoom,
          spacing.orElse(clearance),
          clampRoom,
          tapRoom,
          smallerThreads,
          shortestTool,
          jawPlay,
          loadRoom,
          comfort,
          leastOpening,
          maxOverhang,
          evidence);
    }
  }
}
