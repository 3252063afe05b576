package org.jawroom.shop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * What gaps found on the machines say of the tables.
 *
 * @param suspects the readings that may be wrong
 * @param agreeing the checks of each pairing all of whose checks agree
 */
public record Evidence(List<Measurand> suspects, List<Check> agreeing) {

  /** Nothing was checked. */
  public static final Evidence NONE = new Evidence(List.of(), List.of());

  /** What {@code checked} says where nobody is named. */
  public static final String NOBODY = "not stated by whom";

  public Evidence {
    suspects = List.copyOf(suspects);
    agreeing = List.copyOf(agreeing);
  }

  /**
   * The suspects that a pairing needs. Every reading in the rows of its machine and its vise counts
   * as needed: one too many only asks for another look.
   */
  public List<Measurand> suspects(Machine machine, Vise vise) {
    return suspects.isEmpty()
        ? suspects
        : suspects.stream().filter(one -> one.isOf(machine.name(), vise.row())).toList();
  }

  /** The same with the suspects of one row under another name, too, by which it is printed. */
  public Evidence alsoCalled(String name, String printed) {
    return name.equals(printed)
        ? this
        : new Evidence(
            Stream.concat(
                    suspects.stream(),
                    suspects.stream()
                        .filter(one -> one.name().equals(name))
                        .map(one -> new Measurand(one.table(), printed, one.item(), one.column())))
                .toList(),
            agreeing);
  }

  /**
   * Who checked a pairing on the machine, and when, if all its checks agree and were made with the
   * vise at one place, each of its two measures within the tolerance of the check. Where a gap
   * found is smaller than the required clearance, nobody is named: only its tolerance lets it
   * agree.
   *
   * @param clearance required from guards without one of their own
   * @param x of the vise frame's origin in the table frame, {@code y} likewise
   */
  public Optional<String> checked(
      long clearance, Machine machine, Vise vise, Orientation turn, long x, long y) {
    if (agreeing.isEmpty()) {
      return Optional.empty();
    }
    List<Check> own =
        agreeing.stream()
            .filter(
                check ->
                    check.machine().name().equals(machine.name())
                        && check.vise().name().equals(vise.name()))
            .toList();
    if (own.isEmpty()
        || !own.stream()
            .allMatch(check -> isAt(check, machine, turn, x, y) && !check.isBelow(clearance))) {
      return Optional.empty();
    }
    String who =
        own.stream()
            .map(check -> check.provenance().measured())
            .filter(text -> !text.isBlank())
            .distinct()
            .collect(Collectors.joining("; "));
    return Optional.of(who.isEmpty() ? NOBODY : who);
  }

  private static boolean isAt(Check check, Machine machine, Orientation turn, long x, long y) {
    TapedPlace there = TapedPlace.of(machine, check.vise(), turn, x, y);
    long tolerance = check.provenance().tolerance();
    return check.handleTo() == turn
        && Math.abs(check.fromLeft() - there.fromLeft()) <= tolerance
        && Math.abs(check.fromFront() - there.fromFront()) <= tolerance;
  }
}
