package org.jawroom.clearance.part;

/** What a part of a vise is, in order of precedence among equal margins. */
public enum PartRole {
  BASE("base"),
  FIXED_JAW("fixed jaw"),
  MOVING_JAW("moving jaw"),
  /** Of a vise whose jaws both move, like {@link #FRONT_JAW}. */
  REAR_JAW("rear jaw"),
  FRONT_JAW("front jaw"),
  SCREW_REAR("screw rear"),
  SCREW_FRONT("screw front"),
  /** From the vise's own columns, or a row of {@code vise_parts} of this name. */
  HANDLE("handle"),
  /** A row of {@code vise_parts}; it takes the row's name. */
  ROW(""),
  /** The workpiece of a job, held between the jaws. */
  WORK("work"),
  /** One of the bolts of the mount in use. */
  BOLT("bolts"),
  /** One of the strap clamps beside the base. */
  CLAMP("clamps"),
  /**
   * The base turned with all above it, of a vise that stands turned on its swivel base; it ranks as
   * the base.
   */
  BODY("turned body");

  private final String word;

  PartRole(String word) {
    this.word = word;
  }

  /** The name printed in reports; empty for a row. */
  public String word() {
    return word;
  }
}
