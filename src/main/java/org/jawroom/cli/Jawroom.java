package org.jawroom.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jawroom.cli.command.AssessCommand;
import org.jawroom.cli.command.CardCommand;
import org.jawroom.cli.command.CheckCommand;
import org.jawroom.cli.command.CompareCommand;
import org.jawroom.cli.command.DrawCommand;
import org.jawroom.cli.command.ExplainCommand;
import org.jawroom.cli.command.FillCommand;
import org.jawroom.cli.command.MatrixCommand;
import org.jawroom.cli.command.PageCommand;
import org.jawroom.cli.command.PlanCommand;
import org.jawroom.cli.command.ReconcileCommand;
import org.jawroom.cli.command.SurveyCommand;
import org.jawroom.cli.command.TapeCommand;
import org.jawroom.cli.command.TemplateCommand;
import org.jawroom.cli.option.VersionLine;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The top-level command. */
@Command(
    name = "jawroom",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    description = {
      "Finds which vise can be bolted on which mill: for every pairing, whether there"
          + " is a place on the T-slotted table where nothing is hit, how much clearance is"
          + " left, and what limits it."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom template shop.xlsx        an empty workbook to fill in",
      "  jawroom check shop.xlsx           every fault in it, and what looks wrong",
      "  jawroom matrix shop.xlsx          the matrix, into the folder reports",
      "  jawroom matrix tables -o out      the same from a folder of CSV files",
      "  jawroom page shop.xlsx            the same as a page for a browser, page.html",
      "  jawroom draw shop.xlsx mill vise  a drawing of one pairing",
      "  jawroom card shop.xlsx mill vise  its setup card, as PDF",
      "  jawroom reconcile shop.xlsx       gaps found on the machine against the tables",
      "  jawroom assess shop.xlsx          machines that might be bought",
      "  jawroom plan shop.xlsx            a vise for each machine",
      "  jawroom tape shop.xlsx            what to tape first, as a form",
      "  jawroom fill shop.xlsx tape.csv -o filled   the figures, into copies",
      "  jawroom compare reports shop.xlsx what changed since those reports",
      "  jawroom survey reports            counts, what limits, the fewest vises",
      "",
      "Completion for bash and zsh:  source <(jawroom generate-completion)",
      "",
      "The tool does not replace the check on the machine. Lock out before reaching in.",
    })
public final class Jawroom implements Runnable {
  private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("matrix", MatrixCommand.class);
    COMMANDS.put("page", PageCommand.class);
    COMMANDS.put("plan", PlanCommand.class);
    COMMANDS.put("explain", ExplainCommand.class);
    COMMANDS.put("draw", DrawCommand.class);
    COMMANDS.put("card", CardCommand.class);
    COMMANDS.put("reconcile", ReconcileCommand.class);
    COMMANDS.put("assess", AssessCommand.class);
    COMMANDS.put("check", CheckCommand.class);
    COMMANDS.put("tape", TapeCommand.class);
    COMMANDS.put("fill", FillCommand.class);
    COMMANDS.put("compare", CompareCommand.class);
    COMMANDS.put("survey", SurveyCommand.class);
    COMMANDS.put("template", TemplateCommand.class);
    COMMANDS.put("generate-completion", GenerateCompletion.class);
    COMMANDS.put("help", CommandLine.HelpCommand.class);
  }

  @Spec private CommandSpec spec;

  /**
   * The command line for {@code args}: with a single subcommand if they start with its name, since
   * reading the options of all costs a tenth of a second; otherwise, and for help on the others,
   * with all.
   */
  public static CommandLine of(String[] args) {
    CommandLine line = new CommandLine(new Jawroom());
    Class<?> asked = args.length == 0 ? null : COMMANDS.get(args[0]);
    if (asked != null && asked.getPackage() == MatrixCommand.class.getPackage()) {
      add(args[0], asked, line);
    } else {
      COMMANDS.forEach((name, command) -> add(name, command, line));
    }
    ITypeConverter<Integer> counts = text -> (int) whole(text, Integer.MAX_VALUE);
    return line.registerConverter(int.class, counts)
        .registerConverter(Integer.class, counts)
        .registerConverter(Long.class, text -> whole(text, Long.MAX_VALUE));
  }

  /** As a command line of its own, since the library applies model transformers to such alone. */
  private static void add(String name, Class<?> command, CommandLine line) {
    line.addSubcommand(name, new CommandLine(command));
  }

  /** A whole number, which a message calls so rather than by the name of a type. */
  private static long whole(String text, long most) {
    try {
      long number = Long.parseLong(text);
      if (-most <= number && number <= most) {
        return number;
      }
    } catch (NumberFormatException none) {
      // It is refused below, as one that is too large is.
    }
    throw new TypeConversionException("\"" + text + "\" is not a whole number");
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "A command is missing: matrix, page, plan, explain, draw, card, reconcile, assess, check, tape,"
            + " fill, compare, survey or"
            + " template.");
  }
}
