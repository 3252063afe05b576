package org.jawroom.advice.remedy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.machine.Guard;

/** What a change must bring about to be a remedy. */
enum Goal {
  /** Best margin ≥ 0, without hand room. */
  CLEAR {
    @Override
    boolean isMet(Model changed) {
      return changed.isClear();
    }

    @Override
    List<Region> regions(Model now) {
      return now.regions();
    }
  },
  /** Best margin with hand room ≥ 0: a plain fit of what is awkward now. */
  FITS {
    @Override
    boolean isMet(Model changed) {
      return changed.isClearWithHandRoom();
    }

    @Override
    List<Region> regions(Model now) {
      return now.regionsWithHandRoom();
    }
  };

  abstract boolean isMet(Model changed);

  /** The regions whose pairs ask for what the goal asks for. */
  abstract List<Region> regions(Model now);

  /** The remedy whose change makes a pairing clear. */
  static Remedy reached(
      RemedyKind kind,
      Optional<Guard> guard,
      Optional<Direction> way,
      OptionalLong amount,
      Model changed) {
    boolean fits = changed.isClearWithHandRoom();
    return new Remedy(
        kind,
        guard,
        way,
        amount,
        fits ? Verdict.FITS : Verdict.AWKWARD,
        (fits ? changed.roomiestWithHandRoom() : changed.roomiest()).orElseThrow());
  }
}
