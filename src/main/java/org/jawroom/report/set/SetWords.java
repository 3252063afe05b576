package org.jawroom.report.set;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** A set of vises on a machine in words, lengths in the chosen unit. */
public record SetWords(PeopleUnit unit, Settings settings) {

  /** How the outcome is marked; with a caveat if something must be minded. */
  public Finding finding(SetOutcome outcome) {
    return switch (outcome.fits()) {
      case YES ->
          outcome.least().isPresent() && minds(outcome).isEmpty() ? Finding.FITS : Finding.FITS_BUT;
      case NO -> Finding.NO_PLACE;
      case UNKNOWN -> Finding.UNKNOWN;
    };
  }

  /** {@code ● fits}, {@code × does not fit}, {@code ? unknown}. */
  public String signed(SetOutcome outcome) {
    String word =
        switch (outcome.fits()) {
          case YES -> "fits";
          case NO -> "does not fit";
          case UNKNOWN -> "unknown";
        };
    return finding(outcome).sign() + " " + word;
  }

  /** The verdict at the head of a card: what is wrong before any clearance. */
  public String stamp(SetOutcome outcome) {
    if (isTooHeavy(outcome)) {
      return "too heavy";
    }
    if (isInDoubt(outcome)) {
      return "fits, in doubt";
    }
    return minds(outcome).isEmpty() ? "fits" : "fits, with a caveat";
  }

  /** Whether a pairing of it needs a reading that checks say may be wrong. */
  public static boolean isInDoubt(SetOutcome outcome) {
    return outcome.stands().stream().anyMatch(stand -> !stand.placed().inDoubt().isEmpty());
  }

  /** {@code 2 × plain 100, wide 150}. */
  public static String vises(ViseSet set) {
    return set.members().stream()
        .map(member -> (member.count() > 1 ? member.count() + " × " : "") + member.vise().name())
        .collect(Collectors.joining(", "));
  }

  /** A numbered line for each vise, or what keeps the set from standing there. */
  public List<String> lines(SetOutcome outcome) {
    return switch (outcome.fits()) {
      case YES ->
          IntStream.range(0, outcome.stands().size())
              .mapToObj(at -> (at + 1) + ". " + stand(outcome, outcome.stands().get(at)))
              .toList();
      case NO -> outcome.hindrances().stream().map(SetWords::hindrance).toList();
      case UNKNOWN -> List.of("readings that decide it are blank or known only within bounds");
    };
  }

  /**
   * {@code plain 100, handle to the front, base's left side 61.0 from the table's left edge, …}.
   */
  private String stand(SetOutcome outcome, SetOutcome.Stand stand) {
    Recommendation place = stand.place();
    // The tape's step must leave the least of the margins and the gaps.
    long spare = outcome.least().orElse(Long.MAX_VALUE);
    List<String> words =
        new ArrayList<>(new TapeWords(unit, outcome.machine(), stand.vise()).of(place, spare));
    stand.nextGap().ifPresent(gap -> words.add(unit.brief(gap, Rounding.DOWN) + " to the next"));
    return stand.vise().name() + ": " + String.join(", ", words);
  }

  private static String hindrance(SetOutcome.Hindrance hindrance) {
    String vises = hindrance.vises().stream().map(Vise::name).collect(Collectors.joining(", "));
    return switch (hindrance.kind()) {
      case NO_MOUNT -> "neither bolts nor clamps hold " + vises;
      case NO_PLACE -> vises + ": no place over the full opening, even alone";
      case SIDE_BY_SIDE -> "each stands there alone, but not all of them side by side";
    };
  }

  /** What must be minded where the set fits: of each vise, and of all together. */
  public List<String> minds(SetOutcome outcome) {
    List<String> minds = new ArrayList<>();
    tooHeavy(outcome).ifPresent(minds::add);
    for (SetOutcome.Stand stand : outcome.stands()) {
      String of = stand.vise().name() + ": ";
      marks(outcome.machine(), stand).stream()
          .map(of::concat)
          .filter(mark -> !minds.contains(mark))
          .forEach(minds::add);
    }
    return minds;
  }

  private List<String> marks(Machine machine, SetOutcome.Stand stand) {
    Recommendation place = stand.place();
    CaveatWords caveats = new CaveatWords(unit);
    List<String> marks = new ArrayList<>(caveats.of(stand.placed()));
    if (!stand.handRoom()) {
      marks.add("awkward: " + caveats.hand(stand.placed()));
    }
    marks.addAll(new Words(unit).placeMarks(machine, place));
    return marks;
  }

  /** What the vises weigh, as far as that is known. */
  private static BigDecimal together(ViseSet set) {
    return set.members().stream()
        .flatMap(
            member ->
                member.vise().mass().stream()
                    .map(mass -> mass.multiply(BigDecimal.valueOf(member.count()))))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static boolean isTooHeavy(SetOutcome outcome) {
    return outcome
        .machine()
        .maxLoad()
        .filter(load -> load.compareTo(together(outcome.set())) < 0)
        .isPresent();
  }

  private static Optional<String> tooHeavy(SetOutcome outcome) {
    Optional<BigDecimal> load = outcome.machine().maxLoad();
    boolean allKnown =
        outcome.set().members().stream().allMatch(one -> one.vise().mass().isPresent());
    if (isTooHeavy(outcome)) {
      return Optional.of(
          "too heavy: "
              + Figures.kilograms(together(outcome.set()))
              + " kg or more on a table that bears "
              + Figures.kilograms(load.get())
              + " kg");
    }
    return load.isPresent() && !allKnown
        ? Optional.of("not every mass is known: check the load on the table")
        : Optional.empty();
  }
}
