package org.jawroom.tables.source;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jawroom.tables.schema.TableSpec;

/**
 * Classifies the name of a file or sheet. A table ignored because of its name could make a vise fit
 * that hits something, so a name that resembles a table's is neither accepted nor ignored but
 * refused.
 *
 * @param table the one meant; empty for {@link Kind#OTHER}
 */
record TableName(Kind kind, Optional<TableSpec> table) {

  enum Kind {
    /** The name of a table. */
    TABLE,
    /** A name that resembles a table's, or a table's name on a file of another format. */
    NEARLY,
    /** A file that may well lie beside a table: a backup, a lock file, {@code door guards}. */
    SPARE,
    /** Anything else. */
    OTHER
  }

  private static final TableName OTHER = new TableName(Kind.OTHER, Optional.empty());

  /** Formats of text and pictures: they have no cells. */
  private static final Set<String> DOCUMENTS =
      Set.of(
          "pdf", "png", "jpg", "jpeg", "gif", "svg", "bmp", "webp", "heic", "tif", "tiff", "doc",
          "docx", "odt", "rtf", "md", "ppt", "pptx", "odp", "htm", "html", "dwg", "dxf", "step",
          "stp", "igs", "stl", "mp4", "mov", "avi", "url", "lnk", "jar", "jsa", "sh", "py", "bat");

  private static final Set<String> BACKUPS =
      Set.of("bak", "old", "orig", "tmp", "temp", "swp", "save", "sav", "part");

  /** Extensions of files that only need renaming to be a CSV. */
  private static final Set<String> TEXTS = Set.of("", "csv", "tsv", "tab", "txt");

  /** Words that people and programs add to a table's name. */
  private static final Set<String> BESIDE =
      Set.of(
          "copy",
          "of",
          "kopie",
          "von",
          "copie",
          "de",
          "old",
          "new",
          "final",
          "backup",
          "bak",
          "orig",
          "original",
          "saved",
          "tmp",
          "temp",
          "draft",
          "test",
          "edited",
          "fixed",
          "rev",
          "version",
          "list",
          "table",
          "sheet",
          "data",
          "all",
          "my",
          "our",
          "the",
          "csv",
          "tsv",
          "txt",
          "tab",
          "xls",
          "xlsx",
          "xlsm",
          "xlsb",
          "ods");

  /** Words that contain a table's name but mean something else. */
  private static final Set<String> ORDINARY =
      Set.of(
          "amounts",
          "advises",
          "devises",
          "revises",
          "offsets",
          "assets",
          "presets",
          "subsets",
          "insets",
          "resets",
          "toolsets",
          "datasets",
          "outstanding",
          "understanding");

  /** The longest name in file systems and spreadsheets. */
  private static final int LONGEST = 255;

  /** Sorted by length, so that the longest contained name is found first. */
  private static final List<TableSpec> TABLES =
      Arrays.stream(TableSpec.values())
          .sorted(Comparator.comparingInt(table -> -table.tableName().length()))
          .toList();

  static TableName ofSheet(String title) {
    Optional<TableSpec> table = TableSpec.named(title);
    return table.isPresent() ? new TableName(Kind.TABLE, table) : nearest(title);
  }

  static TableName ofFile(String name) {
    int dot = name.lastIndexOf('.');
    String title = dot > 0 ? name.substring(0, dot) : name;
    String ending = ending(name);
    TableName sheet = ofSheet(title);
    if (ending.equals("csv") && sheet.kind == Kind.TABLE) {
      return sheet;
    }
    if (DOCUMENTS.contains(ending)) {
      return OTHER;
    }
    boolean spare =
        BACKUPS.contains(ending)
            || name.endsWith("~")
            || name.startsWith("~$")
            || name.startsWith("#")
            || name.startsWith(".");
    TableName near = sheet.table.isPresent() ? sheet : nearest(name);
    if (near.table.isEmpty()) {
      return OTHER;
    }
    boolean sure = !spare && near.kind != Kind.SPARE;
    return new TableName(sure ? Kind.NEARLY : Kind.SPARE, near.table);
  }

