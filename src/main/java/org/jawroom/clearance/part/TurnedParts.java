package org.jawroom.clearance.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.clearance.Certainty;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.shop.vise.Swivel;

/**
 * The parts of a vise that stands turned on its swivel base, each as the strips that cover it (see
 * {@link TurnedRectangle}).
 *
 * <p>What a part sweeps over the whole opening range, or over the openings to which the jaws are
 * kept, is turned, so that a strip is the same at every one of them. The base stands as bolted;
 * since the casting on it turns, the same box turned counts as {@link PartRole#BODY}, too. No table
 * says on which side of the pivot plate a row of {@code vise_parts} sits, so that it counts both as
 * it is and turned; the handle turns.
 */
final class TurnedParts {
  private TurnedParts() {}

  private static final Rectangle EVERYWHERE =
      new Rectangle(Interval.around(0, Certainty.FAR), Interval.around(0, Certainty.FAR));

  /** All parts of a vise, turned where they turn. */
  static List<Part> of(List<Part> square, Swivel swivel) {
    return square.stream().flatMap(part -> of(part, swivel)).toList();
  }

  private static Stream<Part> of(Part part, Swivel swivel) {
    return switch (part.role()) {
      case BASE -> Stream.concat(Stream.of(part), strips(part.as(PartRole.BODY), swivel));
      case ROW -> Stream.concat(Stream.of(part), strips(part, swivel));
      default -> strips(part, swivel);
    };
  }

  /** The strips of one part; none if nothing of it is there at any of the openings. */
  static Stream<Part> strips(Part part, Swivel swivel) {
    Interval openings = swivel.within().orElse(part.u().range());
    if (part.u().isEmpty(openings)) {
      return Stream.empty();
    }
    // Part of it may have no end, and then the turned part has none either way. At openings between
    // an end that is known and one that is not, it has none, either; computed, it would be a share.
    if (Stream.of(part.u().over(part.u().range()), part.v())
        .anyMatch(ends -> !Certainty.hasEnd(ends.lo()) || !Certainty.hasEnd(ends.hi()))) {
      return Stream.of(part.strip(EVERYWHERE, Optional.empty()));
    }
    TurnedRectangle outline = swivel.turned(new Rectangle(part.u().over(openings), part.v()));
    return outline.strips().stream().map(strip -> part.strip(strip, Optional.of(outline)));
  }
}
