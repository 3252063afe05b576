package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.Setup;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Bolted;
import org.jawroom.report.page.PageValues.Facts;
import org.jawroom.report.wording.Cautions;
import org.jawroom.report.wording.PairingWords;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;

/** All data that the page shows and computes with; lengths in half-nanometres. */
final class PageData {
  private PageData() {}

  /**
   * @param advice one for each pairing, machines then vises in the order of {@code shop}
   */
  static Map<String, Object> of(Shop shop, List<Advice> advice, RunFacts facts) {
    Settings settings = shop.settings();
    List<Object> pairings = new ArrayList<>();
    List<Boolean> drawn = new ArrayList<>();
    List<SortedSet<Long>> threads = new ArrayList<>();
    shop.machines().forEach(machine -> drawn.add(false));
    shop.vises().forEach(vise -> threads.add(new TreeSet<>()));
    int across = shop.vises().size();
    for (int index = 0; index < advice.size(); index++) {
      Outcome outcome = advice.get(index).outcome();
      Model model = Model.of(settings, outcome.machine(), outcome.vise(), Setup.PLAIN);
      pairings.add(PairingData.of(advice.get(index), model));
      if (outcome.recommended().isPresent()) {
        drawn.set(index / across, true);
        for (Bolted seat : model.bolted()) {
          threads.get(index % across).add(PairingData.thread(seat));
        }
      }
    }
    List<Object> machines = new ArrayList<>();
    for (int i = 0; i < shop.machines().size(); i++) {
      machines.add(MachineData.of(settings, shop.machines().get(i), drawn.get(i)));
    }
    List<Object> vises = new ArrayList<>();
    for (int i = 0; i < across; i++) {
      vises.add(ViseData.of(shop.vises().get(i), threads.get(i)));
    }
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("version", facts.toolVersion());
    data.put("unit", facts.unit().word());
    data.put("handRoom", settings.handRoom());
    settings.shortestTool().ifPresent(tool -> data.put("shortestTool", tool));
    data.put("settings", facts.settings().stream().map(s -> s.label() + ": " + s.value()).toList());
    data.put("files", facts.files().stream().map(PageData::file).toList());
    data.put("warnings", facts.warnings().size());
    data.put("findings", findings(advice));
    data.put("brief", Cautions.BRIEF);
    data.put("cautions", Cautions.ALL);
    data.put("machines", machines);
    data.put("vises", vises);
    data.put("pairings", pairings);
    return data;
  }

  /**
   * Returns the data that one pairing adds: its machine, its vise and itself, each as if it were
   * the only one. The size estimate uses it.
   */
  static List<Object> parts(Settings settings, Advice advice) {
    Outcome outcome = advice.outcome();
    Model model = Model.of(settings, outcome.machine(), outcome.vise(), Setup.PLAIN);
    boolean drawn = outcome.recommended().isPresent();
    SortedSet<Long> threads = new TreeSet<>();
    if (drawn) {
      model.bolted().forEach(seat -> threads.add(PairingData.thread(seat)));
    }
    return List.of(
        MachineData.of(settings, outcome.machine(), drawn),
        ViseData.of(outcome.vise(), threads),
        PairingData.of(advice, model));
  }

  /** Each finding with its sign, its short word and its full text. */
  private static Map<String, Object> findings(List<Advice> advice) {
    Map<String, Object> findings = new LinkedHashMap<>();
    PairingWords.findings()
        .forEach(
            (name, words) ->
                advice.stream()
                    .map(Advice::outcome)
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
