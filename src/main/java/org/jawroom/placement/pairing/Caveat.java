package org.jawroom.placement.pairing;

/** Why a clear placement is never shown as a plain {@code fits}. */
public enum Caveat {
  /** Gaps found on the machine disagree with readings that it needs; stands with any verdict. */
  IN_DOUBT,
  /** Nothing listed can be hit, which says little. */
  NOTHING_LISTED,
  /** Guards that move along z were left out while cutting, since no shortest tool is set. */
  HEADS_LEFT_OUT,
  /**
   * The base hangs over a table edge by more than a quarter of its length, or may, being unknown.
   */
  OVERHANG,
  /** The vise cannot be tapped square there. */
  NOT_SETTABLE,
  /** Another vise that stands on the table is closer than the spacing. */
  NEIGHBOUR
}
