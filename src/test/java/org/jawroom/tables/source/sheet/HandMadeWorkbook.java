package org.jawroom.tables.source.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook written part by part as other programs may write it; see ECMA-376 parts 1 and 2. It
 * has one sound mill and one sound vise, neither styles nor shared texts, and no more parts than it
 * must.
 */
final class HandMadeWorkbook {
  static final String BOOK = "xl/workbook.xml";
  static final String RELATIONS = "xl/_rels/workbook.xml.rels";
  static final String MACHINES = "xl/worksheets/sheet1.xml";
  static final String VISES = "xl/worksheets/sheet2.xml";
  static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private static final String PACKAGE =
      "http://schemas.openxmlformats.org/package/2006/relationships";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final List<String> sheets = new ArrayList<>();
  private final List<String> relations = new ArrayList<>();

  HandMadeWorkbook() {
    part(
        "[Content_Types].xml",
        "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'/>");
    part("_rels/.rels", relations(relation("rId1", OFFICE + "/officeDocument", BOOK)));
    sheet("machines", "worksheets/sheet1.xml");
    part(
        MACHINES,
        sheetOf(
            row(
                    "machine",
                    "table_moves",
                    "table_length",
                    "table_width",
                    "travel_x",
                    "travel_y",
                    "slot_count",
                    "rear_gap")
                + "<row>"
                + texts("mill", "xy")
                + numbers(600, 300, 400, 300, 3, 12.5)
                + "</row>"));
    sheet("vises", "worksheets/sheet2.xml");
    part(
        VISES,
        sheetOf(
            row("vise", "jaw_width", "jaw_height", "bed_height", "opening_max")
                + "<row>"
                + texts("vise")
                + numbers(150, 40, 60, 150)
                + "</row>"));
  }

  /** In place of the part of that name, if there is one. */
  HandMadeWorkbook part(String name, String text) {
    return part(name, text, StandardCharsets.UTF_8);
  }

  HandMadeWorkbook part(String name, String text, Charset charset) {
    parts.put(name, text.getBytes(charset));
    return this;
  }

  HandMadeWorkbook without(String name) {
    parts.remove(name);
    return this;
  }

  /** The part with one text in place of another, everywhere. */
  HandMadeWorkbook replace(String name, String old, String text) {
    String before = text(name);
    if (!before.contains(old)) {
      throw new IllegalArgumentException(name + " has no " + old);
    }
    return part(name, before.replace(old, text));
  }

  String text(String name) {
    return new String(parts.get(name), StandardCharsets.UTF_8);
  }

  /** Names a sheet; its target counts from the workbook's folder. */
  HandMadeWorkbook sheet(String name, String target) {
    return sheet(name, "", "worksheet", target);
  }

  HandMadeWorkbook sheet(String name, String attributes, String type, String target) {
    int number = sheets.size() + 1;
    sheets.add(
        "<sheet name='"
            + name
            + "' sheetId='"
            + number
            + "' r:id='rId"
            + number
            + "' "
            + attributes
            + "/>");
    return relation(type, target);
  }

  /** What the workbook points at besides. */
  HandMadeWorkbook relation(String type, String target) {
    relations.add(relation("rId" + (relations.size() + 1), OFFICE + "/" + type, target));
    part(RELATIONS, relations(String.join("", relations)));
    part(
        BOOK,
        "<workbook xmlns='"
            + MAIN
            + "' xmlns:r='"
            + OFFICE
            + "'><sheets>"
            + String.join("", sheets)
            + "</sheets></workbook>");
    return this;
  }

  HandMadeWorkbook row(String sheet, String cells) {
    return replace(sheet, "</sheetData>", "<row>" + cells + "</row></sheetData>");
  }

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  Path in(Path folder) throws IOException {
    return Files.write(folder.resolve("shop.xlsx"), bytes());
  }

  Map<String, byte[]> parts() {
    return parts;
  }

  static String sheetOf(String rows) {
    return "<worksheet xmlns='" + MAIN + "'><sheetData>" + rows + "</sheetData></worksheet>";
  }

  private static String row(String... texts) {
    return "<row>" + texts(texts) + "</row>";
  }

  static String texts(String... texts) {
    StringBuilder cells = new StringBuilder();
    for (String text : texts) {
      cells.append("<c t='inlineStr'><is><t>").append(text).append("</t></is></c>");
    }
    return cells.toString();
  }

  static String numbers(double... numbers) {
    StringBuilder cells = new StringBuilder();
    for (double number : numbers) {
      cells.append("<c><v>").append(number).append("</v></c>");
    }
    return cells.toString();
  }

  private static String relation(String id, String type, String target) {
    return "<Relationship Id='" + id + "' Type='" + type + "' Target='" + target + "'/>";
  }

  private static String relations(String relations) {
    return "<Relationships xmlns='" + PACKAGE + "'>" + relations + "</Relationships>";
  }
}
