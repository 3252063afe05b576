package org.jawroom.report.card;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Explanation;
import org.jawroom.clearance.Setup;
import org.jawroom.placement.Inspection;
import org.jawroom.placement.Model;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Pairing;
import org.jawroom.report.PeopleUnit;
import org.jawroom.report.RunFacts;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;

/** Pairings of shops in folders, explained. */
final class Explained {
  private Explained() {}

  static Path golden(String name) throws Exception {
    return Path.of(Explained.class.getResource("/org/jawroom/golden/" + name).toURI());
  }

  static Shop shop(Path folder) throws Exception {
    Reading reading = ShopReader.read(folder, Map.of());
    return reading.shop().orElseThrow(() -> new AssertionError(reading.faults().toString()));
  }

  /** Every pairing that has a card; without remedies and misses, which take long and no card tells. */
  static List<Explanation> all(Shop shop) {
    List<Explanation> all = new ArrayList<>();
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        Outcome outcome = Pairing.solve(shop.settings(), machine, vise);
        if (CardFacts.isPossible(outcome)) {
          all.add(briefly(shop.settings(), outcome));
        }
      }
    }
    return all;
  }

  static Explanation briefly(Settings settings, Outcome outcome) {
    Inspection inspection =
        Model.of(settings, outcome.machine(), outcome.vise(), Setup.PLAIN)
            .inspect(outcome.recommended().orElseThrow());
    return new Explanation(
        new Advice(outcome, List.of(), List.of(), Optional.empty(), Optional.empty()),
        inspection.pairs(), inspection.roomiest(), List.of(), List.of(),
        Optional.of(inspection.reachShort()));
  }

  static Explanation one(Shop shop, String machine, String vise) {
    return briefly(
        shop.settings(),
        Pairing.solve(
            shop.settings(),
            shop.machines().stream().filter(m -> m.name().equals(machine)).findFirst().orElseThrow(),
            shop.vises().stream().filter(v -> v.name().equals(vise)).findFirst().orElseThrow()));
  }

  /** What a run on two tables tells. */
  static RunFacts run(PeopleUnit unit) {
    return new RunFacts(
        List.of(
            new RunFacts.FileRead("machines.csv", "0123456789abcdef".repeat(4)),
            new RunFacts.FileRead("vises.csv", "fedcba9876543210".repeat(4))),
        List.of(), List.of(), List.of(), List.of(), unit, "0.1");
  }
}
