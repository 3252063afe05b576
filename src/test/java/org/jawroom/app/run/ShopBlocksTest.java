package org.jawroom.app.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.reference.random.CrossedShops;
import org.jawroom.report.tally.ShopBlock;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopBlocksTest {
  private final Shop shop = CrossedShops.shop(3, 7, 10, 1);

  @ParameterizedTest
  @CsvSource({"1, 1", "1, 4", "3, 4", "7, 10", "8, 24", "2, 5"})
  void blocks_ofAShop_haveEachPairingOnceBandByBand(int machines, int vises) {
    ShopBlocks blocks = new ShopBlocks(shop, machines, vises);
    List<Integer> pairings = new ArrayList<>();
    List<List<Integer>> firsts = new ArrayList<>();
    for (int number = 0; number < blocks.count(); number++) {
      ShopBlock block = blocks.block(number);
      assertTrue(block.machines() >= 1 && block.machines() <= machines, block::toString);
      assertTrue(block.vises() >= 1 && block.vises() <= vises, block::toString);
      firsts.add(List.of(block.machine(), block.vise()));
      for (int machine = block.machine(); machine < block.endOfMachines(); machine++) {
        for (int vise = block.vise(); vise < block.endOfVises(); vise++) {
          pairings.add(machine * shop.vises().size() + vise);
        }
      }
    }

    assertEquals(IntStream.range(0, 70).boxed().toList(), pairings.stream().sorted().toList());
    assertEquals(70, blocks.pairings());
    List<List<Integer>> inOrder = new ArrayList<>();
    for (int machine = 0; machine < 7; machine += machines) {
      for (int vise = 0; vise < 10; vise += vises) {
        inOrder.add(List.of(machine, vise));
      }
    }
    assertEquals(inOrder, firsts);
  }

  @Test
  void blocks_withoutVises_areNone() {
    Shop empty = new Shop(Settings.DEFAULTS, shop.machines(), List.of(), List.of());

    assertEquals(0, new ShopBlocks(empty, 8, 24).count());
  }
}
