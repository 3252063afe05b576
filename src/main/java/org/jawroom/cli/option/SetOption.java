package org.jawroom.cli.option;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What commands for a vise or, with {@code --set}, for a set of vises check. */
public final class SetOption {
  private SetOption() {}

  /**
   * Refuses a command with both or neither.
   *
   * @param set the option's value, or null
   * @param vise the positional parameter, or null
   */
  public static void checkVise(CommandSpec spec, String set, String vise) {
    if (set == null && vise == null) {
      throw new ParameterException(
          spec.commandLine(), "VISE is missing: name a vise, or a set of vises with --set.");
    }
    if (set != null && vise != null) {
      throw new ParameterException(
          spec.commandLine(), "--set names the vises: leave out VISE or --set.");
    }
  }
}
