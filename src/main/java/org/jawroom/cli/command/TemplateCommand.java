package org.jawroom.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Output;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.form.FormPage;
import org.jawroom.report.form.FormReading;
import org.jawroom.report.form.MeasuringForm;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.Need;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.template.FormContents;
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
    versionProvider = VersionLine.class,
    description = {
      "Writes an empty workbook to fill in, a folder of CSV files, or a form to print.",
      "It has every table and column, with example rows that are not read as data. In"
          + " the workbook a comment on each heading explains what to measure and what it"
          + " gets mistaken for, and a legend shows it in sketches. A file that exists"
          + " already is never overwritten."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom template shop.xlsx",
      "  jawroom template --csv tables",
      "  jawroom template --form measure.pdf",
    })
public final class TemplateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      description = "the workbook to write, with --csv the folder, with --form the PDF")
  private Path target;

  @Option(names = "--csv", description = "write a folder of CSV files instead of a workbook")
  private boolean csv;

  @Option(
      names = "--form",
      description = "write a form to fill in by hand at the machine and at the vise, as PDF")
  private boolean form;

  @Override
  public Integer call() throws IOException {
    if (csv && form) {
      throw new ParameterException(spec.commandLine(), "Choose either --csv or --form.");
    }
    if (csv) {
      Output.isFolder(spec, target);
    } else if (form) {
      Output.isFile(spec, target, ".pdf");
    } else if (!target.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new ParameterException(
          spec.commandLine(),
          target + " should end in .xlsx; for a folder of CSV files add --csv.");
    }
    Map<String, byte[]> tables =
        csv ? Template.csvFiles() : Map.of(target.getFileName().toString(), single());
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    Map<String, ReportKind> kinds = new LinkedHashMap<>();
    tables.forEach(
        (name, bytes) -> {
          files.put(name, out -> out.write(bytes));
          kinds.put(name, ReportKind.NONE);
        });
    Destination destination =
        new Destination(csv ? target : target.toAbsolutePath().getParent(), kinds);
    for (Path file : destination.paths()) {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        spec.commandLine()
            .getErr()
            .println(file + " is there already; name another, or move it away first.");
        return ExitStatus.UNREADABLE;
      }
    }
    AtomicFiles.publish(destination, files);
    spec.commandLine().getOut().println("Written: " + target);
    return ExitStatus.DONE;
  }

  private byte[] single() throws IOException {
    return form ? MeasuringForm.of(pages()) : Template.workbook();
  }

  private static List<FormPage> pages() {
    return Stream.of(FormContents.values())
        .map(
            page ->
                new FormPage(
                    page.table() == TableSpec.VISES ? "vise" : "machine",
                    page.title(),
                    page.sketch(),
                    page.columns().stream().map(TemplateCommand::reading).toList(),
                    page.traps()))
        .toList();
  }

  private static FormReading reading(ColumnSpec column) {
    // Nobody who ticks "not measured" may take what a blank then stands for as unknown.
    String blank =
        column.need() == Need.OPTIONAL
            ? " Left blank, it is taken as: " + column.blankMeans() + "."
            : "";
    return new FormReading(
        column.name(), column.help() + blank, column.noneAllowed(), column.isRequired());
  }
}
