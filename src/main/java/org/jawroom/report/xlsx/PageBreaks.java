package org.jawroom.report.xlsx;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;

/**
 * Places page breaks of the matrix between machines, so that no margin is separated from its reason
 * and, where another division avoids it, no machine stands alone on a page.
 */
public final class PageBreaks {

  /** Spreadsheets allow 1026 breaks; beyond that, pages break anywhere. */
  private static final int MOST = 1000;

  private final Sheet sheet;
  private final double room;
  private final double head;
  private final double repeated;
  private final List<Block> blocks = new ArrayList<>();

  /** Rows that belong together. */
  private record Block(int first, double height) {}

  /**
   * The division of the blocks from one of them to the last.
   *
   * @param alone the number of pages with a single block
   * @param next the block that begins the second of these pages
   */
  private record Division(int alone, int pages, int next) {

    boolean isBetter(Division other) {
      return alone != other.alone ? alone < other.alone : pages < other.pages;
    }
  }

  /**
   * Starts with only the head on the first page; all heights in points.
   *
   * @param room of a page
   * @param head above the machines on the first page
   * @param repeated the head on every other page
   */
  public PageBreaks(Sheet sheet, double room, double head, double repeated) {
    this.sheet = sheet;
    this.room = room;
    this.head = head;
    this.repeated = repeated;
  }

  /** Adds rows that belong together, starting at row {@code first}. */
  public void add(int first, double height) {
    blocks.add(new Block(first, height));
  }

  /** Sets the breaks; call it after the last rows. */
  public void finish() {
    Division[] from = new Division[blocks.size() + 1];
    from[blocks.size()] = new Division(0, 0, blocks.size());
    for (int block = blocks.size() - 1; block >= 0; block--) {
      from[block] = best(block, from);
    }
    int breaks = 0;
    for (int next = from[0].next; next < blocks.size() && breaks < MOST; next = from[next].next) {
      sheet.setRowBreak(blocks.get(next).first - 1);
      breaks++;
    }
  }

  /** The best division from {@code block} on; of equals the one with the fuller first page. */
  private Division best(int block, Division[] from) {
    Division best = null;
    double used = block == 0 ? head : repeated;
    for (int next = block + 1; next <= blocks.size(); next++) {
      used += blocks.get(next - 1).height;
      if (used > room && next > block + 1) {
        break;
      }
      int alone = from[next].alone + (next == block + 1 ? 1 : 0);
      Division division = new Division(alone, from[next].pages + 1, next);
      best = best == null || !best.isBetter(division) ? division : best;
    }
    return best;
  }
}
