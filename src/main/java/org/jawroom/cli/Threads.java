package org.jawroom.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The option that says how many threads solve. */
final class Threads {
  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--threads",
      order = 9,
      paramLabel = "N",
      description = "how many to solve on (as many as there are processors)")
  private Integer given;

  /** As many as asked for, or as there are processors; wrong use if that is none. */
  int count() {
    int count = given == null ? Runtime.getRuntime().availableProcessors() : given;
    if (count < 1) {
      throw new ParameterException(spec.commandLine(), "--threads takes a whole number from 1 up.");
    }
    return count;
  }
}
