package org.jawroom.cli;

import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command that holds the others. */
@Command(
    name = "jawroom",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Which vise goes on which mill: for every pairing, is there a place on the T-slotted table where the"
          + " vise can be bolted so that nothing is hit, how much clearance is left, and what limits it."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom template shop.xlsx        an empty workbook to fill in",
      "  jawroom check shop.xlsx           every fault and every doubt in it",
      "  jawroom matrix shop.xlsx          the matrix, into the folder reports",
      "  jawroom matrix tables -o out      the same from a folder of CSV files",
      "  jawroom page shop.xlsx            the same as a page to click in, page.html",
      "  jawroom draw shop.xlsx mill vise  one pairing, drawn",
      "  jawroom card shop.xlsx mill vise  a page to set it up by",
      "  jawroom assess shop.xlsx          the candidates beside what the shop owns",
      "  jawroom plan shop.xlsx            one vise for each machine, so that the most jobs are held",
      "  jawroom compare reports shop.xlsx what changed since those reports",
      "",
      "Completion for bash and zsh:  source <(jawroom generate-completion)",
      "",
      "The tool does not replace the check on the machine. Lock out before reaching in.",
    },
    subcommands = {
      MatrixCommand.class,
      PageCommand.class,
      PlanCommand.class,
      ExplainCommand.class,
      DrawCommand.class,
      CardCommand.class,
      AssessCommand.class,
      CheckCommand.class,
      CompareCommand.class,
      TemplateCommand.class,
      GenerateCompletion.class,
      CommandLine.HelpCommand.class
    })
final class Jawroom implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: matrix, page, plan, explain, draw, card, assess, check, compare or template.");
  }
}
