package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.standing.StandingTable;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.UnreadableInput;

/** A shop solved, for its page. */
record ShopPage(Shop shop, List<PagePairing> pairings, PeopleUnit unit) {
  private static ShopPage demo;

  static ShopPage of(Shop shop) {
    return of(shop, PeopleUnit.MM);
  }

  private static ShopPage of(Shop shop, PeopleUnit unit) {
    int across = shop.vises().size();
    List<PagePairing> pairings =
        IntStream.range(0, shop.machines().size() * across)
            .parallel()
            .mapToObj(
                i -> advise(shop, shop.machines().get(i / across), shop.vises().get(i % across)))
            .toList();
    return new ShopPage(shop, pairings, unit);
  }

  private static PagePairing advise(Shop shop, Machine machine, Vise vise) {
    SolvedPairing solved = Pairing.solved(shop.settings(), machine, vise);
    return PagePairing.of(Advisor.advise(shop.settings(), solved), solved);
  }

  static ShopPage read(Path tables, Map<String, String> settings) throws UnreadableInput {
    Reading reading = ShopReader.read(tables, settings);
    assertEquals(List.of(), reading.faults());
    return of(
        reading.shop().orElseThrow(),
        reading.notation().inches() ? PeopleUnit.INCH : PeopleUnit.MM);
  }

  /** Solved once, for all that ask. */
  static synchronized ShopPage demo() throws UnreadableInput {
    if (demo == null) {
      demo = read(Path.of("inputs", "demo"), Map.of());
    }
    return demo;
  }

  /** The shop worked by hand. */
  static ShopPage example() throws UnreadableInput, URISyntaxException {
    return read(
        Path.of(ShopPage.class.getResource("/org/jawroom/golden/example").toURI()), Map.of());
  }

  /** The second shop worked by hand: straps, an awkward handle, holes for a smaller thread. */
  static ShopPage example2() throws UnreadableInput, URISyntaxException {
    return read(
        Path.of(ShopPage.class.getResource("/org/jawroom/golden/example-2").toURI()), Map.of());
  }

  /** This shop with a flange for straps on every vise. */
  ShopPage strapped() {
    List<Vise> vises = shop.vises().stream().map(ShopPage::strapped).toList();
    return of(new Shop(shop.settings(), shop.machines(), vises, List.of()), unit);
  }

  private static Vise strapped(Vise vise) {
    return vise.toBuilder().strapFlange(true).build();
  }

  /** Machines and vises of random shops of several kinds, each against each. */
  static ShopPage random(Settings settings, long seed, Profile... profiles) {
    List<Machine> machines = new ArrayList<>();
    List<Vise> vises = new ArrayList<>();
    for (Profile profile : profiles) {
      Shop one = RandomShops.shop(profile, seed);
      machines.addAll(one.machines());
      vises.addAll(one.vises());
    }
    return of(new Shop(settings, machines, vises, List.of()));
  }

  List<Outcome> outcomes() {
    return pairings.stream().map(PagePairing::outcome).toList();
  }

  RunFacts facts() {
    return new RunFacts(
        List.of(),
        List.of(new RunFacts.Setting("unit", "as given")),
        List.of(),
        List.of(),
        List.of(),
        unit,
        "test");
  }

  String html() {
    return PageFile.html(
        shop, pairings, StandingTable.solve(shop.settings(), shop.standing()), facts());
  }

  Path write(Path folder) throws IOException {
    return PageFile.write(
        folder.resolve("page.html"),
        shop,
        pairings,
        StandingTable.solve(shop.settings(), shop.standing()),
        facts());
  }
}
