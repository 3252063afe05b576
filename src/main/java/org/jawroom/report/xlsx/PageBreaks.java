package org.jawroom.report.xlsx;

import org.apache.poi.ss.usermodel.Sheet;

/**
 * Places page breaks of the matrix between machines, so that no margin is separated from its
 * reason.
 */
public final class PageBreaks {

  /** Spreadsheets allow 1026 breaks; beyond that, pages break anywhere. */
  private static final int MOST = 1000;

  private final Sheet sheet;
  private final double room;
  private final double repeated;
  private double used;
  private int breaks;

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
    this.repeated = repeated;
    this.used = head;
  }

  /**
   * Adds rows that belong together, starting at row {@code first}; begins a new page if necessary.
   */
  public void add(int first, double height) {
    if (used + height > room && used > repeated && breaks < MOST) {
      sheet.setRowBreak(first - 1);
      breaks++;
      used = repeated;
    }
    used += height;
  }
}
