package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jawroom.clearance.Certainty;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingOutcome.Neighbour;
import org.jawroom.report.page.PageValues.Facts;
import org.jawroom.report.wording.Cautions;
import org.jawroom.report.wording.PairingWords;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;

/** All data that the page shows and computes with; lengths in half-nanometres. */
final class PageData {
  private PageData() {}

  /**
   * @param pairings machines then vises in the order of {@code shop}
   * @param standing what stands on its machines now
   */
  static Map<String, Object> of(
      Shop shop, List<PagePairing> pairings, List<StandingOutcome> standing, RunFacts facts) {
    Settings settings = shop.settings();
    int across = shop.vises().size();
    List<Object> machines = new ArrayList<>();
    for (int i = 0; i < shop.machines().size(); i++) {
      List<PagePairing> its = pairings.subList(i * across, (i + 1) * across);
      machines.add(MachineData.of(settings, shop.machines().get(i), its));
    }
    List<Object> vises = new ArrayList<>();
    for (int i = 0; i < across; i++) {
      int column = i;
      List<PagePairing> its =
          IntStream.range(0, shop.machines().size())
              .mapToObj(row -> pairings.get(row * across + column))
              .toList();
      vises.add(ViseData.of(shop.vises().get(i), its));
    }
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("version", facts.toolVersion());
    data.put("unit", facts.unit().word());
    data.put("handRoom", settings.handRoom());
    data.put("tapRoom", settings.tapRoom());
    data.put("comfort", settings.comfort());
    data.put("far", Certainty.FAR);
    settings.shortestTool().ifPresent(tool -> data.put("shortestTool", tool));
    data.put("settings", facts.settings().stream().map(s -> s.label() + ": " + s.value()).toList());
    data.put("files", facts.files().stream().map(PageData::file).toList());
    data.put("warnings", facts.warnings().size());
    data.put("findings", findings(pairings));
    data.put("brief", Cautions.BRIEF);
    data.put("cautions", Cautions.ALL);
    data.put("machines", machines);
    data.put("vises", vises);
    data.put("pairings", pairings.stream().map(pairing -> pairing(standing, pairing)).toList());
    return data;
  }

  /** The data of a pairing, and where the vise stands on the machine now. */
  private static Map<String, Object> pairing(List<StandingOutcome> standing, PagePairing pairing) {
    String machine = pairing.outcome().machine().name();
    String vise = pairing.outcome().vise().name();
    List<Object> stands =
        standing.stream()
            .filter(one -> one.standing().machine().name().equals(machine))
            .filter(one -> one.standing().vise().name().equals(vise))
            .map(PageData::stand)
            .toList();
    return new Facts().withAll(pairing.data()).with("stands", stands).map();
  }

  /** [turn, mount, x, y, vises too close]. */
  private static Object stand(StandingOutcome outcome) {
    Standing standing = outcome.standing();
    return List.of(
        standing.place().handleTo().word(),
        standing.vise().mountNames().indexOf(standing.mount()),
        standing.x(),
        standing.y(),
        outcome.close().stream().map(PageData::close).toList());
  }

  /** [name, whether it is sure, gap]; no gap if it has no end. */
  private static Object close(Neighbour neighbour) {
    String name = neighbour.standing().vise().name();
    return neighbour.gap().isPresent()
        ? List.of(name, neighbour.sure(), neighbour.gap().getAsLong())
        : List.of(name, neighbour.sure());
  }

  /**
   * Returns the data that one pairing adds: its machine, its vise and itself, each as if it were
   * the only one. The size estimate uses it.
   */
  static List<Object> parts(Settings settings, PagePairing pairing) {
    return List.of(
        MachineData.of(settings, pairing.outcome().machine(), List.of(pairing)),
        ViseData.of(pairing.outcome().vise(), List.of(pairing)),
        pairing.data());
  }

  /** Each finding with its sign, its short word and its full text. */
  private static Map<String, Object> findings(List<PagePairing> pairings) {
    Map<String, Object> findings = new LinkedHashMap<>();
    PairingWords.findings()
        .forEach(
            (name, words) ->
                pairings.stream()
                    .map(PagePairing::outcome)
                    .filter(outcome -> PairingWords.finding(outcome).equals(name))
                    .findFirst()
                    .ifPresent(
                        outcome ->
                            findings.put(
                                name,
                                new Facts()
                                    .with("sign", words.get(0))
                                    .with("word", outcome.verdict().code())
                                    .with("words", words.get(1))
                                    .map())));
    return findings;
  }

  private static Map<String, Object> file(RunFacts.FileRead file) {
    return new Facts().with("name", file.name()).with("fingerprint", file.fingerprint()).map();
  }
}
