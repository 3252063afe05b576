package org.jawroom.report.wording;

import java.util.List;

/** The limits of what a report states; every report prints at least the first of them. */
public final class Cautions {

  /** The usual three, for places with room for one line. */
  public static final String BRIEF =
      "This does not replace the check on the machine. Lock out before reaching in. Local codes and the"
          + " machine maker's instructions come first.";

  /** The full list. */
  public static final List<String> ALL =
      List.of(
          "This does not replace the check on the machine. Before the first cut, and after any change, move"
              + " every axis slowly through its whole travel with the vise bolted down, and look.",
          "Lock the machine out before you reach in to measure, to bolt a vise down or to look: switched off,"
              + " locked, and tried.",
          "Local codes and the instructions of the machine's maker come first. So does what the vise's maker"
              + " says of bolts, torque and lifting.",
          "Clear means the bare vise: no tool, no part, no stops, no hoses and no chips. Tools and parts need a"
              + " check of their own.",
          "Only what is listed can be hit. A machine's row says what nobody looked for; it may be there all the"
              + " same. \"Nothing listed to hit\" is no promise of room.",
          "A blank is not zero: what was not measured is unknown, and so is every pairing that hangs on it.",
          "A tolerance taken as 0 means that the row has neither a tolerance nor what was measured with. Such a"
              + " margin may be less than it looks.",
          "The verdict measure means that it is clear only if the readings are better than stated. Measure again"
              + " before you decide.",
          "A limited opening holds only while the jaws stay within it, cutting and loading alike.",
          "A handle that the tables do not list as left on is taken off before cutting; so do that.",
          "Margins hold for the place, the orientation and the slots listed in Pairings. Held elsewhere, the vise"
              + " may hit something. The roomiest place has the largest margin there is, whatever the spindle"
              + " reaches there.",
          "An awkward vise hits nothing, but a hand may be caught where the handle comes near something.",
          "Gaps are as they were measured. Covers, doors and lines that have since been moved, bent or replaced"
              + " must be measured again.",
          "Too heavy counts the vise alone: the part and what holds it come on top. Lift with two, or with a"
              + " hoist.",
          "Figures are rounded toward less clearance. They are no better than the measurements behind them.");

  private Cautions() {}
}
