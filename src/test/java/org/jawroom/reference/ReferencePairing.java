package org.jawroom.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.ReferenceOutcome.Place;
import org.jawroom.reference.ReferenceOutcome.Usable;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/** The entry point of the reference. */
public final class ReferencePairing {
  private static final long PRINTED = Length.MM / 100;

  private ReferencePairing() {}

  /** Solves a pairing as the model defines it. */
  public static ReferenceOutcome solve(Settings settings, Machine machine, Vise vise) {
    RefModel model = new RefModel(settings, machine, vise, false);
    RefChoice whole = new RefChoice(model, model.wholeOpening());
    RefOpening opening = new RefOpening(model);
    Verdict verdict = verdict(model, whole, opening);
    if (!model.missing.isEmpty()) {
      boolean hopeless = verdict == Verdict.NO_MOUNT || verdict == Verdict.NO_PLACE;
      return hopeless
          ? bare(model, verdict)
          : new ReferenceOutcome(
              Verdict.UNKNOWN,
              OptionalLong.empty(),
              Optional.empty(),
              Optional.empty(),
              OptionalLong.empty(),
              Optional.empty(),
              false,
              List.copyOf(model.missing));
    }
    if (verdict == Verdict.NO_MOUNT) {
      return bare(model, verdict);
    }
    Span openings = model.wholeOpening();
    long best = whole.bestMargin();
    RefChoice choice = whole;
    Optional<Usable> usable = Optional.empty();
    if (verdict == Verdict.FITS) {
      usable =
          Optional.of(new Usable(Fraction.of(openings.lo()), Fraction.of(openings.hi()), openings));
    } else if (verdict == Verdict.LIMITED) {
      usable = Optional.of(usable(model, opening.widest()));
      openings = usable.get().printed();
      choice = new RefChoice(model, openings);
    }
    Place place = new RefDetails(model, openings, choice.recommended()).place();
    return new ReferenceOutcome(
        verdict,
        best == RefMargin.NO_LIMIT ? OptionalLong.empty() : OptionalLong.of(best),
        Optional.of(place),
        usable,
        room(model),
        load(model),
        toolTooShort(model),
        List.of());
  }

  /**
   * Whether nothing is blank and the vise, on a riser plate of that height, is clear somewhere at
   * every opening.
   */
  public static boolean fitsOnRiser(Settings settings, Machine machine, Vise vise, long height) {
    RefModel model = RefModel.onRiser(settings, machine, vise, height);
    return model.missing.isEmpty() && new RefChoice(model, model.wholeOpening()).somewhereClear();
  }

  /** The verdict with every blank relaxed. */
  private static Verdict verdict(RefModel model, RefChoice whole, RefOpening opening) {
    if (model.regions.isEmpty()) {
      return Verdict.NO_MOUNT;
    }
    if (whole.somewhereClear()) {
      return Verdict.FITS;
    }
    RefModel exact = new RefModel(model.settings, model.machine, model.vise, true);
    if (new RefChoice(exact, model.wholeOpening()).somewhereClear()) {
      return Verdict.MEASURE;
    }
    RefOpening.Range widest = opening.widest();
    Fraction least = Fraction.of(model.settings.leastOpening());
    return widest != null && widest.width().compareTo(least) >= 0
        ? Verdict.LIMITED
        : Verdict.NO_PLACE;
  }

  private static Usable usable(RefModel model, RefOpening.Range widest) {
    Span whole = model.wholeOpening();
    long from = whole.lo();
    long to = whole.hi();
    if (widest.from().compareTo(Fraction.of(from)) != 0) {
      from = -Math.floorDiv(-widest.from().ceil(), PRINTED) * PRINTED;
    }
    if (widest.to().compareTo(Fraction.of(to)) != 0) {
      to = Math.floorDiv(widest.to().floor(), PRINTED) * PRINTED;
    }
    return new Usable(widest.from(), widest.to(), new Span(from, to));
  }

  private static ReferenceOutcome bare(RefModel model, Verdict verdict) {
    return new ReferenceOutcome(
        verdict,
        OptionalLong.empty(),
        Optional.empty(),
        Optional.empty(),
        room(model),
        load(model),
        toolTooShort(model),
        List.of());
  }

  private static OptionalLong room(RefModel model) {
    if (!model.machine.noseMax().isKnown()) {
      return OptionalLong.empty();
    }
    long jaw = Math.max(model.vise.jaws().height(), model.vise.jaws().platesHeight());
    return OptionalLong.of(model.machine.noseMax().length() - model.vise.base().bedHeight() - jaw);
  }

  private static boolean toolTooShort(RefModel model) {
    OptionalLong tool = model.settings.shortestTool();
    if (tool.isEmpty() || !model.machine.noseMax().isKnown()) {
      return false;
    }
    long overBed = model.machine.noseMax().length() - model.vise.base().bedHeight();
    return overBed < tool.getAsLong();
  }

  private static Optional<java.math.BigDecimal> load(RefModel model) {
    return model.machine.maxLoad().flatMap(most -> model.vise.mass().map(most::subtract));
  }
}
