package org.jawroom.reference.random;

import java.util.List;
import java.util.Optional;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferenceOutcome.Usable;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Settings at the limit of a pairing: the clearance uses up the best margin, or the least opening
 * equals the usable one, or the room to tap is half the play, each to within a nanometre.
 */
final class RandomTouch {
  private RandomTouch() {}

  static Settings touching(Dice dice, Settings settings, Machine machine, Vise vise) {
    ReferenceOutcome outcome = ReferencePairing.solve(settings, machine, vise);
    long off = dice.among(List.of(-2L, -1L, 0L, 0L, 0L, 1L, 2L));
    long clearance = settings.clearance();
    long leastOpening = settings.leastOpening();
    if (outcome.verdict() == Verdict.LIMITED && dice.chance(70)) {
      Usable usable = outcome.usable().get();
      leastOpening = usable.to().minus(usable.from()).floor() + off;
    } else if (outcome.bestMargin().isPresent()) {
      clearance = Math.max(0, clearance + outcome.bestMargin().getAsLong() + off);
    }
    SettingsDraft draft = SettingsDraft.of(settings);
    draft.clearance = Length.floorTo(clearance, Length.NANOMETRE);
    draft.handRoom = 0;
    Optional<List<Long>> play = outcome.recommended().flatMap(ReferenceOutcome.Place::play);
    if (play.isPresent() && dice.chance(40)) {
      int side = dice.among(List.of(0, 2));
      long half = (play.get().get(side) + play.get().get(side + 1)) / 2;
      draft.tapRoom = Length.floorTo(Math.max(0, half + off), Length.NANOMETRE);
    }
    draft.leastOpening =
        Math.max(Settings.OPENING_GRAIN, Length.floorTo(leastOpening, Length.NANOMETRE));
    return draft.build();
  }
}
