package org.jawroom.example;

import java.nio.file.Path;
import java.util.Map;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;

/** Reads a shop and solves one pairing: the example of the README. */
final class ReadAndSolve {
  public static void main(String[] args) throws Exception {
    Reading reading = ShopReader.read(Path.of("inputs/demo"), Map.of());
    reading.faults().forEach(System.err::println);
    Shop shop = reading.shop().orElseThrow();
    // The first machine and the first vise; lengths are whole half-nanometres.
    Outcome outcome = Pairing.solve(shop.settings(), shop.machines().get(0), shop.vises().get(0));
    System.out.println(outcome.verdict());
    outcome.bestMargin().ifPresent(margin -> System.out.println("margin " + mm(margin)));
    outcome.recommended().ifPresent(at -> System.out.println(mm(at.x()) + ", " + mm(at.y())));
  }

  /** In mm, rounded down to 0.001. */
  private static double mm(long length) {
    return Math.floorDiv(length, Length.MM / 1000) / 1000.0;
  }
}
