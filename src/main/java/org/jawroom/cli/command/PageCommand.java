package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jawroom.advice.Advisor;
import org.jawroom.app.input.Input;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Facts;
import org.jawroom.app.run.Solving;
import org.jawroom.cli.option.MachinesOption;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Threads;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Foreseen;
import org.jawroom.cli.refusal.Output;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.standing.StandingTable;
import org.jawroom.report.page.PageFile;
import org.jawroom.report.page.PagePairing;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom page}: the whole shop as one HTML file to click in. */
@Command(
    name = "page",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Writes the whole shop as one HTML page.",
      "Any browser opens it from disk, without a network. It has the matrix, and a"
          + " drawing of each pairing; there the table can be jogged, the jaws opened and the"
          + " vise dragged, and the page shows the gaps that result."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom page shop.xlsx",
      "  jawroom page tables -o shop.html --clearance 1/4in --show in",
      "  jawroom page large --machines \"mill 1…mill 9\" -o part1.html",
      "",
      "Exit status: 0 done, whatever the verdicts; 1 the tables were refused; 2 wrong"
          + " use; 3 a file could"
          + " not be read or written.",
    })
public final class PageCommand implements Callable<Integer> {

  /** Up to this number of pairings a page is small in any case. */
  private static final long UNSEEN = 1_000;

  /** The number of pairings solved beforehand to estimate the size of all. */
  private static final int SAMPLE = 240;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "INPUT",
      description = "a folder of CSV files (machines.csv, vises.csv, ...) or an XLSX workbook")
  private Path input;

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "FILE.html",
      defaultValue = "page.html",
      description = "the file to write, .html or .htm (default: ${DEFAULT-VALUE})")
  private Path output;

  @Mixin private MachinesOption machines;

  @Mixin private Threads threads;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    int workers = threads.count();
    Output.isFile(spec, output, ".html", ".htm");
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Output.check(spec, PageFile.destination(output), Input.files(input, reading));
    Optional<Shop> part = machines.part(reading.shop().get(), err);
    if (part.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    Shop shop = part.get();
    Function<SolvedPairing, PagePairing> kept =
        solved -> PagePairing.of(Advisor.advise(shop.settings(), solved), solved);
    if (Foreseen.pairings(shop) > UNSEEN) {
      Foreseen page =
          Foreseen.page(shop, PageFile.estimate(shop, Solving.sample(shop, SAMPLE, kept)));
      page.check(spec, "take fewer machines with --machines");
    }
    List<PagePairing> pairings = Solving.all(shop, workers, Progress.on(err), kept);
    List<Outcome> outcomes = pairings.stream().map(PagePairing::outcome).toList();
    Path written =
        PageFile.write(
            output,
            shop,
            pairings,
            StandingTable.solve(shop.settings(), shop.standing()),
            Facts.of(reading, shop, outcomes));
    spec.commandLine().getOut().println("Written: " + written);
    return ExitStatus.DONE;
  }
}
