package org.jawroom.report.explain;

import java.util.Comparator;
import java.util.List;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.advice.remedy.RemedyKind;

/** Sorts remedies by effort, then by amount within a kind; the ends of travel are one kind. */
final class RemedyOrder {
  private static final Comparator<Remedy> BY_EFFORT =
      Comparator.comparing((Remedy remedy) -> kind(remedy.kind()))
          .thenComparingLong(remedy -> remedy.amount().orElse(0));

  private RemedyOrder() {}

  /** Those that leave the clearance as it is, the least effort first. */
  static List<Remedy> changes(List<Remedy> remedies) {
    return remedies.stream()
        .filter(remedy -> remedy.kind() != RemedyKind.CLEARANCE)
        .sorted(BY_EFFORT)
        .toList();
  }

  private static RemedyKind kind(RemedyKind kind) {
    return switch (kind) {
      case TRAVEL_BACK, TRAVEL_LEFT, TRAVEL_RIGHT -> RemedyKind.TRAVEL_FRONT;
      default -> kind;
    };
  }
}
