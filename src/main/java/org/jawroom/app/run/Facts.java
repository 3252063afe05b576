package org.jawroom.app.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.output.Version;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.plausibility.Warnings;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.plausibility.warning.WarningGroup;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.readings.OpenRows;
import org.jawroom.report.tally.ShortTools;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.row.Note;

/** Collects the facts of a run that the reports list, from the reading and the outcomes. */
public final class Facts {
  /** The most names listed with one default. */
  private static final int NAMES = 100;

  private Facts() {}

  public static RunFacts of(Reading reading, Shop shop, List<Outcome> outcomes) {
    return of(reading, shop, shortTools(outcomes));
  }

  public static RunFacts of(Reading reading, Shop shop, ShortTools shortTools) {
    return of(reading, shop, shortTools, warnings(reading, shop));
  }

  /**
   * The same for reports of these pairings alone: only the warnings about their machines and vises,
   * without what every report of a pairing states by itself.
   */
  public static RunFacts ofPairings(Reading reading, Shop shop, List<Outcome> outcomes) {
    List<String> warnings =
        outcomes.stream()
            .flatMap(one -> warnings(shop.settings(), one.machine(), one.vise()).stream())
            .distinct()
            .toList();
    return of(reading, shop, shortTools(outcomes), warnings);
  }

  private static ShortTools shortTools(List<Outcome> outcomes) {
    ShortTools shortTools = new ShortTools();
    for (int i = 0; i < outcomes.size(); i++) {
      shortTools.add(i, outcomes.get(i));
    }
    return shortTools;
  }

  private static RunFacts of(
      Reading reading, Shop shop, ShortTools shortTools, List<String> warnings) {
    return new RunFacts(
        reading.files().stream()
            .map(file -> new RunFacts.FileRead(file.name(), file.sha256()))
            .toList(),
        reading.settings().stream()
            .map(
                setting ->
                    new RunFacts.Setting(
                        setting.name(), setting.text() + " (" + setting.origin() + ")"))
            .toList(),
        Stream.of(defaults(reading, shop), skipped(reading), leftAlone(reading))
            .flatMap(List::stream)
            .toList(),
        Stream.concat(warnings.stream(), shortTools.lines().stream()).toList(),
        Warnings.ofBlanks(shop).stream().map(Warning::line).toList(),
        PeopleUnits.ofShop(reading),
        Version.number());
  }

  /**
   * The defaults that affect the results, with one line for equal defaults of several rows: {@code
   * machines.csv: slot_first blank, so …: knee mill, bed mill}; of very many rows the first.
   */
  public static List<String> defaults(Reading reading, Shop shop) {
    Set<String> names = new HashSet<>();
    shop.machines().forEach(machine -> names.add("machine " + machine.name()));
    shop.vises().forEach(vise -> names.add("vise " + vise.name()));
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (Note note : reading.notes(Note.Kind.DEFAULT)) {
      Optional<String> row = startingName(note.text(), names);
      String what = row.map(name -> note.text().substring(name.length() + 2)).orElse(note.text());
      List<String> its =
          rows.computeIfAbsent(note.origin() + ": " + what, first -> new ArrayList<>());
      row.ifPresent(name -> its.add(name.substring(name.indexOf(' ') + 1)));
    }
    List<String> lines = new ArrayList<>();
    rows.forEach((what, its) -> lines.add(its.isEmpty() ? what : what + ": " + names(its)));
    return lines;
  }

  private static String names(List<String> all) {
    String first = String.join(", ", all.subList(0, Math.min(all.size(), NAMES)));
    return all.size() > NAMES ? first + " and " + (all.size() - NAMES) + " more" : first;
  }

  /** The name before a colon at which the text starts; names may hold colons. */
  private static Optional<String> startingName(String text, Set<String> names) {
    for (int end = text.indexOf(": "); end >= 0; end = text.indexOf(": ", end + 1)) {
      if (names.contains(text.substring(0, end))) {
        return Optional.of(text.substring(0, end));
      }
    }
    return Optional.empty();
  }

  /** The rows left out as worked examples, one line each. */
  public static List<String> skipped(Reading reading) {
    return reading.notes(Note.Kind.WORKED_ROW).stream().map(Note::toString).toList();
  }

  /** The files and sheets that are no tables, one line each. */
  public static List<String> leftAlone(Reading reading) {
    return reading.notes(Note.Kind.LEFT_ALONE).stream().map(Note::toString).toList();
  }

  /**
   * The warnings about the inputs, one line each; equal ones about several rows are one. Without
   * those of open readings, which the blanks of the run list.
   */
  private static List<String> warnings(Reading reading, Shop shop) {
    List<String> lines = new ArrayList<>(bareNumbers(reading));
    WarningGroup.of(
            Warnings.of(shop).stream()
                .filter(one -> one.seriousness() != Seriousness.OPEN)
                .toList())
        .forEach(group -> lines.addAll(group.lines()));
    return lines;
  }

  /**
   * One line for each machine and vise with open readings, and the pairings that these leave
   * unknown; empty for a shop with too many pairings to solve them for this alone.
   */
  public static Optional<List<String>> openRows(Reading reading, Shop shop) {
    long pairings = (long) shop.machines().size() * shop.vises().size();
    if (pairings > ReportOptions.DETAILED) {
      return Optional.empty();
    }
    ShopPairings solver = ShopPairings.of(shop);
    List<Outcome> outcomes = new ArrayList<>();
    for (int machine = 0; machine < shop.machines().size(); machine++) {
      for (int vise = 0; vise < shop.vises().size(); vise++) {
        outcomes.add(solver.solve(machine, vise));
      }
    }
    return Optional.of(OpenRows.lines(PeopleUnits.ofShop(reading), outcomes));
  }

  /** Rows with bare numbers in another unit than their machine's or vise's, one line each. */
  public static List<String> bareNumbers(Reading reading) {
    return reading.notes(Note.Kind.BARE_NUMBER).stream().map(Note::toString).toList();
  }

  /**
   * The warnings about one machine and one vise, one line each, the most serious first, without
   * what every report of a pairing states by itself.
   */
  public static List<String> warnings(Settings settings, Machine machine, Vise vise) {
    return Warnings.ofPairing(settings, machine, vise).stream()
        .map(warning -> warning.row() + ", " + warning.matter())
        .toList();
  }
}
