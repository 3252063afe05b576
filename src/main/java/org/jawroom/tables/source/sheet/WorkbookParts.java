package org.jawroom.tables.source.sheet;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.util.XMLHelper;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The parts of a workbook and their relationships; see ECMA-376 part 2. Types of relationships and
 * elements are matched by their local names, so that both the transitional and the strict form of
 * ECMA-376 part 1 are read.
 */
public final class WorkbookParts implements Closeable {

  /**
   * The limit for sheets, shared strings and styles; parsed by SAX events, they are not held in
   * memory.
   */
  public static final long LARGEST = 512L << 20;

  /** The limit for parts that only list others. */
  private static final long LARGEST_LIST = 16L << 20;

  private static final int MOST_RELATIONS = 100_000;

  /**
   * A relationship from one part to another.
   *
   * @param type the last segment of its type, as {@code worksheet}
   * @param part the target
   */
  public record Relation(String type, String part) {}

  private final Path file;
  private final BoundedZip zip;

  public WorkbookParts(Path file, byte[] bytes) throws UnreadableInput {
    this.file = file;
    try {
      this.zip = new BoundedZip(bytes);
    } catch (IOException | RuntimeException e) {
      throw unreadable("its zip directory is cut off or damaged; copy it again", e);
    }
  }

  @Override
  public void close() {
    try {
      zip.close();
    } catch (IOException e) {
      throw new IllegalStateException("closing an in-memory zip failed", e);
    }
  }

  public boolean has(String part) {
    return zip.has(part);
  }

  /** The main part; refuses a file that is no workbook, and says what it is. */
  public String workbook() throws UnreadableInput {
    Optional<String> main =
        relations("").values().stream()
            .filter(relation -> relation.type.equals("officeDocument"))
            .map(Relation::part)
            .findFirst();
    String part = main.orElse("xl/workbook.xml");
    if (part.endsWith(".bin")) {
      throw unreadable("it is a binary workbook (XLSB); save it as .xlsx", null);
    }
    if (!zip.has(part)) {
      throw unreadable(
          isOpenDocument()
              ? "it is an OpenDocument workbook (ODS); save it as .xlsx"
              : "it is a zip file without a workbook in it",
          null);
    }
    return part;
  }

  private boolean isOpenDocument() {
    if (!zip.has("mimetype")) {
      return false;
    }
    try (InputStream in = zip.open("mimetype", LARGEST_LIST)) {
      String type = new String(in.readNBytes(100), StandardCharsets.US_ASCII);
      return type.startsWith("application/vnd.oasis.opendocument.spreadsheet");
    } catch (IOException e) {
      return false; // Too damaged to recognise: the general message applies.
    }
  }

  /** The relationships of a part, by id; empty if it has none. The package's own name is empty. */
  public Map<String, Relation> relations(String part) throws UnreadableInput {
    int slash = part.lastIndexOf('/');
    String folder = part.substring(0, slash + 1);
    String list = folder + "_rels/" + part.substring(slash + 1) + ".rels";
    Map<String, Relation> relations = new LinkedHashMap<>();
    if (zip.has(list)) {
      read(list, LARGEST_LIST, new RelationList(folder, relations));
    }
    return relations;
  }

  public void readList(String part, DefaultHandler events) throws UnreadableInput {
    read(part, LARGEST_LIST, events);
  }

  /** Parses an existing part; one that cannot be parsed makes the file unreadable. */
  public void read(String part, long most, DefaultHandler events) throws UnreadableInput {
    try (InputStream in = zip.open(part, most)) {
      // Without DTDs there are no entities, neither expanding nor external ones.
      XMLReader reader = XMLHelper.newXMLReader();
      reader.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      reader.setContentHandler(events);
      reader.parse(new InputSource(in));
    } catch (SheetTable.Enough stop) {
      return;
    } catch (SAXParseException e) {
      throw unreadable(
          String.format("its part %s is no sound XML in line %d", part, e.getLineNumber()), e);
    } catch (SAXException | IOException e) {
      throw unreadable("its part " + part + " is damaged: " + e.getMessage(), e);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("no XML parser available", e);
    } catch (RuntimeException e) {
      // On damaged bytes, both the inflater and the XML parser may throw anything.
      throw unreadable("its part " + part + " is damaged: " + e, e);
    }
  }

  public UnreadableInput unreadable(String why, Exception cause) {
    return new UnreadableInput(file + " could not be read: " + Fault.visible(why), cause);
  }

  private static final class RelationList extends DefaultHandler {
    private final String folder;
    private final Map<String, Relation> relations;

    RelationList(String folder, Map<String, Relation> relations) {
      this.folder = folder;
      this.relations = relations;
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes)
        throws SAXException {
      String id = attributes.getValue("Id");
      String type = attributes.getValue("Type");
      String target = attributes.getValue("Target");
      boolean inside = !"External".equals(attributes.getValue("TargetMode"));
      if (name.equals("Relationship") && id != null && type != null && target != null && inside) {
        String last = type.substring(type.lastIndexOf('/') + 1);
        relations.putIfAbsent(id, new Relation(last, resolved(target)));
        if (relations.size() > MOST_RELATIONS) {
          throw new SAXException("more relationships than a workbook can have");
        }
      }
    }

    /** The target's path from the root. */
    private String resolved(String target) {
      String plain = target.replace('\\', '/');
      Deque<String> names = new ArrayDeque<>();
      for (String name : (plain.startsWith("/") ? plain : folder + plain).split("/")) {
        if (name.equals("..")) {
          names.pollLast();
        } else if (!name.isEmpty() && !name.equals(".")) {
          names.addLast(name);
        }
      }
      return String.join("/", names);
    }
  }
}
