package org.jawroom.report.overview;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.matrix.JobsSheet;
import org.jawroom.report.matrix.MatrixWorkbook;
import org.jawroom.report.matrix.PairingsSheet;
import org.jawroom.report.matrix.TallySheet;
import org.jawroom.report.set.SetsSheet;
import org.jawroom.report.standing.StandingSheet;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.Shown;
import org.jawroom.report.xlsx.CautionsSheet;
import org.jawroom.report.xlsx.InputsSheet;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.report.xlsx.book.StableWorkbook;
import org.jawroom.shop.Shop;

/**
 * {@code matrix.xlsx} of a shop too large to list each pairing in full. <i>Overview</i> says in
 * words what it contains and leaves out; <i>Matrix</i> has a cell for each pairing, up to the
 * limits of a sheet; <i>Pairings</i> has the best of each machine and each vise; <i>By machine</i>
 * and <i>By vise</i> are complete. It is filled pairing by pairing; memory does not grow with their
 * number.
 */
public final class OverviewWorkbook implements Closeable {

  /** Rows of a sheet kept in memory: the one being filled and the few above the matrix. */
  private static final int IN_REACH = 10;

  private final Shop shop;
  private final boolean remedies;
  private final SheetLimits limits;
  private final StableWorkbook workbook;
  private Styles styles;
  private OverviewMatrix matrix;

  public OverviewWorkbook(Shop shop, PeopleUnit unit, boolean remedies, SheetLimits limits)
      throws IOException {
    this.shop = shop;
    this.remedies = remedies;
    this.limits = limits;
    this.workbook = new StableWorkbook(MatrixWorkbook.TITLE, IN_REACH);
    workbook.fill(
        book -> {
          styles = new Styles(book.getXSSFWorkbook(), unit);
          matrix = new OverviewMatrix(book, styles, shop, limits);
        });
  }

  /**
   * Adds the next pairings: machines, then vises, in shop order.
   *
   * @param totals over at least the pairings so far, these included
   */
  public void add(List<Shown> pairings, Totals totals) throws IOException {
    workbook.fill(book -> pairings.forEach(shown -> matrix.add(shown, totals)));
  }

  /** Writes the workbook after all pairings were added; does not close {@code out}. */
  public void writeTo(OutputStream out, Totals totals, ShopOutcomes beside, RunFacts facts)
      throws IOException {
    workbook.fill(
        book -> {
          if (!shop.jobs().isEmpty()) {
            JobsSheet.add(book, styles, shop, totals.jobs(), limits);
          }
          if (!shop.standing().isEmpty()) {
            StandingSheet.add(book, styles, beside.standing(), limits);
          }
          if (!shop.sets().isEmpty()) {
            SetsSheet.add(book, styles, shop.settings(), beside.sets(), limits);
          }
          PairingsSheet.addChosen(book, styles, totals.chosen(), limits);
          TallySheet.addByMachine(book, styles, totals, remedies);
          TallySheet.addByVise(book, styles, totals);
          CautionsSheet.add(book, styles);
          InputsSheet.add(book, styles, facts, limits);
          OverviewSheet.add(book, styles, totals, matrix, remedies);
          book.setSheetOrder(OverviewSheet.NAME, 0);
          book.setActiveSheet(0);
          book.setSelectedTab(0);
        });
    workbook.writeTo(out);
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }
}
