package org.jawroom.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jawroom.drawing.file.SvgFile;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;
import org.w3c.dom.NodeList;

class InchDrawingTest {

  @Test
  void of_inchShop_readsAsKept() throws Exception {
    Path folder = Path.of("src/test/resources/org/jawroom/inch");
    Shop shop = ShopReader.read(folder, Map.of()).shop().orElseThrow();
    SolvedPairing solved =
        Pairing.solved(shop.settings(), shop.machines().get(0), shop.vises().get(0));
    byte[] svg =
        SvgFile.of(
            PairingDrawing.of(
                PeopleUnit.INCH, shop.settings(), solved.outcome(), solved.layout().orElseThrow()));
    NodeList texts =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg))
            .getElementsByTagName("text");
    assertEquals(
        Files.readString(folder.resolve("drawing.txt")),
        IntStream.range(0, texts.getLength())
            .mapToObj(i -> texts.item(i).getTextContent() + "\n")
            .collect(Collectors.joining()));
  }
}
