package org.jawroom.cli.command;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Runs {@code plan} on a copy of the tables of a golden shop. */
abstract class GoldenPlanRun {
  @TempDir Path folder;
  Path tables;
  Path reports;

  final StringWriter out = new StringWriter();
  final StringWriter err = new StringWriter();

  private final String shop;
  private final List<String> names;

  GoldenPlanRun(String shop, List<String> names) {
    this.shop = shop;
    this.names = names;
  }

  @BeforeEach
  void copyTables() throws Exception {
    tables = Files.createDirectory(folder.resolve("tables"));
    reports = folder.resolve("reports");
    for (String name : names) {
      Files.copy(golden(name), tables.resolve(name));
    }
  }

  final String unwrapped() {
    return out.toString().replaceAll("\\s+", " ");
  }

  final int plan(String... options) {
    out.getBuffer().setLength(0);
    List<String> args =
        new ArrayList<>(List.of("plan", tables.toString(), "-o", reports.toString()));
    args.addAll(Arrays.asList(options));
    return Main.run(
        args.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  final String written() throws Exception {
    return Files.readString(reports.resolve("plan.csv"));
  }

  final XSSFWorkbook workbook() throws Exception {
    return new XSSFWorkbook(
        new ByteArrayInputStream(Files.readAllBytes(reports.resolve("plan.xlsx"))));
  }

  final Path golden(String name) throws Exception {
    return Path.of(
        GoldenPlanRun.class.getResource("/org/jawroom/golden/" + shop + "/" + name).toURI());
  }
}
