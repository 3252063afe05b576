package org.jawroom.report.wording.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Shop;

/**
 * What the shop already has that would serve instead.
 *
 * @param vises for each machine, the vises in the house that fit on it, in words, the best first
 * @param machines for each vise, the machines in the house on which it fits, in the same order
 */
public record Elsewhere(List<String> vises, List<String> machines) {

  private static final int MOST = 3;

  /** {@code outcomes}: one for each pairing, machines then vises in the order of {@code shop}. */
  public static Elsewhere of(Shop shop, List<Outcome> outcomes, PeopleUnit unit) {
    int across = shop.vises().size();
    List<String> vises = new ArrayList<>();
    for (int m = 0; m < shop.machines().size(); m++) {
      List<Outcome> its = outcomes.subList(m * across, (m + 1) * across);
      vises.add(vises(PairingMerit.bestFirst(shop.settings(), its, PairingMerit.OF_VISES), unit));
    }
    List<String> machines = new ArrayList<>();
    for (int v = 0; v < across; v++) {
      List<Outcome> its = new ArrayList<>();
      for (int m = 0; m < shop.machines().size(); m++) {
        its.add(outcomes.get(m * across + v));
      }
      machines.add(
          machines(PairingMerit.bestFirst(shop.settings(), its, PairingMerit.OF_MACHINES), unit));
    }
    return new Elsewhere(vises, machines);
  }

  /**
   * Lists the vises in the house that fit, from the outcomes on one machine in order of merit;
   * {@code none} if there are none.
   */
  public static String vises(List<Outcome> onMachine, PeopleUnit unit) {
    return words(vises(onMachine), outcome -> outcome.vise().name(), unit);
  }

  /** Lists the machines in the house on which one vise fits, likewise. */
  public static String machines(List<Outcome> ofVise, PeopleUnit unit) {
    return words(machines(ofVise), outcome -> outcome.machine().name(), unit);
  }

  /** The first few, in the order given. */
  public static List<Outcome> vises(List<Outcome> onMachine) {
    return best(onMachine.stream().filter(outcome -> outcome.vise().quantity() > 0));
  }

  /** The first few, in the order given. */
  public static List<Outcome> machines(List<Outcome> ofVise) {
    return best(ofVise.stream().filter(outcome -> !outcome.machine().candidate()));
  }

  private static List<Outcome> best(Stream<Outcome> owned) {
    return owned.filter(outcome -> outcome.verdict() == Verdict.FITS).limit(MOST).toList();
  }

  private static String words(List<Outcome> best, Function<Outcome, String> name, PeopleUnit unit) {
    String words =
        best.stream()
            .map(
                outcome ->
                    name.apply(outcome)
                        + " ("
                        + unit.brief(outcome.margin().getAsLong(), Rounding.DOWN)
                        + ")")
            .collect(Collectors.joining(", "));
    return words.isEmpty() ? "none" : words;
  }
}
