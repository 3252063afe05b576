package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.reference.RandomShops;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.UnreadableInput;

/** A shop solved, for its page. */
record ShopPage(Shop shop, List<Advice> advice, PeopleUnit unit) {
  private static ShopPage demo;

  static ShopPage of(Shop shop) {
    return of(shop, PeopleUnit.MM);
  }

  private static ShopPage of(Shop shop, PeopleUnit unit) {
    int across = shop.vises().size();
    List<Advice> advice =
        IntStream.range(0, shop.machines().size() * across)
            .parallel()
            .mapToObj(
                i -> advise(shop, shop.machines().get(i / across), shop.vises().get(i % across)))
            .toList();
    return new ShopPage(shop, advice, unit);
  }

  private static Advice advise(Shop shop, Machine machine, Vise vise) {
    return Advisor.advise(shop.settings(), machine, vise);
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
    return advice.stream().map(Advice::outcome).toList();
  }

  RunFacts facts() {
    return new RunFacts(
        List.of(),
        List.of(new RunFacts.Setting("unit", "as told")),
        List.of(),
        List.of(),
        List.of(),
        unit,
        "test");
  }

  String html() {
    return PageFile.html(shop, advice, facts());
  }

  Path write(Path folder) throws IOException {
    return PageFile.write(folder.resolve("page.html"), shop, advice, facts());
  }
}
