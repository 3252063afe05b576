package org.jawroom.report.matrix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.app.run.Solving;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Drawn;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

class DrawingsSheetTest {
  private final Shop shop;
  private final List<Advice> advice;
  private final List<Outcome> outcomes;

  DrawingsSheetTest() throws Exception {
    shop = Drawn.shop("src/test/resources/org/jawroom/golden/example");
    advice =
        shop.machines().stream()
            .flatMap(
                machine ->
                    shop.vises().stream()
                        .map(vise -> Pairing.solve(shop.settings(), machine, vise)))
            .map(outcome -> Advisor.advise(shop.settings(), outcome.machine(), outcome.vise()))
            .toList();
    outcomes = advice.stream().map(Advice::outcome).toList();
  }

  private XSSFWorkbook book(int drawings) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportOptions wanted = new ReportOptions(true, true, true, drawings);
    MatrixWorkbook.write(
        shop,
        advice,
        Totals.of(shop, advice, JobPairing.all(shop)),
        ShopOutcomes.NONE,
        Invented.facts(PeopleUnit.MM),
        wanted,
        SheetLimits.XLSX,
        Solving.layouts(shop),
        out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }

  @Test
  void workbook_drawings_leadFromTheMatrixAndBack() throws Exception {
    try (XSSFWorkbook book = book(60)) {
      XSSFSheet drawings = book.getSheet(DrawingsSheet.NAME);
      long placed = outcomes.stream().filter(outcome -> outcome.recommended().isPresent()).count();
      List<XSSFShape> pictures = drawings.getDrawingPatriarch().getShapes();
      assertEquals(placed, pictures.size());
      int back = 0;
      for (var row : drawings) {
        XSSFCell cell = (XSSFCell) row.getCell(1);
        if (cell != null && cell.getHyperlink() != null) {
          XSSFCell margin = follow(book, cell);
          assertEquals(cell.getRowIndex(), follow(book, margin).getRowIndex());
          assertEquals(
              row.getCell(0).getStringCellValue(), vise(margin) + " on " + machine(margin));
          back++;
        }
      }
      assertEquals(placed, back);
    }
  }

  @Test
  void workbook_drawings_areVectorsBesideTheirBitmaps() throws Exception {
    try (XSSFWorkbook book = book(3)) {
      var drawing = book.getSheet(DrawingsSheet.NAME).getDrawingPatriarch();
      assertEquals(3, drawing.getShapes().size());
      for (XSSFShape shape : drawing.getShapes()) {
        String blip = ((XSSFPicture) shape).getCTPicture().getBlipFill().getBlip().xmlText();
        String id = blip.replaceAll("(?s).*svgBlip[^>]* [a-z0-9]+:embed=\"([^\"]+)\".*", "$1");
        var relation = drawing.getPackagePart().getRelationship(id);
        PackagePart part =
            book.getPackage().getPart(PackagingURIHelper.createPartName(relation.getTargetURI()));
        String svg = new String(part.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(svg.contains("<svg ") && svg.contains("id='plan-table'"), svg);
        assertTrue(
            ((XSSFPicture) shape)
                .getCTPicture()
                .getNvPicPr()
                .getCNvPr()
                .getDescr()
                .contains(" on "));
      }
    }
  }

  @Test
  void workbook_withoutDrawings_hasNoSuchSheet() throws Exception {
    try (XSSFWorkbook book = book(0)) {
      assertEquals(-1, book.getSheetIndex(DrawingsSheet.NAME));
    }
  }

  @Test
  void drawn_moreThanAsked_takesEachKindInTurnClosestFirst() {
    Map<Integer, Integer> order = new DrawnPairings(outcomes, 6).order();
    assertEquals(6, order.size());
    List<Verdict> kinds = order.keySet().stream().map(i -> outcomes.get(i).verdict()).toList();
    for (Verdict verdict : List.of(Verdict.FITS, Verdict.LIMITED, Verdict.NO_PLACE)) {
      assertTrue(kinds.contains(verdict), kinds.toString());
    }
    int tightest =
        IntStream.range(0, outcomes.size())
            .filter(i -> outcomes.get(i).verdict() == Verdict.FITS)
            .boxed()
            .min((one, other) -> Long.compare(margin(one), margin(other)))
            .orElseThrow();
    assertTrue(order.containsKey(tightest), order.toString());
    List<Integer> indices = new ArrayList<>(order.keySet());
    assertEquals(indices.stream().sorted().toList(), indices);
  }

  @Test
  void drawn_everyVerdictWithAPlace_hasItsShare() {
    List<Outcome> all = new ArrayList<>();
    for (Verdict verdict :
        List.of(
            Verdict.FITS, Verdict.AWKWARD, Verdict.MEASURE, Verdict.LIMITED, Verdict.NO_PLACE)) {
      for (int i = 0; i < 2; i++) {
        all.add(
            new Made(shop.machines().get(0), shop.vises().get(0), verdict)
                .at(Orientation.FRONT, "0", "0")
                .done());
      }
    }
    assertEquals(List.of(0, 2, 4, 6, 8), List.copyOf(new DrawnPairings(all, 5).order().keySet()));
    assertEquals(9, new DrawnPairings(all, 9).order().size());
  }

  @Test
  void drawn_asManyAsThereAre_takesAll() {
    int all = DrawnPairings.NONE.order().size();
    assertEquals(0, all);
    DrawnPairings drawn = new DrawnPairings(outcomes, 60);
    assertEquals(drawn.all(), drawn.order().size());
    assertEquals(drawn.all(), new DrawnPairings(outcomes, drawn.all()).order().size());
    assertEquals(drawn.all() - 1, new DrawnPairings(outcomes, drawn.all() - 1).order().size());
  }

  private long margin(int index) {
    return outcomes.get(index).recommended().orElseThrow().limit().orElseThrow().margin();
  }

  private static XSSFCell follow(XSSFWorkbook book, XSSFCell cell) {
    String[] target = cell.getHyperlink().getLocation().split("!");
    CellReference at = new CellReference(target[1]);
    return book.getSheet(target[0]).getRow(at.getRow()).getCell(at.getCol());
  }

  private static String vise(XSSFCell margin) {
    return margin.getSheet().getRow(5).getCell(margin.getColumnIndex()).getStringCellValue();
  }

  private static String machine(XSSFCell margin) {
    return margin.getRow().getCell(0).getStringCellValue();
  }
}
