package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.ToTape;
import org.jawroom.app.choice.ViseRange;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Solving;
import org.jawroom.app.run.TapePages;
import org.jawroom.cli.option.MachinesOption;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Threads;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Output;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.form.FormPage;
import org.jawroom.report.form.MeasuringForm;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.tape.TapeCsv;
import org.jawroom.report.tape.ToTapeWords;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom tape}: what to tape first, as a form to fill in. */
@Command(
    name = "tape",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Writes what to tape first: the readings that decide unknown pairings.",
      "A form to print, a page for each machine and vise with the readings marked, and"
          + " beside it the same as CSV, to fill in and give to jawroom fill."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom tape shop.xlsx",
      "  jawroom tape tables -o bay1.pdf --machines \"mill 1…mill 9\"",
      "  jawroom fill shop.xlsx tape.csv -o filled",
      "",
      "Exit status: 0 done, also with nothing to tape; 1 the tables were refused; 2 wrong"
          + " use; 3 a file could not be read or written.",
    })
public final class TapeCommand implements Callable<Integer> {
  private static final String TITLE = "jawroom readings to tape";

  /** How many readings the terminal lists. */
  private static final int LISTED = 5;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "INPUT",
      description = "a folder of CSV files (machines.csv, vises.csv, ...) or an XLSX workbook")
  private Path input;

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "FILE.pdf",
      defaultValue = "tape.pdf",
      description =
          "the form to write; the CSV of the same name stands beside it (default:"
              + " ${DEFAULT-VALUE})")
  private Path output;

  @Mixin private MachinesOption machines;

  @Option(
      names = "--vises",
      order = 3,
      paramLabel = "A…B",
      description = "only the vises from A to B, likewise")
  private String vises;

  @Mixin private Threads threads;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    int workers = threads.count();
    Output.isFile(spec, output, ".pdf");
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Destination destination = destination();
    Output.check(spec, destination, Input.files(input, reading));
    Optional<Shop> part = part(reading.shop().get(), err);
    if (part.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    Shop shop = part.get();
    List<Advice> advice = unknown(shop, workers, err);
    List<ToTape> readings = ToTape.of(shop, advice);
    report(readings, advice, new ToTapeWords(PeopleUnits.ofShop(reading)), destination);
    return ExitStatus.DONE;
  }

  private Optional<Shop> part(Shop shop, PrintWriter err) {
    Optional<Shop> ofMachines = machines.part(shop, err);
    return vises == null ? ofMachines : ofMachines.flatMap(part -> ViseRange.of(part, vises, err));
  }

  /** Whatever is not unknown is not kept: a large shop has far more of these. */
  private static List<Advice> unknown(Shop shop, int workers, PrintWriter err) {
    Function<SolvedPairing, Optional<Advice>> kept =
        solved ->
            solved.outcome().verdict() == Verdict.UNKNOWN
                ? Optional.of(Advisor.advise(shop.settings(), solved))
                : Optional.empty();
    return Solving.all(shop, workers, Progress.on(err), kept).stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private Destination destination() {
    Map<String, ReportKind> files = new LinkedHashMap<>();
    files.put(pdf(), ReportMarks.pdf(TITLE));
    files.put(csv(), TapeCsv.KIND);
    return new Destination(output.toAbsolutePath().getParent(), files);
  }

  private String pdf() {
    return output.getFileName().toString();
  }

  private String csv() {
    return pdf().substring(0, pdf().length() - ".pdf".length()) + ".csv";
  }

  private void report(
      List<ToTape> readings, List<Advice> advice, ToTapeWords words, Destination destination)
      throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (readings.isEmpty()) {
      out.println(
          advice.isEmpty()
              ? "Nothing to tape: no pairing is unknown."
              : "Nothing to tape: "
                  + count(advice.size(), "pairing is", "pairings are")
                  + " unknown, but cannot fit whatever is measured.");
      return;
    }
    List<FormPage> pages = TapePages.of(readings, words);
    byte[] form = MeasuringForm.of(TITLE, pages);
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    files.put(pdf(), to -> to.write(form));
    files.put(csv(), to -> TapeCsv.write(readings, to));
    AtomicFiles.publish(destination, files);
    out.println("Tape first:");
    readings.stream().limit(LISTED).forEach(one -> out.println("  " + line(one, words)));
    if (readings.size() > LISTED) {
      out.println("  and " + (readings.size() - LISTED) + " more");
    }
    long hopeless = ToTape.hopeless(advice);
    if (hopeless > 0) {
      out.println(
          count(hopeless, "unknown pairing", "unknown pairings")
              + " cannot fit whatever is measured, and "
              + (hopeless == 1 ? "is" : "are")
              + " left out.");
    }
    out.println(
        "Written: "
            + output
            + " ("
            + count(pages.size(), "page", "pages")
            + "), "
            + output.resolveSibling(csv())
            + " ("
            + count(readings.size(), "reading", "readings")
            + ")");
  }

  private static String line(ToTape one, ToTapeWords words) {
    String within = words.within(one);
    return PlainText.forTerminal(
        one.reading().reading()
            + " of "
            + one.reading().name()
            + ": "
            + words.decides(one)
            + " ("
            + ToTapeWords.which(one)
            + ")"
            + (within.isEmpty() ? "" : "; read it " + within));
  }

  private static String count(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }
}
