package org.jawroom.placement.bolting;

import org.jawroom.geometry.Orientation;

/**
 * Why a mount does not hold in a turn, and by how much it misses.
 *
 * @param mount its name
 * @param cause what fails
 * @param bolt where the failing bolt stands among its mount's after turning: {@code left}, {@code
 *     right}, {@code front}, {@code rear}, or {@code only}; empty where no one bolt fails
 * @param shortBy how much is missing at that bolt, half-nanometres; 0 where it cannot be told in
 *     lengths
 */
public record Miss(Orientation turn, String mount, Cause cause, String bolt, long shortBy) {

  /** What can fail, the nearest to holding first. */
  public enum Cause {
    /**
     * The bolts of the mount reach no set of slots: the last one lacks {@code shortBy} of play
     * across.
     */
    ACROSS_SLOTS,
    /** They are farther apart along the slots than the slots are long. */
    ALONG_SLOTS,
    /** A hole is smaller than the bolt that goes with the slot. */
    HOLE_TOO_SMALL,
    /** Wherever they hold, the base hangs over an edge by more than is allowed. */
    OVERHANG,
    /** No bolt goes with so narrow a slot, or the table has none. */
    NO_SLOT,
    /** The vise's or the machine's turns do not allow it. */
    TURN_NOT_ALLOWED,
    /** The vise has no mount at all. */
    NO_BOLTS
  }
}
