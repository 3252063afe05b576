package org.jawroom.checks.expected;

import org.jawroom.geometry.Axis;
import org.jawroom.shop.value.Measurand;

/** A quantity that an expected gap depends on: a reading, or the error of one end or face. */
public sealed interface Unknown {

  /** The value of a reading of the tables. */
  record ReadingValue(Measurand measurand) implements Unknown {}

  /**
   * The error of one end of a part, the same in every check that meets it.
   *
   * @param axis of the vise frame: X for u, Y for v, Z for w
   * @param high whether it is the end at the greater coordinate
   */
  record PartEnd(String vise, String part, Axis axis, boolean high) implements Unknown {}

  /** The error of one face of a guard in the table frame, likewise. */
  record GuardFace(String machine, String guard, Axis axis, boolean high) implements Unknown {}
}
