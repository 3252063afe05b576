package org.jawroom.report.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.rows.PairingRow;
import org.jawroom.report.wording.Words;

/**
 * One compared pairing in words, lengths in the chosen unit. If rounding hides a change, both
 * figures appear in millimetres as in {@code pairings.csv}.
 */
record ComparisonWords(PeopleUnit unit) {
  private static final String TO = " → ";

  /** {@code fits → limited}. */
  static String verdicts(ComparedPair pair) {
    String old = verdict(pair.old());
    String now = verdict(pair.now());
    return old.equals(now) ? "still " + now : old + TO + now;
  }

  private static String verdict(PairingRow row) {
    return row.verdict().code() + (row.hasNothingListed() ? " (nothing listed to hit)" : "");
  }

  /** Margins, usable opening, tapping and what limits now; empty if there is none of them. */
  String facts(ComparedPair pair) {
    List<String> facts = new ArrayList<>();
    if (areLimited(pair)) {
      margin("margin over the full opening", pair.old().bestMargin(), pair.now().bestMargin())
          .ifPresent(facts::add);
      if (showsPlaced(pair)) {
        margin("within the usable opening", pair.old().margin(), pair.now().margin())
            .ifPresent(facts::add);
      }
    } else {
      margin("margin", pair.old().margin(), pair.now().margin()).ifPresent(facts::add);
      if (showsRoomiest(pair)) {
        margin("roomiest", pair.old().bestMargin(), pair.now().bestMargin()).ifPresent(facts::add);
      }
    }
    usable(pair).ifPresent(facts::add);
    settable(pair).ifPresent(facts::add);
    why(pair).ifPresent(facts::add);
    return String.join("; ", facts);
  }

  private static boolean areLimited(ComparedPair pair) {
    return pair.old().verdict() == Verdict.LIMITED && pair.now().verdict() == Verdict.LIMITED;
  }

  /** Printed if the margin did not change, for want of another reason to list the pairing. */
  private static boolean showsRoomiest(ComparedPair pair) {
    return pair.old().margin().equals(pair.now().margin())
        && !pair.old().bestMargin().equals(pair.now().bestMargin());
  }

  private static Optional<String> settable(ComparedPair pair) {
    Optional<Boolean> old = pair.old().settable();
    Optional<Boolean> now = pair.now().settable();
    return old.isEmpty() || now.isEmpty() || old.equals(now)
        ? Optional.empty()
        : Optional.of(now.get() ? "can now be tapped square" : "can no longer be tapped square");
  }

  /**
   * Whether to print the margin within the usable opening. At the widest opening it is nearly 0, so
   * a change that rounding hides is printed only if nothing else changed.
   */
  private boolean showsPlaced(ComparedPair pair) {
    OptionalLong old = pair.old().margin();
    OptionalLong now = pair.now().margin();
    if (old.isEmpty() || now.isEmpty() || old.equals(now)) {
      return false;
    }
    boolean only =
        pair.old().bestMargin().equals(pair.now().bestMargin())
            && pair.old().usable().equals(pair.now().usable());
    return only || !margin(old).equals(margin(now));
  }

  private Optional<String> margin(String what, OptionalLong old, OptionalLong now) {
    if (old.isPresent() && now.isPresent()) {
      String stayed = what + " " + margin(now) + " " + unit.word() + " as before";
      return Optional.of(old.equals(now) ? stayed : what + " " + margins(old, now));
    }
    return now.isPresent()
        ? Optional.of(what + " now " + margin(now) + " " + unit.word())
        : old.isPresent()
            ? Optional.of(what + " was " + margin(old) + " " + unit.word())
            : Optional.empty();
  }

  private String margins(OptionalLong old, OptionalLong now) {
    if (margin(old).equals(margin(now))) {
      return Figures.millimetres(old.getAsLong(), Rounding.DOWN)
          + TO
          + Figures.millimetres(now.getAsLong(), Rounding.DOWN)
          + " mm";
    }
    return margin(old) + TO + margin(now) + " " + unit.word();
  }

  private String margin(OptionalLong margin) {
    return unit.text(margin.getAsLong(), Rounding.DOWN);
  }

  /** Printed if it changed; a range that only one run has is printed only for a limited pairing. */
  private Optional<String> usable(ComparedPair pair) {
    Optional<PairingRow.Usable> old = pair.old().usable();
    Optional<PairingRow.Usable> now = pair.now().usable();
    if (old.isPresent() && now.isPresent()) {
      return old.equals(now)
          ? Optional.empty()
          : Optional.of("usable " + ranges(old.get(), now.get()));
    }
    if (pair.now().verdict() == Verdict.LIMITED) {
      return now.map(range -> "usable now " + range(range));
    }
    return pair.old().verdict() == Verdict.LIMITED
        ? old.map(range -> "usable was " + range(range))
        : Optional.empty();
  }

  private String ranges(PairingRow.Usable old, PairingRow.Usable now) {
    return range(old).equals(range(now))
        ? exactly(old) + TO + exactly(now) + " mm"
        : range(old) + TO + range(now);
  }

  private String range(PairingRow.Usable range) {
    return unit.brief(range.from(), Rounding.UP) + " to " + unit.brief(range.to(), Rounding.DOWN);
  }

  private static String exactly(PairingRow.Usable range) {
    return Figures.millimetres(range.from(), Rounding.UP)
        + " to "
        + Figures.millimetres(range.to(), Rounding.DOWN);
  }

  private static Optional<String> why(ComparedPair pair) {
    if (pair.now().verdict() == Verdict.UNKNOWN) {
      return Optional.of("left open by " + String.join(", ", pair.now().missing()));
    }
    return pair.now().limiting().map(limiting -> how(pair) + "limited by " + limit(limiting));
  }

  private static String how(ComparedPair pair) {
    Optional<PairingRow.Limiting> old = pair.old().limiting();
    return old.isEmpty() ? "" : old.equals(pair.now().limiting()) ? "still " : "now ";
  }

  private static String limit(PairingRow.Limiting limiting) {
    return Words.limit(limiting.guard(), limiting.part(), limiting.situation(), limiting.opening())
        .replace(" · ", " - ");
  }
}
