package org.jawroom.report.card;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;

/** Pairings of shops in folders, explained. */
final class Explained {
  private Explained() {}

  static Path golden(String name) throws Exception {
    return Path.of(Explained.class.getResource("/org/jawroom/golden/" + name).toURI());
  }

  static Shop shop(Path folder) throws Exception {
    return shop(folder, Map.of());
  }

  /** With settings that win over the table. */
  static Shop shop(Path folder, Map<String, String> settings) throws Exception {
    Reading reading = ShopReader.read(folder, settings);
    return reading.shop().orElseThrow(() -> new AssertionError(reading.faults().toString()));
  }

  /** Every pairing that has a card. */
  static List<CardSubject> all(Shop shop) {
    List<CardSubject> all = new ArrayList<>();
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        CardSubject.of(shop.settings(), machine, vise, List.of()).ifPresent(all::add);
      }
    }
    return all;
  }

  static CardSubject one(Shop shop, String machine, String vise) {
    return CardSubject.of(shop.settings(), machine(shop, machine), vise(shop, vise), List.of())
        .orElseThrow();
  }

  static Machine machine(Shop shop, String name) {
    return shop.machines().stream()
        .filter(machine -> machine.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  static Vise vise(Shop shop, String name) {
    return shop.vises().stream().filter(vise -> vise.name().equals(name)).findFirst().orElseThrow();
  }

  /** Of a vise whose bolts line up, but which hits something everywhere. */
  static Optional<CardSubject> hopeless() throws Exception {
    Shop shop = shop(golden("example"));
    return CardSubject.of(
        shop.settings(), machine(shop, "roomy"), vise(shop, "six inch full swing"), List.of());
  }

  /** The facts of a run on two tables. */
  static RunFacts run(PeopleUnit unit) {
    return new RunFacts(
        List.of(
            new RunFacts.FileRead("machines.csv", "0123456789abcdef".repeat(4)),
            new RunFacts.FileRead("vises.csv", "fedcba9876543210".repeat(4))),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        unit,
        "0.1");
  }
}