  /** Whether the file only needs another name to be a CSV. */
  static boolean isText(String fileName) {
    return TEXTS.contains(ending(fileName));
  }

  private static String ending(String fileName) {
    int dot = fileName.lastIndexOf('.');
    return dot > 0 ? fileName.substring(dot + 1).strip().toLowerCase(Locale.ROOT) : "";
  }

  /**
   * If the table's name follows another word, as in door guards, the file may be something else.
   */
  private static TableName nearest(String title) {
    List<String> words = words(title);
    List<String> main = words.stream().filter(word -> !isBeside(word)).toList();
    String whole = String.join("", main);
    String one = main.isEmpty() ? "" : main.get(0);
    String two = String.join("", main.subList(0, Math.min(2, main.size())));
    return first(
            name ->
                one.contains(name)
                    || two.equals(name)
                    || isMisspelt(one, name)
                    || isMisspelt(two, name)
                    || isNear(whole, name))
        .map(table -> new TableName(Kind.NEARLY, Optional.of(table)))
        .or(
            () ->
                first(name -> holds(words, name))
                    .map(table -> new TableName(Kind.SPARE, Optional.of(table))))
        .orElse(OTHER);
  }

  private static Optional<TableSpec> first(Predicate<String> near) {
    return TABLES.stream()
        .filter(table -> near.test(table.tableName().replace("_", "")))
        .findFirst();
  }

  /** The runs of letters, in lower case and without diacritics. */
  private static List<String> words(String title) {
    String start = title.length() > LONGEST ? title.substring(0, LONGEST) : title;
    StringBuilder plain = new StringBuilder();
    Normalizer.normalize(start, Normalizer.Form.NFKD)
        .toLowerCase(Locale.ROOT)
        .codePoints()
        .filter(letter -> Character.getType(letter) != Character.NON_SPACING_MARK)
        .forEach(letter -> plain.appendCodePoint(Character.isLetter(letter) ? letter : ' '));
    return Arrays.stream(plain.toString().split(" +"))
        .filter(word -> !word.isEmpty() && !ORDINARY.contains(word))
        .toList();
  }

  private static boolean isBeside(String word) {
    return word.length() == 1 || BESIDE.contains(word);
  }

  /** Whether a word, or two adjacent ones joined, contain the name. */
  private static boolean holds(List<String> words, String name) {
    for (int i = 0; i < words.size(); i++) {
      String next = i + 1 < words.size() ? words.get(i + 1) : "";
      if (words.get(i).contains(name) || (words.get(i) + next).equals(name)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is the singular of the name, or either form with one typing error. */
  private static boolean isNear(String word, String name) {
    String one = singular(name);
    return word.equals(one) || isSlip(word, name) || isSlip(word, one);
  }

  /** For a word among others: the singular is an ordinary word there, as in vise notes. */
  private static boolean isMisspelt(String word, String name) {
    return !word.equals(singular(name)) && isSlip(word, name);
  }

  private static String singular(String name) {
    return name.substring(0, name.length() - 1);
  }

  /**
   * Whether one letter, not the first, is missing, added or replaced, or two adjacent ones are
   * swapped.
   */
  private static boolean isSlip(String word, String name) {
    int start = 0;
    while (start < Math.min(word.length(), name.length())
        && word.charAt(start) == name.charAt(start)) {
      start++;
    }
    int end = 0;
    while (end < Math.min(word.length(), name.length()) - start
        && word.charAt(word.length() - 1 - end) == name.charAt(name.length() - 1 - end)) {
      end++;
    }
    String written = word.substring(start, word.length() - end);
    String meant = name.substring(start, name.length() - end);
    boolean swapped =
        written.length() == 2 && new StringBuilder(written).reverse().toString().equals(meant);
    return start > 0 && (swapped || Math.max(written.length(), meant.length()) == 1);
  }
}
