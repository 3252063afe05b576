package org.jawroom.advice.assess;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.UnreadableInput;

/**
 * A small shop with two owned mills and two candidates, one of them half unknown, and its
 * assessment.
 */
public final class AssessShop {
  private AssessShop() {}

  public static Path folder() {
    try {
      return Path.of(AssessShop.class.getResource("/org/jawroom/assess").toURI());
    } catch (URISyntaxException never) {
      throw new IllegalStateException(never);
    }
  }

  public static Shop read() throws UnreadableInput {
    return ShopReader.read(folder(), Map.of()).shop().orElseThrow();
  }

  /** Assesses the named machines, or the candidates if none is named. */
  public static Assessment assess(Shop shop, String... names) {
    List<String> wanted = List.of(names);
    List<Machine> candidates =
        shop.machines().stream()
            .filter(
                machine -> wanted.isEmpty() ? machine.candidate() : wanted.contains(machine.name()))
            .toList();
    List<Advice> advice = new ArrayList<>();
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        advice.add(Advisor.advise(shop.settings(), machine, vise));
      }
    }
    List<JobOutcome> jobs = JobPairing.all(shop);
    return Assessor.assess(shop, advice, jobs, candidates, OptionalLong.empty());
  }
}
