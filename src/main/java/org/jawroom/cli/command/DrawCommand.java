package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jawroom.app.choice.Pairs;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.input.PrintedNames;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.cli.option.AtOption;
import org.jawroom.cli.option.SetOption;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Output;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.picture.DrawingFile;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.report.set.SetPicture;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom draw}: the picture of one pairing. */
@Command(
    name = "draw",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Draws one pairing, or a set of vises on one table, from above and from the right.",
      "Both views have one scale and show the recommended place (if there is none, the"
          + " best one tried): table and slots, the vise and the space it sweeps, the guards"
          + " where they come nearest, and the gap that limits it as a dimension."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom draw shop.xlsx \"knee mill\" \"plain 125\" -o knee.svg",
      "  jawroom draw tables \"knee mill\" \"plain 125\" -o knee.pdf --clearance 8mm",
      "  jawroom draw tables \"knee mill\" --set \"two at once\" -o together.pdf",
      "",
      "Exit status: 0 done; 1 the tables were refused; 2 wrong use, no such machine, vise"
          + " or set, or no place to"
          + " draw; 3 a file could not be read or written.",
    })
public final class DrawCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "INPUT",
      description = "a folder of CSV files or an XLSX workbook")
  private Path input;

  @Parameters(index = "1", paramLabel = "MACHINE", description = "its name in the tables")
  private String machineName;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "VISE",
      description = "its name in the tables; left out with --set")
  private String viseName;

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "FILE",
      defaultValue = "drawing.svg",
      description = "the file to write, .svg, .pdf or .png (default: ${DEFAULT-VALUE})")
  private Path output;

  @Option(
      names = "--set",
      order = 2,
      paramLabel = "NAME",
      description = "a set of the tables: draw all its vises where they stand together")
  private String setName;

  @Mixin private AtOption at;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    SetOption.checkVise(spec, setName, viseName);
    at.checkAlone(setName != null);
    Output.isFile(spec, output, ".svg", ".pdf", ".png");
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Output.check(spec, DrawingFile.destination(output), Input.files(input, reading));
    Shop shop = reading.shop().get();
    Pairs pairs = new Pairs(shop, err);
    Optional<Machine> machine = pairs.machine(machineName);
    if (machine.isPresent() && setName != null) {
      return drawSet(reading, pairs, machine.get());
    }
    Optional<Vise> vise = machine.isPresent() ? pairs.vise(viseName) : Optional.empty();
    if (vise.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    PrintedNames printed = new PrintedNames(reading.origins(), err);
    Machine named = printed.of(machine.get());
    Vise printable = printed.of(vise.get());
    Settings settings =
        PrintedNames.settings(shop.settings(), machine.get(), named, vise.get(), printable);
    if (at.isGiven()) {
      return drawStanding(reading, settings, named, printable);
    }
    SolvedPairing solved = Pairing.solved(settings, named, printable);
    PeopleUnit unit = PeopleUnits.of(reading, machine.get());
    if (!DrawingFile.write(output, unit, shop.settings(), solved)) {
      err.println(
          "There is no place to draw ("
              + solved.outcome().verdict().code()
              + "): jawroom explain says why.");
      return ExitStatus.WRONG_USE;
    }
    spec.commandLine().getOut().println("Written: " + output);
    return ExitStatus.DONE;
  }

  private int drawStanding(Reading reading, Settings settings, Machine machine, Vise vise)
      throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Optional<StandingOutcome> found = at.outcome(reading, settings, machine, vise, err);
    if (found.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    StandingOutcome outcome = found.get();
    if (outcome.placed().isEmpty()) {
      err.println(
          "There is nothing to draw: it stands off the slots; jawroom explain --at says more.");
      return ExitStatus.WRONG_USE;
    }
    DrawingFile.write(
        output, PairingDrawing.of(PeopleUnits.of(reading, machine), settings, outcome));
    spec.commandLine().getOut().println("Written: " + output);
    return ExitStatus.DONE;
  }

  private int drawSet(Reading reading, Pairs pairs, Machine machine) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Optional<ViseSet> set = pairs.set(setName);
    if (set.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    PrintedNames printed = new PrintedNames(reading.origins(), err);
    Machine named = printed.of(machine);
    ViseSet printable = printed.of(set.get());
    Settings settings = reading.shop().orElseThrow().settings();
    SetOutcome outcome =
        SetPairing.solve(
            PrintedNames.settings(settings, machine, named, set.get(), printable),
            named,
            printable);
    if (outcome.fits() != SetOutcome.Fits.YES) {
      err.println(
          "There is no row to draw: jawroom explain --set says whether it does not fit or is"
              + " unknown.");
      return ExitStatus.WRONG_USE;
    }
    DrawingFile.write(output, SetPicture.of(PeopleUnits.of(reading, machine), settings, outcome));
    spec.commandLine().getOut().println("Written: " + output);
    return ExitStatus.DONE;
  }
}
