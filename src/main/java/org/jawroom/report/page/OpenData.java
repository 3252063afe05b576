package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.checks.expected.OpenTerm;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.report.page.PageValues.Facts;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The page's data of readings known within bounds: their ranges, and what they move.
 *
 * <p>A move is [reading, end, halves]: by half of {@code halves} the end shifts for each unit by
 * which the reading grows. Ends are counted as in the data: even ones are low, odd ones high.
 */
final class OpenData {
  private OpenData() {}

  /**
   * The open readings that drawn pairings need.
   *
   * @param pairings of one machine or one vise
   */
  static List<Object> readings(List<PagePairing> pairings, Predicate<OpenReading> which) {
    return drawn(pairings)
        .flatMap(
            pairing ->
                pairing.outcome().openReadings().stream()
                    .filter(which)
                    .map(reading -> reading(pairing.outcome().vise(), reading)))
        .distinct()
        .toList();
  }

  private static Stream<PagePairing> drawn(List<PagePairing> pairings) {
    return pairings.stream().filter(pairing -> !pairing.fastened().isEmpty());
  }

  /** {@code fixed}: the page cannot suppose a value, since more than faces depends on it. */
  private static Object reading(Vise vise, OpenReading reading) {
    Interval values =
        BlankGaps.isGap(reading.column())
            ? Certainty.positions(reading.value())
            : Certainty.sizes(reading.value());
    return new Facts()
        .with("name", reading.measurand().reading())
        .with("range", Arrays.asList(end(values.lo()), end(values.hi())))
        .with("fixed", isFixed(vise, reading))
        .map();
  }

  private static Long end(long value) {
    return Certainty.hasEnd(value) ? value : null;
  }

  private static boolean isFixed(Vise vise, OpenReading reading) {
    if (vise.isTurned() && !reading.isOfMachine()) {
      // Strips cover what turns; they are worked out, not moved.
      return true;
    }
    return switch (reading.column()) {
      case SLOT_WIDTH, SLOT_PITCH, BOLT_SPACING, BOLT_U, BOLT_HOLE_U, BOLT_HOLE_V, HOLE_U, HOLE_V ->
          true;
      // With a single opening a part is the smallest box that holds it closed and open.
      case REAR_PROJECTION_CLOSED,
          REAR_PROJECTION_OPEN,
          FRONT_PROJECTION_CLOSED,
          FRONT_PROJECTION_OPEN ->
          vise.opening().length() == 0;
      default -> false;
    };
  }

  /** The moves of a part: its ends closed, then open, along u, then along v and w. */
  static List<Object> moves(Vise vise, Part part) {
    List<Object> moves = new ArrayList<>();
    if (!vise.isTurned() && part.role() != PartRole.BOLT && part.row().isEmpty()) {
      for (int end = 0; end < 8; end++) {
        Axis axis = end < 4 ? Axis.X : end < 6 ? Axis.Y : Axis.Z;
        boolean open = end == 2 || end == 3;
        add(moves, end, OpenTerm.ofPart(vise, part, open, axis, end % 2 == 1));
      }
    }
    return moves;
  }

  /**
   * The moves of a guard: its faces along x, then along y.
   *
   * @param vise any
   */
  static List<Object> moves(Settings settings, Machine machine, Vise vise, Guard guard) {
    List<Object> moves = new ArrayList<>();
    for (int end = 0; end < 4; end++) {
      Axis axis = end < 2 ? Axis.X : Axis.Y;
      add(moves, end, OpenTerm.ofGuard(settings, machine, vise, guard, axis, end % 2 == 1));
    }
    return moves;
  }

  private static void add(List<Object> moves, int end, List<OpenTerm> terms) {
    for (OpenTerm term : terms) {
      moves.add(List.of(term.reading().reading(), end, term.halves()));
    }
  }
}
