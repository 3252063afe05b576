package org.jawroom.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import java.util.spi.ToolProvider;
import javax.tools.JavaCompiler;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.codec.binary.Base64;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.io.IOUtils;
import org.jawroom.app.output.Version;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The packed JARs as another program uses them; run once they are packed. */
class JarLibraryTest {
  private static final Path MAIN = Path.of("target", "jawroom-" + Version.number() + ".jar");
  private static final Path CORE = Path.of("target", "jawroom-" + Version.number() + "-core.jar");

  @TempDir private Path classes;

  /**
   * By hand: the bolts' middle may stand 2 mm either way of the middle slot (16 mm holes, M12 in a
   * slot of 14 mm: ISO 299), so the fixed jaw at 83 mm at least, the casting's end at 138 mm. The
   * rear cover is at 200 + 60 mm. 260 - 138 - 6 mm of clearance = 116 mm; the door leaves more.
   */
  @Test
  void buildAndSolve_coreJarAlone_solves() throws Exception {
    assertEquals(List.of("FITS 116 mm"), compileAndRun("BuildAndSolve", List.of(CORE)));
  }

  @Test
  void readAndSolve_mainJarAndTheCsvLibrary_printsWhatTheReportsSay() throws Exception {
    List<Path> jars =
        List.of(MAIN, jarOf(CSVFormat.class), jarOf(IOUtils.class), jarOf(Base64.class));
    List<String> report = Files.readAllLines(Path.of("reports", "pairings.csv"));
    String[] header = report.get(0).split(",");
    String[] row = report.get(1).split(",");
    assertEquals(
        List.of(
            cell(header, row, "verdict").toUpperCase(java.util.Locale.ROOT),
            "margin " + Double.parseDouble(cell(header, row, "best_margin_mm")),
            Double.parseDouble(cell(header, row, "x_mm"))
                + ", "
                + Double.parseDouble(cell(header, row, "y_mm"))),
        compileAndRun("ReadAndSolve", jars));
  }

  @Test
  void coreJar_needsTheJdkAlone() {
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out, true);
    ToolProvider jdeps = ToolProvider.findFirst("jdeps").orElseThrow();
    assertEquals(0, jdeps.run(writer, writer, "-s", CORE.toString()), out::toString);
    assertEquals(CORE.getFileName() + " -> java.base", out.toString().strip());
  }

  @Test
  void manifests_nameTheModules() throws Exception {
    assertEquals("org.jawroom", moduleName(MAIN));
    assertEquals("org.jawroom.core", moduleName(CORE));
  }

  /** What is neither optional nor for tests would come onto the class path of every user. */
  @Test
  void publishedPom_bringsNothingAlong() throws Exception {
    try (JarFile jar = new JarFile(MAIN.toFile());
        InputStream pom =
            jar.getInputStream(jar.getEntry("META-INF/maven/org.jawroom/jawroom/pom.xml"))) {
      Element project =
          DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(pom).getDocumentElement();
      Element own = child(project, "dependencies");
      NodeList all = own.getElementsByTagName("dependency");
      List<String> brought = new ArrayList<>();
      for (int i = 0; i < all.getLength(); i++) {
        Element one = (Element) all.item(i);
        if (!"test".equals(text(one, "scope")) && !"true".equals(text(one, "optional"))) {
          brought.add(text(one, "artifactId"));
        }
      }
      assertTrue(all.getLength() > 10, "reads the dependencies");
      assertEquals(List.of(), brought);
    }
  }

  private List<String> compileAndRun(String example, List<Path> jars) throws Exception {
    String path = String.join(File.pathSeparator, jars.stream().map(Path::toString).toList());
    JavaCompiler compiler = javax.tools.ToolProvider.getSystemJavaCompiler();
    assertNotNull(compiler, "needs a JDK");
    int compiled =
        compiler.run(
            null,
            null,
            null,
            "-proc:none",
            "-cp",
            path,
            "-d",
            classes.toString(),
            "src/test/java/org/jawroom/example/" + example + ".java");
    assertEquals(0, compiled);
    ProcessBuilder java =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            path + File.pathSeparator + classes,
            "org.jawroom.example." + example);
    // What Maven was given is not for the example's Java.
    java.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = java.redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), out);
    return out.lines().toList();
  }

  private static Path jarOf(Class<?> type) throws Exception {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  private static String cell(String[] header, String[] row, String column) {
    return row[List.of(header).indexOf(column)];
  }

  private static String moduleName(Path jar) throws Exception {
    try (JarFile file = new JarFile(jar.toFile())) {
      return file.getManifest().getMainAttributes().getValue("Automatic-Module-Name");
    }
  }

  private static Element child(Element parent, String name) {
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && element.getTagName().equals(name)) {
        return element;
      }
    }
    throw new AssertionError("no " + name);
  }

  private static String text(Element parent, String name) {
    NodeList found = parent.getElementsByTagName(name);
    return found.getLength() == 0 ? "" : found.item(0).getTextContent().strip();
  }
}
