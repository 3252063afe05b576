package org.jawroom.properties;

import java.util.Optional;
import java.util.Set;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Settings;

/** Whether the outcome of a harder pairing is no better than that of an easier one. */
public final class NeverBetter {

  /** Below the margin of any placement. */
  private static final long NOWHERE = -2 * Length.ENDLESS;

  private static final Set<Verdict> HOPELESS = Set.of(Verdict.NO_PLACE, Verdict.NO_MOUNT);

  private NeverBetter() {}

  /** Whether a blank leaves its margins out. */
  public static boolean blank(Outcome outcome) {
    return outcome.verdict() == Verdict.UNKNOWN
        || outcome.verdict() == Verdict.NO_PLACE && outcome.bestMargin().isEmpty();
  }

  /** The best margin of a pairing without blanks: endless where nothing can be hit. */
  static long bestMargin(Outcome outcome) {
    return outcome.verdict() == Verdict.NO_MOUNT
        ? NOWHERE
        : outcome.bestMargin().orElse(Length.ENDLESS);
  }

  /** Whether both best margins include hand room, or neither: only those of a fits do. */
  public static boolean isOfOneKind(Outcome one, Outcome other) {
    return (one.verdict() == Verdict.FITS) == (other.verdict() == Verdict.FITS);
  }

  /** What is better in {@code harder} than in {@code easier}; empty if, as must be, nothing is. */
  public static Optional<String> complaint(Outcome easier, Outcome harder) {
    Verdict before = easier.verdict();
    Verdict after = harder.verdict();
    if (!mayBecome(before, after, blank(easier) || blank(harder))) {
      return Optional.of("verdict " + after + ", easier " + before);
    }
    if (blank(easier) || blank(harder)) {
      return Optional.empty();
    }
    if (isOfOneKind(easier, harder) && bestMargin(harder) > bestMargin(easier)) {
      return Optional.of("best margin " + bestMargin(harder) + ", easier " + bestMargin(easier));
    }
    if (before == Verdict.LIMITED
        && after == Verdict.LIMITED
        && easier.recommended().orElseThrow().settable()
        && harder.recommended().orElseThrow().settable()) {
      // Settable positions come first, however narrow, so only their ranges compare.
      long width = harder.usableOpening().orElseThrow().length();
      // Both ends are drawn in to the grain before they are reported, by less than one grain each.
      long most = easier.usableOpening().orElseThrow().length() + 2 * Settings.OPENING_GRAIN;
      if (width >= most) {
        return Optional.of("usable " + width + ", easier " + easier.usableOpening().get());
      }
    }
    return Optional.empty();
  }

  private static boolean mayBecome(Verdict before, Verdict after, boolean blank) {
    return switch (before) {
      case NO_MOUNT -> after == Verdict.NO_MOUNT;
      case NO_PLACE -> HOPELESS.contains(after);
      case LIMITED -> blank || after == Verdict.LIMITED || HOPELESS.contains(after);
      case MEASURE -> blank || !after.isClear();
      case AWKWARD -> after != Verdict.FITS;
      case FITS, UNKNOWN -> true;
    };
  }
}
