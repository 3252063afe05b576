package org.jawroom.report.wording;

import java.util.OptionalLong;
import org.jawroom.placement.pairing.Outcome;

/**
 * What a cell of a matrix shows of a pairing.
 *
 * @param margin of the recommended placement, half-nanometres; empty if there is none, then the
 *     cell has the sign of the finding
 */
public record Shown(Finding finding, OptionalLong margin) {
  public static Shown of(Outcome outcome) {
    return new Shown(Finding.of(outcome), outcome.margin());
  }
}
