package org.jawroom.cli.option;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The option for the number of solving threads. */
public final class Threads {
  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--threads",
      order = 9,
      paramLabel = "N",
      description = "the number of threads that solve (default: one for each processor)")
  private Integer given;

  /** The number requested, or the number of processors; refuses a number below 1. */
  public int count() {
    int count = given == null ? Runtime.getRuntime().availableProcessors() : given;
    if (count < 1) {
      throw new ParameterException(spec.commandLine(), "--threads takes a whole number from 1 up.");
    }
    return count;
  }
}
