package org.jawroom.tables.source.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** The shared strings of a workbook, parsed by SAX events; see ECMA-376 part 1, 18.4. */
public final class SharedTexts extends DefaultHandler {

  /** The limit on all of them together: many times what tables with the longest names need. */
  private static final int MOST_LETTERS = 64 << 20;

  /** The memory overhead of a text, expressed in letters. */
  private static final int EACH = 24;

  private final List<String> texts = new ArrayList<>();
  private final CellLetters letters = new CellLetters();
  private int phonetic;
  private boolean inText;
  private long all;

  /** The text with that index; empty if there is none. */
  Optional<String> get(int index) {
    return index < 0 || index >= texts.size() ? Optional.empty() : Optional.of(texts.get(index));
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes) {
    switch (name) {
      case "si" -> letters.clear();
      case "rPh" -> phonetic++;
      case "t" -> inText = phonetic == 0;
      default -> {}
    }
  }

  @Override
  public void characters(char[] text, int start, int length) {
    if (inText) {
      letters.add(text, start, length);
    }
  }

  @Override
  public void endElement(String uri, String name, String qualified) throws SAXException {
    switch (name) {
      case "si" -> {
        String text = letters.text();
        all += text.length() + EACH;
        if (all > MOST_LETTERS) {
          throw new SAXException("more text than tables can need");
        }
        texts.add(text);
      }
      case "rPh" -> phonetic--;
      case "t" -> inText = false;
      default -> {}
    }
  }
}
