package org.jawroom.report.xlsx;

import org.apache.poi.ss.usermodel.Sheet;

/** Breaks pages of the matrix between machines, so that no margin is parted from its reason. */
public final class PageBreaks {

  /**
   * Spreadsheets take 1026 breaks at most; whoever prints more pages than that has them cut
   * anywhere.
   */
  private static final int MOST = 1000;

  private final Sheet sheet;
  private final double room;
  private final double repeated;
  private double used;
  private int breaks;

  /**
   * Nothing but the head is on the first page yet; all heights in points.
   *
   * @param room of a page
   * @param head what stands over the machines on the first page, {@code repeated} on every other
   */
  public PageBreaks(Sheet sheet, double room, double head, double repeated) {
    this.sheet = sheet;
    this.room = room;
    this.repeated = repeated;
    this.used = head;
  }

  /** Adds rows that belong together, from row {@code first} on; on a new page if need be. */
  public void add(int first, double height) {
    if (used + height > room && used > repeated && breaks < MOST) {
      sheet.setRowBreak(first - 1);
      breaks++;
      used = repeated;
    }
    used += height;
  }
}
