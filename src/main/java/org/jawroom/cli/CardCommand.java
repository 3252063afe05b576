package org.jawroom.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.Explanation;
import org.jawroom.app.ExitStatus;
import org.jawroom.app.Facts;
import org.jawroom.app.Input;
import org.jawroom.app.Pairs;
import org.jawroom.app.PeopleUnits;
import org.jawroom.app.PrintedNames;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.card.CardFacts;
import org.jawroom.report.card.CardPaper;
import org.jawroom.report.card.SetupCards;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom card}: a setup page for each pairing that has a place. */
@Command(
    name = "card",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Writes a setup card as PDF, one page for each vise.",
      "The card shows the place of the vise and its range, bolts and torque, the gaps"
          + " to check before the first run, and cautions. A vise without a place on the"
          + " machine gets no card."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom card shop.xlsx \"knee mill\" \"plain 125\"",
      "  jawroom card tables \"knee mill\" \"plain 125\" \"toolroom 80\" --paper letter",
      "",
      "Exit status: 0 at least one card was written; 1 the tables were refused; 2 wrong"
          + " use, no such"
          + " machine or vise, or no card to write; 3 a file could not be read or written.",
    })
final class CardCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "INPUT",
      description = "a folder of CSV files or an XLSX workbook")
  private Path input;

  @Parameters(index = "1", paramLabel = "MACHINE", description = "its name in the tables")
  private String machineName;

  @Parameters(
      index = "2..*",
      arity = "1..*",
      paramLabel = "VISE",
      description = "its name in the tables; one page for each name")
  private List<String> viseNames;

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "FILE.pdf",
      defaultValue = "card.pdf",
      description = "the PDF to write (default: ${DEFAULT-VALUE})")
  private Path output;

  @Option(
      names = "--paper",
      order = 2,
      paramLabel = "a4|letter",
      description = "the paper size (default: a4; letter where people read inches)")
  private String paper;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    Output.isFile(spec, output, ".pdf");
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Output.check(spec, SetupCards.destination(output), Input.files(input, reading));
    Shop shop = reading.shop().get();
    Pairs pairs = new Pairs(shop, err);
    Optional<Machine> machine = pairs.machine(machineName);
    if (machine.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    CardPaper sheet = sheet(PeopleUnits.of(reading, machine.get()));
    List<Optional<Vise>> vises = viseNames.stream().map(pairs::vise).distinct().toList();
    return vises.contains(Optional.<Vise>empty())
        ? ExitStatus.WRONG_USE
        : write(reading, shop, machine.get(), vises.stream().map(Optional::get).toList(), sheet);
  }

  private CardPaper sheet(PeopleUnit unit) {
    if (paper == null) {
      return unit == PeopleUnit.INCH ? CardPaper.LETTER : CardPaper.A4;
    }
    return switch (paper.toLowerCase(Locale.ROOT)) {
      case "a4" -> CardPaper.A4;
      case "letter" -> CardPaper.LETTER;
      default ->
          throw new ParameterException(
              spec.commandLine(), "--paper takes a4 or letter, not " + paper + ".");
    };
  }

  private int write(Reading reading, Shop shop, Machine machine, List<Vise> vises, CardPaper sheet)
      throws IOException {
    PrintedNames printed = new PrintedNames(reading.origins(), spec.commandLine().getErr());
    if (!PrintedNames.isReadable(machine.name())) {
      spec.commandLine()
          .getErr()
          .println(
              "No card for \"" + machine.name() + "\": " + PrintedNames.advice(machine.name()));
      return ExitStatus.WRONG_USE;
    }
    Machine named = printed.of(machine);
    List<Explanation> cards = new ArrayList<>();
    for (Vise vise : vises) {
      if (!PrintedNames.isReadable(vise.name())) {
        spec.commandLine()
            .getErr()
            .println("No card for \"" + vise.name() + "\": " + PrintedNames.advice(vise.name()));
        continue;
      }
      Explanation explanation = Advisor.explain(shop.settings(), named, printed.of(vise));
      Outcome outcome = explanation.advice().outcome();
      if (CardFacts.isPossible(outcome)) {
        cards.add(explanation);
      } else {
        spec.commandLine()
            .getErr()
            .println(
                "No card for \""
                    + vise.name()
                    + "\" on \""
                    + machine.name()
                    + "\": "
                    + reason(outcome.verdict())
                    + ": see jawroom explain.");
      }
    }
    if (cards.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    List<Outcome> outcomes = cards.stream().map(Explanation::advice).map(Advice::outcome).toList();
    RunFacts facts = Facts.ofPairings(reading, shop, outcomes).in(PeopleUnits.of(reading, machine));
    SetupCards.write(output, sheet, shop.settings(), cards, facts);
    spec.commandLine()
        .getOut()
        .println(
            "Written: "
                + output
                + " ("
                + cards.size()
                + (cards.size() == 1 ? " page)" : " pages)"));
    return ExitStatus.DONE;
  }

  private static String reason(Verdict verdict) {
    return switch (verdict) {
      case NO_PLACE -> "there is no place for it";
      case NO_MOUNT -> "no bolts of it line up with the slots";
      case UNKNOWN -> "a dimension that decides it is blank";
      case FITS, AWKWARD, LIMITED, MEASURE ->
          throw new IllegalArgumentException(verdict + " has a setup card; no reason to give");
    };
  }
}
