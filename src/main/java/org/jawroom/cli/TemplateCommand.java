package org.jawroom.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jawroom.tables.template.Template;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom template}: empty tables to fill in. */
@Command(
    name = "template",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Writes an empty workbook to fill in: every table and column, what to measure for each and what it"
          + " gets mistaken for, and a legend with sketches. What is there already is never overwritten."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom template shop.xlsx",
      "  jawroom template --csv tables",
    })
final class TemplateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "the workbook, or with --csv the folder, to write")
  private Path target;

  @Option(names = "--csv", description = "a folder of CSV files instead of a workbook")
  private boolean csv;

  @Override
  public Integer call() throws IOException {
    boolean workbook = target.toString().toLowerCase(java.util.Locale.ROOT).endsWith(".xlsx");
    if (!csv && !workbook) {
      throw new ParameterException(
          spec.commandLine(),
          target + " should end in .xlsx; for a folder of CSV files add --csv.");
    }
    try {
      if (csv) {
        Template.writeFolder(target);
      } else {
        Template.writeWorkbook(target);
      }
    } catch (FileAlreadyExistsException there) {
      spec.commandLine()
          .getErr()
          .println(there.getFile() + " is there already; name another, or move it away first.");
      return ExitStatus.UNREADABLE;
    }
    spec.commandLine().getOut().println("Written: " + target);
    return ExitStatus.DONE;
  }
}
