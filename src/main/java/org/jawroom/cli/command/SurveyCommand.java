package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jawroom.app.input.ReportFile;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.cli.option.ShownUnit;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.option.WhereText;
import org.jawroom.cli.refusal.Output;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.rows.PairingCells.Columns;
import org.jawroom.report.rows.UnreadablePairings;
import org.jawroom.report.survey.SurveyReports;
import org.jawroom.report.survey.SurveyText;
import org.jawroom.report.survey.count.Asked;
import org.jawroom.report.survey.count.Condition;
import org.jawroom.report.survey.count.Survey;
import org.jawroom.report.survey.count.SurveyRows;
import org.jawroom.report.survey.count.SurveySide;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.cell.name.NearestName;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom survey}: counts the pairings of a report, or of two, however many they are. */
@Command(
    name = "survey",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    sortOptions = false,
    description = {
      "Counts the pairings of a report, a million as well as ten.",
      "Prints how many there are by the columns asked for, with quantiles of their margins;"
          + " what limits; the fewest kinds of vise that leave every machine a comfortable one,"
          + " and the machines that have none; of two reports, also what moved. REPORT is"
          + " pairings.csv or the folder that holds it."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom survey reports                              by verdict",
      "  jawroom survey reports --by machine,limited_by --where verdict=limited",
      "  jawroom survey reports --by vise --where \"margin_mm<5\" --where \"margin_mm>=0\"",
      "  jawroom survey before after -o survey.xlsx          and what moved",
      "",
      "Exit status: 0 done; 2 wrong use, or no such column; 3 a file could not be read or written,"
          + " or is no report.",
    })
public final class SurveyCommand implements Callable<Integer> {

  /** More different words than a mistyped one is compared with. */
  private static final int MOST_WORDS = 10_000;

  /** An earlier one and a later one. */
  private static final int MOST_REPORTS = 2;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "REPORT",
      description = "a report; of two the earlier one first, and the later one is counted")
  private List<Path> reports = new ArrayList<>();

  @Option(
      names = "--by",
      order = 1,
      split = ",",
      paramLabel = "COLUMN",
      defaultValue = "verdict",
      description =
          "count by these columns of pairings.csv, with commas between (default: ${DEFAULT-VALUE})")
  private List<String> by;

  @Option(
      names = "--where",
      order = 2,
      paramLabel = "CONDITION",
      description =
          "only pairings that meet it: COLUMN=VALUE or COLUMN!=VALUE, for a length also < <= > >="
              + " (a bare number is mm); no value: blank cells. May be given several times")
  private List<String> where = new ArrayList<>();

  @Option(
      names = "--top",
      order = 3,
      paramLabel = "N",
      defaultValue = "20",
      description = "print so many entries of each list (default: ${DEFAULT-VALUE})")
  private int top;

  @Option(names = "--all", order = 4, description = "print all entries of each list")
  private boolean all;

  @Option(
      names = {"-o", "--output"},
      order = 5,
      paramLabel = "FILE",
      description =
          "also write survey.xlsx (all lists, with charts), or survey.csv (the counts by columns)")
  private Path output;

  @Option(
      names = "--comfort",
      order = 6,
      paramLabel = "LENGTH",
      defaultValue = "3 mm",
      description = "the least margin of a comfortable vise (default: ${DEFAULT-VALUE})")
  private String comfort;

  @Option(
      names = "--show",
      order = 7,
      paramLabel = "UNIT",
      defaultValue = "mm",
      description = "the unit that people read: mm or in (default: ${DEFAULT-VALUE})")
  private String show;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    PeopleUnit unit = ShownUnit.of(spec, show);
    if (top < 1) {
      throw wrong("--top " + top + " would print nothing; write 1 or more");
    }
    if (reports.size() > MOST_REPORTS) {
      throw wrong("a survey is of one report or of two, not of " + reports.size());
    }
    Asked asked = new Asked(by, conditions(), comfort());
    List<Path> files = reports.stream().map(ReportFile::in).toList();
    if (output != null) {
      Output.isFile(spec, output, SurveyReports.WORKBOOK, SurveyReports.CSV);
      Output.check(spec, SurveyReports.destination(output), files);
    }
    List<SurveySide> sides = new ArrayList<>();
    for (Path file : files) {
      sides.add(side(file, asked));
    }
    Optional<SurveySide> old = sides.size() > 1 ? Optional.of(sides.get(0)) : Optional.empty();
    Survey survey = Survey.of(sides.get(sides.size() - 1), old, asked);
    PrintWriter out = spec.commandLine().getOut();
    if (output != null) {
      SurveyReports.write(output, survey, unit);
    }
    SurveyText.write(survey, unit, all ? Integer.MAX_VALUE : top, out::println);
    if (output != null) {
      out.println();
      out.println("Written: " + output);
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private List<Condition> conditions() {
    List<Condition> conditions = new ArrayList<>();
    for (String text : where) {
      try {
        conditions.add(WhereText.parse(text));
      } catch (BadCell bad) {
        throw wrong("--where \"" + text + "\" " + bad.getMessage());
      }
    }
    return conditions;
  }

  private long comfort() {
    try {
      long length = Lengths.parse(comfort, Unit.MM, false).value();
      if (length < 0) {
        throw new BadCell("is below 0");
      }
      return length;
    } catch (BadCell bad) {
      throw wrong("--comfort \"" + comfort + "\" " + bad.getMessage());
    }
  }

  private SurveySide side(Path file, Asked asked) throws UnreadableInput, IOException {
    if (file.toString().toLowerCase(Locale.ROOT).endsWith(SurveyReports.WORKBOOK)) {
      throw new UnreadableInput(
          file
              + " is a workbook, whose figures are rounded for people; name the pairings.csv that was"
              + " written beside it, or its folder");
    }
    SurveyRows[] rows = {null};
    ReportFile.read(
        file,
        columns -> {
          refuseUnknown(file, columns, asked);
          rows[0] = new SurveyRows(columns, asked);
          return rows[0];
        });
    warnOfWords(file, rows[0], asked);
    try {
      return new SurveySide(file.toString(), rows[0], asked);
    } catch (UnreadablePairings alike) {
      throw ReportFile.refusal(file, alike);
    }
  }

  private void refuseUnknown(Path file, Columns columns, Asked asked) {
    for (String column : asked.columns()) {
      if (!columns.has(column)) {
        throw wrong(
            file + " has no column \"" + column + "\"" + NearestName.hint(column, columns.names()));
      }
    }
  }

  /** A word that no row has was probably mistyped. */
  private void warnOfWords(Path file, SurveyRows rows, Asked asked) {
    for (Condition condition : asked.where()) {
      Set<String> words = rows.words(condition.column());
      String word = condition.text();
      if (!words.isEmpty() && !word.isEmpty() && !words.contains(word)) {
        spec.commandLine()
            .getErr()
            .println(
                "Note: "
                    + file
                    + " has no "
                    + condition.column()
                    + " \""
                    + word
                    + "\""
                    + (words.size() > MOST_WORDS ? "" : NearestName.hint(word, words)));
      }
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
