package org.jawroom.tables.source.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The number formats of a workbook's cell styles, parsed by SAX events; see ECMA-376 part 1, 18.8.
 * A missing style displays numbers as they are.
 */
public final class SheetStyles extends DefaultHandler {

  /** Many times what spreadsheets allow. */
  private static final int MOST = 1_000_000;

  private static final int MOST_CODES = 10_000;

  /** One number format: its code, and whether it displays dates. */
  record Format(FormatCode code, boolean date) {}

  private static final Format GENERAL = new Format(new FormatCode("General"), false);

  private final Map<Integer, String> codes = new HashMap<>();
  private final Map<Integer, Format> formats = new HashMap<>();

  /** The number format id of each cell style, and of each base style. */
  private final List<Integer> styles = new ArrayList<>();

  private final List<Integer> bases = new ArrayList<>();
  private String list = "";

  /** The format of the style with that index. */
  Format format(int style) {
    if (style < 0 || style >= styles.size()) {
      return GENERAL;
    }
    return formats.computeIfAbsent(styles.get(style), this::made);
  }

  private Format made(int number) {
    String code = codes.getOrDefault(number, BuiltinFormats.getBuiltinFormat(number));
    if (code == null || code.isEmpty()) {
      return isEastAsianDate(number) ? new Format(GENERAL.code, true) : GENERAL;
    }
    boolean date = code.length() <= FormatCode.LONGEST && DateUtil.isADateFormat(number, code);
    return new Format(new FormatCode(code), date);
  }

  /** Built-in format ids that are dates in some languages, without a code in the file. */
  private static boolean isEastAsianDate(int number) {
    return number >= 27 && number <= 36 || number >= 50 && number <= 58;
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes)
      throws SAXException {
    switch (name) {
      case "numFmts", "cellStyleXfs", "cellXfs" -> list = name;
      case "numFmt" -> addCode(attributes);
      case "xf" -> addStyle(attributes);
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String name, String qualified) {
    if (name.equals(list)) {
      list = "";
    }
  }

  private void addCode(Attributes attributes) throws SAXException {
    String code = attributes.getValue("formatCode");
    if (list.equals("numFmts") && code != null) {
      // One character too many is enough to detect that it is too long.
      String start = code.substring(0, Math.min(code.length(), FormatCode.LONGEST + 1));
      codes.put(number(attributes.getValue("numFmtId"), -1), start);
      refuseBeyond(codes.size(), MOST_CODES);
    }
  }

  private void addStyle(Attributes attributes) throws SAXException {
    String format = attributes.getValue("numFmtId");
    if (list.equals("cellStyleXfs")) {
      bases.add(number(format, 0));
      refuseBeyond(bases.size(), MOST);
    } else if (list.equals("cellXfs")) {
      int base = number(attributes.getValue("xfId"), -1);
      int based = base >= 0 && base < bases.size() ? bases.get(base) : 0;
      styles.add(number(format, based));
      refuseBeyond(styles.size(), MOST);
    }
  }

  private static void refuseBeyond(int size, int most) throws SAXException {
    if (size > most) {
      throw new SAXException("more styles than a workbook can have");
    }
  }

  private static int number(String text, int otherwise) {
    try {
      return text == null ? otherwise : Integer.parseInt(text.strip());
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }
}
