package org.jawroom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.Explanation;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Pairing;
import org.jawroom.report.ExplanationJson;
import org.jawroom.report.ExplanationText;
import org.jawroom.report.PeopleUnit;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.cell.Nearest;
import org.jawroom.tables.source.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom explain}: why one pairing is as it is, and what would make it fit. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Explains one pairing: where the vise goes, as a setter lays it out with a tape; every clearance there"
          + " and where on the machine it is least; other turns; what one change would make it fit."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom explain shop.xlsx \"knee mill\" \"plain 125\"",
      "  jawroom explain tables \"knee mill\" \"plain 125\" --json --clearance 8mm",
      "",
      "Exit status: 0 done, whatever the verdict; 1 the tables were refused; 2 wrong use, or no such machine"
          + " or vise; 3 a file could not be read.",
    })
final class ExplainCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "INPUT", description = "a folder of CSV files or an XLSX workbook")
  private Path input;

  @Parameters(index = "1", paramLabel = "MACHINE", description = "its name in the tables")
  private String machineName;

  @Parameters(index = "2", paramLabel = "VISE", description = "its name in the tables")
  private String viseName;

  @Option(names = "--json", order = 1, description = "for programs: JSON, lengths in mm")
  private boolean json;

  @Mixin private SettingOptions settings;

  @Override
  public Integer call() throws UnreadableInput {
    PrintWriter out = spec.commandLine().getOut();
    Reading reading = Input.read(input, settings.given());
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, spec.commandLine().getErr());
    }
    Shop shop = reading.shop().get();
    Machine machine = find("machine", machineName, shop.machines(), Machine::name);
    Vise vise = find("vise", viseName, shop.vises(), Vise::name);
    Explanation explanation = Advisor.explain(shop.settings(), machine, vise);
    if (json) {
      out.print(ExplanationJson.of(explanation));
      out.flush();
      return ExitStatus.DONE;
    }
    List<Outcome> onMachine =
        shop.vises().stream().map(other -> Pairing.solve(shop.settings(), machine, other)).toList();
    List<Outcome> ofVise =
        shop.machines().stream().map(other -> Pairing.solve(shop.settings(), other, vise)).toList();
    PeopleUnit unit = shop.settings().inches() ? PeopleUnit.INCH : PeopleUnit.MM;
    ExplanationText.lines(unit, explanation, onMachine, ofVise).forEach(out::println);
    return ExitStatus.DONE;
  }

  /** The one of that name; where there is none, case does not count. */
  private <T> T find(String what, String name, List<T> all, Function<T, String> nameOf) {
    return all.stream()
        .filter(one -> nameOf.apply(one).equals(name))
        .findFirst()
        .or(() -> all.stream().filter(one -> nameOf.apply(one).equalsIgnoreCase(name)).findFirst())
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "There is no " + what + " \"" + name + "\" in this shop"
                        + Nearest.hint(name, all.stream().map(nameOf).toList()) + "."));
  }
}
