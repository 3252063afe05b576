package org.jawroom.tables.source.sheet;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** The main part of a workbook: its sheets, in order, and its date system. */
public final class SheetList extends DefaultHandler {
  private static final int MOST = 10_000;

  /**
   * A sheet.
   *
   * @param name as displayed
   * @param relation the relationship id of its part; empty if it has none
   * @param hidden whether it is hidden in the spreadsheet
   */
  public record Listed(String name, String relation, boolean hidden) {}

  private final List<Listed> sheets = new ArrayList<>();
  private boolean from1904;
  private String root = "";

  public List<Listed> sheets() {
    return sheets;
  }

  public boolean countsFrom1904() {
    return from1904;
  }

  public boolean isWorkbook() {
    return root.equals("workbook");
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes)
      throws SAXException {
    root = root.isEmpty() ? name : root;
    if (name.equals("workbookPr")) {
      String date1904 = attributes.getValue("date1904");
      from1904 = "1".equals(date1904) || "true".equals(date1904);
    } else if (name.equals("sheet")) {
      String title = attributes.getValue("name");
      String state = attributes.getValue("state");
      boolean hidden = "hidden".equals(state) || "veryHidden".equals(state);
      sheets.add(new Listed(title == null ? "" : title, relation(attributes), hidden));
      if (sheets.size() > MOST) {
        throw new SAXException("more than " + MOST + " sheets");
      }
    }
  }

  /** {@code r:id}, with any namespace prefix. */
  private static String relation(Attributes attributes) {
    for (int i = 0; i < attributes.getLength(); i++) {
      if (attributes.getLocalName(i).equals("id") && !attributes.getURI(i).isEmpty()) {
        return attributes.getValue(i);
      }
    }
    return "";
  }
}
