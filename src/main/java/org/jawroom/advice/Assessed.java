package org.jawroom.advice;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Column;
import org.jawroom.shop.Job;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/**
 * One machine beside what the shop owns: machines of status owned, itself aside, and vises of
 * quantity 1 or more. Everything in input order.
 *
 * @param vises one for each kind of vise owned
 * @param held the jobs that it holds with some vise owned; {@code unknown}: with none, but a blank
 *     leaves it open with one; {@code barred}: that the tables do not let it run
 * @param onlyHere of {@code held} those that no owned machine holds; {@code perhapsOnlyHere} of
 *     {@code unknown}
 * @param nuts how the nuts for the owned machines' slots go with its slots; empty where its width
 *     is blank
 * @param room none where no bolt goes into its slots, or no vise owned has a size that is known
 * @param roomAtZero the same with every blank gap as 0, which is what is sure of it if none turns
 *     out to be less; empty where no gap is blank
 * @param roomBlanks the blanks without which {@code room} is at best
 * @param stack the tallest that vise and part together may be under the given tool: nose_max less
 *     tool and required clearance; may be negative; empty where nose_max is blank
 * @param questions what to ask of its blanks
 */
public record Assessed(
    Machine machine,
    List<Advice> vises,
    List<Job> held,
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

  /** The vises of that verdict on it. */
  public List<Vise> vises(Verdict verdict) {
    return vises.stream()
        .map(Advice::outcome)
        .filter(outcome -> outcome.verdict() == verdict)
        .map(outcome -> outcome.vise())
        .toList();
  }

  /**
   * The vises of which a blank leaves open whether they fit, but not those that no answer would let
   * fit.
   */
  public List<Vise> mayFit() {
    return vises.stream()
        .filter(vise -> vise.outcome().verdict() == Verdict.UNKNOWN)
        .filter(
            vise -> vise.limits().stream().noneMatch(limit -> limit.relation() == Relation.NEVER))
        .map(vise -> vise.outcome().vise())
        .toList();
  }

  /** Vises and jobs together of which a blank leaves open whether they go. */
  public int open() {
    return vises(Verdict.UNKNOWN).size() + unknown.size();
  }
}
