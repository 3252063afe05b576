package org.jawroom.report;

import org.jawroom.placement.Miss;

/** Why a mount does not hold, in words. */
final class MissWords {
  private MissWords() {}

  /** {@code handle to the left, base bolts: 0.4 short at the left bolt}. */
  static String of(PeopleUnit unit, Miss miss) {
    String mount = miss.mount().isEmpty() ? "" : ", " + miss.mount();
    return "handle to the " + miss.turn().word() + mount + ": " + why(unit, miss);
  }

  private static String why(PeopleUnit unit, Miss miss) {
    String amount = unit.fine(miss.shortBy(), Rounding.UP);
    return switch (miss.cause()) {
      case ACROSS_SLOTS -> amount + " short of a slot at the " + miss.bolt() + " bolt";
      case ALONG_SLOTS -> "the slots are " + amount + " too short at the " + miss.bolt() + " bolt";
      case HOLE_TOO_SMALL ->
          "the hole of the " + miss.bolt() + " bolt is " + amount + " smaller than the bolt of this slot";
      case OVERHANG -> "its base would hang over an edge by more than is allowed";
      case NO_SLOT -> "no bolt goes with this table's slots";
      case TURN_NOT_ALLOWED -> "not among the turns of the vise and the machine";
      case NO_BOLTS -> "the vise has no mount";
    };
  }
}
