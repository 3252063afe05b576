package org.jawroom.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jawroom.app.input.Input;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.run.Facts;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Terminal;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.plausibility.Warnings;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.WarningGroup;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.WrappedLines;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * {@code jawroom check}: reads the tables and prints warnings and open readings; writes nothing.
 */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Reads the tables and lists every fault and every warning.",
      "A warning names what can be true, but looks wrong. Readings that are blank or a range are",
      "listed with the pairings that they leave unknown. Writes nothing."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom check shop.xlsx",
      "  jawroom check tables",
      "",
      "Exit status: 0 the tables can be used, warnings or not; 1 they were refused; 2"
          + " wrong use; 3 a file"
          + " could not be read.",
    })
public final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "INPUT",
      description = "a folder of CSV files (machines.csv, vises.csv, ...) or an XLSX workbook")
  private Path input;

  @Override
  public Integer call() throws UnreadableInput {
    PrintWriter out = spec.commandLine().getOut();
    Reading reading = Input.read(input, SettingOptions.given(spec));
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, spec.commandLine().getErr());
    }
    Shop shop = reading.shop().get();
    list("Left out:", Facts.skipped(reading), out);
    list("Not read:", Facts.leftAlone(reading), out);
    list("Defaults taken:", Facts.defaults(reading, shop), out);
    Optional<List<String>> open = Facts.openRows(reading, shop);
    int warnings = warnings(reading, shop, open.isPresent(), out);
    list("Blank or a range, and what that leaves unknown:", open.orElse(List.of()), out);
    out.println(
        count(shop.machines().size(), "machine")
            + ", "
            + count(shop.vises().size(), "vise")
            + ", "
            + count(shop.jobs().size(), "job")
            + (shop.standing().isEmpty() ? "" : ", " + shop.standing().size() + " standing")
            + (shop.sets().isEmpty() ? "" : ", " + count(shop.sets().size(), "set"))
            + ": no faults, "
            + count(warnings, "warning")
            + ".");
    return ExitStatus.DONE;
  }

  /**
   * Prints the warnings by the rows that they are about, and returns how many there are.
   *
   * @param solved whether what open readings leave unknown is listed, which no warning repeats
   */
  private static int warnings(Reading reading, Shop shop, boolean solved, PrintWriter out) {
    List<String> bare = Facts.bareNumbers(reading);
    List<WarningGroup> groups =
        WarningGroup.of(
            Warnings.of(shop).stream()
                .filter(one -> !solved || one.seriousness() != Seriousness.OPEN)
                .toList());
    if (bare.isEmpty() && groups.isEmpty()) {
      return 0;
    }
    out.println("Warnings (they can be true, but look wrong), the most serious first:");
    bare.forEach(line -> wrapped(line, 2, 6, out));
    int count = bare.size();
    for (WarningGroup group : groups) {
      wrapped(group.heading(), 2, 6, out);
      group.warnings().forEach(one -> wrapped(one.matter(), 4, 6, out));
      count += group.warnings().size();
    }
    return count;
  }

  private static void list(String heading, List<String> lines, PrintWriter out) {
    if (!lines.isEmpty()) {
      out.println(heading);
      lines.forEach(line -> wrapped(line, 2, 4, out));
    }
  }

  private static void wrapped(String text, int first, int others, PrintWriter out) {
    WrappedLines.wrapped(PlainText.forTerminal(text), first, others, Terminal.columns())
        .forEach(out::println);
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
