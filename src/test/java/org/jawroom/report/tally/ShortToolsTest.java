package org.jawroom.report.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.SampleShop;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

class ShortToolsTest {
  private static final int KEPT = 20_000;

  private final Shop shop = new SampleShop().shop;

  @Test
  void lines_ofVeryMany_areThoseOfTheFirstIndicesWhateverTheOrder() {
    List<Long> indices =
        LongStream.range(0, KEPT + 500).boxed().collect(Collectors.toCollection(ArrayList::new));
    Collections.shuffle(indices, new Random(1));
    ShortTools one = new ShortTools();
    ShortTools other = new ShortTools();
    for (int i = 0; i < indices.size(); i++) {
      (i % 2 == 0 ? one : other).add(indices.get(i), tooShort(indices.get(i)));
    }
    one.add(other);

    List<String> lines = one.lines();

    assertEquals(KEPT + 1, lines.size());
    for (int i = 0; i < KEPT; i++) {
      assertTrue(lines.get(i).startsWith(names(i)), lines.get(i));
    }
    assertEquals("the shortest tool does not clear the bed in 500 more pairings", lines.get(KEPT));
  }

  @Test
  void lines_whereTheToolIsLongEnough_areNone() {
    ShortTools none = new ShortTools();
    none.add(0, new Made(shop.machines().get(0), shop.vises().get(0), Verdict.FITS).done());

    assertEquals(List.of(), none.lines());
  }

  private Outcome tooShort(long index) {
    int machine = (int) index % shop.machines().size();
    int vise = (int) index % shop.vises().size();
    return new Made(shop.machines().get(machine), shop.vises().get(vise), Verdict.FITS)
        .shortestToolTooShort()
        .done();
  }

  private String names(int index) {
    return shop.machines().get(index % shop.machines().size()).name()
        + " × "
        + shop.vises().get(index % shop.vises().size()).name()
        + ":";
  }
}
