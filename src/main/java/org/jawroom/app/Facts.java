package org.jawroom.app;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.plausibility.Warning;
import org.jawroom.plausibility.Warnings;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.jawroom.tables.Note;
import org.jawroom.tables.Reading;

/** Collects the facts of a run that the reports list, from the reading and the outcomes. */
public final class Facts {
  private Facts() {}

  public static RunFacts of(Reading reading, Shop shop, List<Outcome> outcomes) {
    ShortTools shortTools = new ShortTools();
    outcomes.forEach(shortTools::add);
    return of(reading, shop, shortTools);
  }

  public static RunFacts of(Reading reading, Shop shop, ShortTools shortTools) {
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
        Stream.concat(defaults(reading).stream(), skipped(reading).stream()).toList(),
        Stream.concat(warnings(reading, shop).stream(), shortTools.lines().stream()).toList(),
        Warnings.ofBlanks(shop).stream().map(Warning::line).toList(),
        PeopleUnits.ofShop(reading),
        Version.number());
  }

  /** The warnings about one machine and one vise alone, one line each. */
  public static List<String> warnings(Settings settings, Machine machine, Vise vise) {
    Shop own = new Shop(settings, List.of(machine), List.of(vise), List.of());
    return Warnings.of(own).stream().map(Warning::line).toList();
  }

  /** The defaults that affect the results, one line each. */
  public static List<String> defaults(Reading reading) {
    return reading.notes(Note.Kind.DEFAULT).stream().map(Note::toString).toList();
  }

  /** The rows left out as worked examples, one line each. */
  public static List<String> skipped(Reading reading) {
    return reading.notes(Note.Kind.WORKED_ROW).stream().map(Note::toString).toList();
  }

  /** The warnings about the inputs, one line each. */
  public static List<String> warnings(Reading reading, Shop shop) {
    List<String> lines = new ArrayList<>();
    for (Note note : reading.notes()) {
      if (note.kind() != Note.Kind.DEFAULT && note.kind() != Note.Kind.WORKED_ROW) {
        lines.add(note.toString());
      }
    }
    Warnings.of(shop).forEach(warning -> lines.add(warning.line()));
    return lines;
  }
}
