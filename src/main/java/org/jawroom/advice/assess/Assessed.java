package org.jawroom.advice.assess;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.Relation;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Job;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * One machine compared with what the shop owns: other machines of status owned, and vises of
 * quantity 1 or more. Everything in input order.
 *
 * @param vises one per kind of vise owned, turned on its swivel base only where it has no place
 *     with its jaws square
 * @param best the best of them on it; see {@link PairingMerit}
 * @param held the jobs that it holds with some owned vise; {@code unknown}: held with none, but a
 *     blank leaves it open with at least one; {@code barred}: jobs that the tables do not allow on
 *     it
 * @param unchecked the jobs of {@code held} that no owned vise holds on it without something
 *     unchecked
 * @param inDoubt the jobs of {@code held} that every owned vise holds on it in doubt only
 * @param onlyHere the jobs of {@code held} that no owned machine holds; {@code perhapsOnlyHere}
 *     those of {@code unknown}
 * @param nuts how the nuts for the owned machines' slots go with its slots; empty if its slot width
 *     is blank
 * @param room empty if no bolt goes into its slots, or if no owned vise has a known size
 * @param roomAtZero the same with every open gap at its least, a blank one as 0: the room that is
 *     certain if no blank gap turns out negative; empty if no gap is open
 * @param roomBlanks the blanks that make {@code room} an upper bound
 * @param stack greatest height of vise and workpiece together under the given tool: nose_max less
 *     tool and required clearance; may be negative; empty if nose_max is blank
 * @param questions what to ask about its blanks
 */
public record Assessed(
    Machine machine,
    List<Advice> vises,
    Optional<PairingMerit> best,
    List<Job> held,
    List<Job> unchecked,
    List<Job> inDoubt,
    List<Job> unknown,
    List<Job> barred,
    List<Job> onlyHere,
    List<Job> perhapsOnlyHere,
    List<NutFit> nuts,
    List<Room> room,
    List<Room> roomAtZero,
    List<Column> roomBlanks,
    OptionalLong stack,
    List<Question> questions) {
  public Assessed {
    vises = List.copyOf(vises);
    held = List.copyOf(held);
    unchecked = List.copyOf(unchecked);
    inDoubt = List.copyOf(inDoubt);
    unknown = List.copyOf(unknown);
    barred = List.copyOf(barred);
    onlyHere = List.copyOf(onlyHere);
    perhapsOnlyHere = List.copyOf(perhapsOnlyHere);
    nuts = List.copyOf(nuts);
    room = List.copyOf(room);
    roomAtZero = List.copyOf(roomAtZero);
    roomBlanks = List.copyOf(roomBlanks);
    questions = List.copyOf(questions);
  }

  /** The vises with that verdict on it. */
  public List<Vise> vises(Verdict verdict) {
    return outcomes(verdict).stream().map(Outcome::vise).toList();
  }

  /** The outcomes with that verdict on it. */
  public List<Outcome> outcomes(Verdict verdict) {
    return vises.stream()
        .map(Advice::outcome)
        .filter(outcome -> outcome.verdict() == verdict)
        .toList();
  }

  /** The readings of it and of its vises that checks say may be wrong, without duplicates. */
  public List<Measurand> suspects() {
    return vises.stream().flatMap(vise -> vise.outcome().inDoubt().stream()).distinct().toList();
  }

  /** The vises that stand on it over their whole opening: fits or awkward. */
  public List<Vise> clear() {
    return vises.stream()
        .map(Advice::outcome)
        .filter(outcome -> outcome.verdict().isClear())
        .map(outcome -> outcome.vise())
        .toList();
  }

  /** Whether a kind of vise does, square or turned. */
  public boolean isClear(Vise kind) {
    return clear().stream().anyMatch(vise -> vise.row().equals(kind.row()));
  }

  /** The pieces of the jobs that no owned machine holds. */
  public long piecesOnlyHere() {
    return pieces(onlyHere);
  }

  /** Width of the usable opening of the best vise, half-nanometres; 0 without one. */
  public long opening() {
    return best.map(PairingMerit::opening).orElse(0L);
  }

  /** Width of the jaws of the best vise, likewise. */
  public long jaw() {
    return best.map(PairingMerit::jaw).orElse(0L);
  }

  static long pieces(List<Job> jobs) {
    return jobs.stream().mapToLong(Job::quantity).sum();
  }

  /**
   * The vises whose fit a blank leaves open, except those that no value of a blank would let fit.
   */
  public List<Vise> mayFit() {
    return vises.stream()
        .filter(vise -> vise.outcome().verdict() == Verdict.UNKNOWN)
        .filter(
            vise -> vise.limits().stream().noneMatch(limit -> limit.relation() == Relation.NEVER))
        .map(vise -> vise.outcome().vise())
        .toList();
  }

  /** The number of vises and jobs that a blank leaves open. */
  public int open() {
    return vises(Verdict.UNKNOWN).size() + unknown.size();
  }
}
