package org.jawroom.placement.bolting;

import org.jawroom.geometry.Orientation;

/**
 * Why a mount does not hold in a turn, and by how much.
 *
 * @param mount its name
 * @param cause what fails
 * @param bolt position of the failing bolt within its mount after turning: {@code left}, {@code
 *     right}, {@code front}, {@code rear} or {@code only}; empty if no single bolt fails
 * @param shortBy the length missing at that bolt, half-nanometres; 0 if the cause has no length
 */
public record Miss(Orientation turn, String mount, Cause cause, String bolt, long shortBy) {

  /** The causes, ordered from the nearest to holding to the farthest. */
  public enum Cause {
    /**
     * The bolts of the mount reach no combination of slots: the worst bolt lacks {@code shortBy} of
     * play across the slots.
     */
    ACROSS_SLOTS,
    /** The bolts are farther apart along the slots than the slots are long. */
    ALONG_SLOTS,
    /** A hole is smaller than the smallest bolt that may be tried in the slot. */
    HOLE_TOO_SMALL,
    /** Wherever the mount holds, the base overhangs an edge by more than allowed. */
    OVERHANG,
    /** Base and straps do not lie wholly over the table with a slot through each of the straps. */
    NO_ROOM_FOR_CLAMPS,
    /** The slot is too narrow for any bolt, or the table has no slots. */
    NO_SLOT,
    /** The vise's or the machine's turns do not allow it. */
    TURN_NOT_ALLOWED,
    /** The vise has no mount. */
    NO_BOLTS
  }
}
