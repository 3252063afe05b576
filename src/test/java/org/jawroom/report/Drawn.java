package org.jawroom.report;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jawroom.drawing.file.Picture;
import org.jawroom.drawing.file.SvgFile;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.report.card.measure.TapeRange;
import org.jawroom.report.card.measure.TapeRanges;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.ShopReader;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** An SVG read back: what its groups hold, and how its points stand for lengths. */
public record Drawn(Document svg, Outcome outcome) {

  /**
   * A rectangle in half-nanometres of a view: right from {@code left} to {@code right}, up
   * likewise.
   */
  public record Area(double left, double right, double low, double high) {
    boolean contains(Area other) {
      return left <= other.left && other.right <= right && low <= other.low && other.high <= high;
    }
  }

  public static Shop shop(String folder) throws Exception {
    return ShopReader.read(Path.of(folder), Map.of()).shop().orElseThrow();
  }

  /** Every pairing of a shop that has a place to draw. */
  public static List<Drawn> all(Shop shop) throws Exception {
    return all(
        shop,
        (outcome, layout) -> PairingDrawing.of(PeopleUnit.MM, shop.settings(), outcome, layout));
  }

  /** The same as they stand on a card of that size in points. */
  public static List<Drawn> onCards(Shop shop, double width, double height) throws Exception {
    return all(
        shop,
        (outcome, layout) ->
            PairingDrawing.bare(
                PeopleUnit.MM,
                shop.settings(),
                outcome,
                layout,
                new TapeRanges(PeopleUnit.MM, outcome.machine(), outcome.vise())
                    .of(outcome.recommended().orElseThrow(), Optional.empty()).stream()
                        .map(TapeRange::best)
                        .toList(),
                List.of(),
                width,
                height));
  }

  private static List<Drawn> all(Shop shop, BiFunction<Outcome, Layout, Picture> draw)
      throws Exception {
    List<Drawn> all = new ArrayList<>();
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        SolvedPairing solved = Pairing.solved(shop.settings(), machine, vise);
        Outcome outcome = solved.outcome();
        Optional<Picture> picture = solved.layout().map(layout -> draw.apply(outcome, layout));
        if (picture.isPresent()) {
          all.add(
              new Drawn(
                  DocumentBuilderFactory.newInstance()
                      .newDocumentBuilder()
                      .parse(new ByteArrayInputStream(SvgFile.of(picture.get()))),
                  outcome));
        }
      }
    }
    return all;
  }

  /** Points to a half-nanometre, at the scale of the table in that view; both views must agree. */
  public double scale() {
    Element table = rectangle("plan-table");
    return number(table, "width") / outcome.machine().tableLength();
  }

  public double sideScale() {
    return number(rectangle("side-table"), "width") / outcome.machine().tableWidth();
  }

  public Map<String, Element> groups() {
    Map<String, Element> groups = new LinkedHashMap<>();
    NodeList all = svg.getElementsByTagName("g");
    for (int i = 0; i < all.getLength(); i++) {
      Element group = (Element) all.item(i);
      if (group.hasAttribute("id")) {
        groups.put(group.getAttribute("id"), group);
      }
    }
    return groups;
  }

  /** The areas of the groups of a view that bear this name. */
  public List<Area> named(String view, String name) {
    List<Area> areas = new ArrayList<>();
    groups()
        .forEach(
            (id, group) -> {
              NodeList titles = group.getElementsByTagName("title");
              if (id.startsWith(view)
                  && titles.getLength() > 0
                  && titles.item(0).getTextContent().equals(name)) {
                areas.add(area(id));
              }
            });
    return areas;
  }

  public Area area(String id) {
    Element box = rectangle(id);
    return area(
        id.startsWith("plan"),
        number(box, "x"),
        number(box, "y"),
        number(box, "width"),
        number(box, "height"));
  }

  private Area area(boolean plan, double x, double y, double width, double height) {
    Element table = rectangle(plan ? "plan-table" : "side-table");
    Machine machine = outcome.machine();
    double leftEnd = -(plan ? machine.tableLength() : machine.tableWidth()) / 2.0;
    double top = plan ? machine.tableWidth() / 2.0 : 0;
    double left = leftEnd + (x - number(table, "x")) / scale();
    double high = top - (y - number(table, "y")) / scale();
    return new Area(left, left + width / scale(), high - height / scale(), high);
  }

  /** The two faces of a view's dimension: along its axis, low and high. */
  public List<Double> faces(String view, boolean level) {
    Element group = groups().get(view + "-dimension");
    List<Double> faces = new ArrayList<>();
    NodeList lines = group.getElementsByTagName("line");
    for (int i = 0; i < 2; i++) {
      Element line = (Element) lines.item(i);
      Area at = area(view.equals("plan"), number(line, "x1"), number(line, "y1"), 0, 0);
      Area middle = area(view.equals("plan"), number(line, "x2"), number(line, "y2"), 0, 0);
      faces.add(level ? (at.left() + middle.left()) / 2 : (at.high() + middle.high()) / 2);
    }
    return faces;
  }

  /** The first line of a group: from its first point to its second, as a box in that order. */
  public Area line(String id) {
    Element line = (Element) groups().get(id).getElementsByTagName("line").item(0);
    Area from = area(true, number(line, "x1"), number(line, "y1"), 0, 0);
    Area to = area(true, number(line, "x2"), number(line, "y2"), 0, 0);
    return new Area(from.left(), to.left(), from.low(), to.low());
  }

  public List<String> texts() {
    List<String> texts = new ArrayList<>();
    NodeList all = svg.getElementsByTagName("text");
    for (int i = 0; i < all.getLength(); i++) {
      texts.add(all.item(i).getTextContent());
    }
    return texts;
  }

  /** What is written in the areas of a view that bear this name, as its first letter stands. */
  public List<String> textsIn(String view, String name) {
    List<Area> areas = named(view, name);
    List<String> texts = new ArrayList<>();
    NodeList all = svg.getElementsByTagName("text");
    for (int i = 0; i < all.getLength(); i++) {
      Element text = (Element) all.item(i);
      Area at = area(view.equals("plan"), number(text, "x"), number(text, "y"), 0, 0);
      if (areas.stream().anyMatch(area -> area.contains(at))) {
        texts.add(text.getTextContent());
      }
    }
    return texts;
  }

  /** The first rectangle of a group. */
  private Element rectangle(String id) {
    Element group = groups().get(id);
    if (group == null) {
      throw new AssertionError("no " + id + " in " + groups().keySet());
    }
    for (Node child = group.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child.getNodeName().equals("rect")) {
        return (Element) child;
      }
    }
    throw new AssertionError(id + " holds no rectangle");
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
