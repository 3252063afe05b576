package org.jawroom.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Pages of 100 points, a head of 20 on the first and of 10 on each other; blocks of two rows. */
class PageBreaksTest {

  /** The number of blocks on each page. */
  private static List<Integer> pages(double... heights) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet();
      PageBreaks breaks = new PageBreaks(sheet, 100, 20, 10);
      for (int block = 0; block < heights.length; block++) {
        breaks.add(1 + 2 * block, heights[block]);
      }
      breaks.finish();
      List<Integer> pages = new ArrayList<>();
      int before = 0;
      for (int last : sheet.getRowBreaks()) {
        pages.add(last / 2 - before);
        before = last / 2;
      }
      pages.add(heights.length - before);
      return pages;
    }
  }

  @Test
  void pages_thatFit_areFilled() throws IOException {
    assertEquals(List.of(0), pages());
    assertEquals(List.of(4), pages(20, 20, 20, 20));
    assertEquals(List.of(4, 4), pages(20, 20, 20, 20, 22.5, 22.5, 22.5, 22.5));
  }

  @Test
  void pages_lastWouldStandAlone_takesOneFromTheOneBefore() throws IOException {
    assertEquals(List.of(3, 2), pages(20, 20, 20, 20, 20));
  }

  @Test
  void pages_noDivisionAvoidsIt_standAlone() throws IOException {
    assertEquals(List.of(1), pages(20));
    assertEquals(List.of(1, 1), pages(70, 80));
    assertEquals(List.of(1, 1), pages(500, 20));
  }

  /** Against all divisions of up to nine blocks. */
  @Test
  void pages_ofRandomHeights_leaveTheFewestAlone() throws IOException {
    Random random = new Random(19);
    int alone = 0;
    for (int round = 0; round < 200; round++) {
      double[] heights = random.doubles(1 + random.nextInt(9), 10, 60).toArray();
      int[] fewest = {Integer.MAX_VALUE, Integer.MAX_VALUE};
      for (int cuts = 0; cuts < 1 << (heights.length - 1); cuts++) {
        int[] counted = counted(heights, cuts);
        if (counted.length > 0
            && (counted[0] < fewest[0] || (counted[0] == fewest[0] && counted[1] < fewest[1]))) {
          fewest = counted;
        }
      }
      List<Integer> pages = pages(heights);
      int[] ours = {(int) pages.stream().filter(page -> page == 1).count(), pages.size()};
      assertArrayEquals(fewest, ours, "round " + round);
      alone += ours[0] > 0 ? 1 : 0;
    }
    assertTrue(alone > 5 && alone < 195, "some leave a block alone, some do not: " + alone);
  }

  /** The pages with one block, and all pages; empty if some page is too full. */
  private static int[] counted(double[] heights, int cuts) {
    int alone = 0;
    int pages = 0;
    int on = 0;
    double used = 20;
    for (int block = 0; block < heights.length; block++) {
      used += heights[block];
      on++;
      if (used > 100) {
        return new int[0];
      }
      if (block == heights.length - 1 || ((cuts >> block) & 1) == 1) {
        pages++;
        alone += on == 1 ? 1 : 0;
        on = 0;
        used = 10;
      }
    }
    return new int[] {alone, pages};
  }
}
