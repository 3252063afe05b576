package org.jawroom.report.matrix;

import java.io.IOException;
import java.util.List;
import java.util.function.IntFunction;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.jawroom.drawing.file.Picture;
import org.jawroom.drawing.file.PngFile;
import org.jawroom.drawing.file.SvgFile;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.report.picture.VectorPicture;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.Paper;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Settings;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;

/** The sheet <i>Drawings</i>: pictures of pairings, linked from the matrix and back to it. */
final class DrawingsSheet {
  static final String NAME = "Drawings";

  private static final int HEAD = 2;

  /** Rows of a pairing: its heading, those under its picture, one as a separator. */
  private static final int ROWS_EACH = 26;

  private static final double ROW_POINTS = 15.5;
  private static final int PICTURES_ON_A_PAGE = 2;

  /** The resolution of the bitmap for programs that show no vectors: 144 dots per inch. */
  private static final double DOTS = 2;

  private final SXSSFWorkbook book;
  private final Styles styles;
  private final SXSSFSheet sheet;
  private final XSSFDrawing page;
  private final List<Outcome> outcomes;
  private final int vises;

  private DrawingsSheet(SXSSFWorkbook book, Styles styles, List<Outcome> outcomes, int vises) {
    this.book = book;
    this.styles = styles;
    this.sheet = book.createSheet(NAME);
    this.page = book.getXSSFWorkbook().getSheet(NAME).createDrawingPatriarch();
    this.outcomes = outcomes;
    this.vises = vises;
  }

  static void add(
      SXSSFWorkbook book,
      Styles styles,
      Settings settings,
      List<Outcome> outcomes,
      int vises,
      DrawnPairings drawn,
      IntFunction<Layout> layouts)
      throws IOException {
    DrawingsSheet drawings = new DrawingsSheet(book, styles, outcomes, vises);
    drawings.head(drawn);
    for (int index : drawn.order().keySet()) {
      drawings.pairing(index, drawn.order().get(index), settings, layouts.apply(index));
    }
  }

  /** The address of the drawing with that number. */
  static String address(int number) {
    return "A" + (HEAD + number * ROWS_EACH + 1);
  }

  private void head(DrawnPairings drawn) {
    for (int column = 0; column < 3; column++) {
      sheet.setColumnWidth(column, 34 * 256);
    }
    Paper.set(sheet, styles.unit(), -1, -1, 0, 3 * 34);
    sheet.getPrintSetup().setLandscape(false);
    Row title = sheet.createRow(0);
    title.setHeightInPoints(26);
    Cells.text(title, 0, "Drawings", styles.title());
    int shown = drawn.order().size();
    String which =
        shown == drawn.all()
            ? "Every pairing that has a place, or a best one tried."
            : shown
                + " of "
                + drawn.all()
                + ": least margin, limited opening and no place first."
                + " jawroom draw makes any other.";
    Cells.text(sheet.createRow(1), 0, which, styles.note());
  }

  private void pairing(int index, int number, Settings settings, Layout layout) throws IOException {
    Outcome outcome = outcomes.get(index);
    int first = HEAD + number * ROWS_EACH;
    if (number > 0 && number % PICTURES_ON_A_PAGE == 0) {
      sheet.setRowBreak(first - 1);
    }
    Row heading = sheet.createRow(first);
    heading.setHeightInPoints(20);
    Cells.text(
        heading, 0, outcome.vise().name() + " on " + outcome.machine().name(), styles.label());
    link(
        Cells.text(heading, 1, "back to the matrix", styles.note()),
        MatrixSheet.NAME + "!" + MatrixSheet.address(index, vises));
    link(
        Cells.text(heading, 2, "its row in Pairings", styles.note()),
        PairingsSheet.NAME + "!" + PairingsSheet.address(index));
    for (int row = 1; row < ROWS_EACH; row++) {
      sheet.createRow(first + row).setHeightInPoints((float) ROW_POINTS);
    }
    Picture picture = PairingDrawing.of(styles.unit(), settings, outcome, layout);
    place(picture, first + 1, outcome);
  }

  private void place(Picture picture, int row, Outcome outcome) throws IOException {
    int bitmap = book.addPicture(PngFile.of(picture, DOTS), Workbook.PICTURE_TYPE_PNG);
    XSSFClientAnchor anchor = new XSSFClientAnchor();
    anchor.setCol1(0);
    anchor.setRow1(row);
    double rows = picture.height() / ROW_POINTS;
    int columns = 0;
    double right = picture.width();
    while (right > columnPoints(columns)) {
      right -= columnPoints(columns++);
    }
    anchor.setCol2(columns);
    anchor.setDx2(Units.toEMU(right));
    anchor.setRow2(row + (int) rows);
    anchor.setDy2(Units.toEMU((rows - (int) rows) * ROW_POINTS));
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    XSSFPicture shown = page.createPicture(anchor, bitmap);
    CTNonVisualDrawingProps read = shown.getCTPicture().getNvPicPr().getCNvPr();
    read.setDescr(
        PlainText.forCell(
            outcome.vise().name()
                + " on "
                + outcome.machine().name()
                + ", from above and from the right: "
                + Finding.of(outcome).words()));
    VectorPicture.add(shown, SvgFile.of(picture));
  }

  private double columnPoints(int column) {
    return sheet.getColumnWidthInPixels(column) * Units.POINT_DPI / (double) Units.PIXEL_DPI;
  }

  private void link(Cell cell, String address) {
    Hyperlink link = book.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(address);
    cell.setHyperlink(link);
  }
}
