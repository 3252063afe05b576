package org.jawroom.cli.option;

import java.io.PrintWriter;
import java.util.Optional;
import org.jawroom.app.choice.PlaceText;
import org.jawroom.app.choice.StandingBeside;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingTable;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option {@code --at}: a vise where it stands instead of where it is recommended. */
public final class AtOption {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--at",
      order = 20,
      paramLabel = "PLACE",
      description =
          "the vise where it stands, by the two measures of the setup card: \"front, left 242.5,"
              + " front 245\"; after them \"mount NAME\" if not base bolts")
  private String at;

  /** Whether it is given. */
  public boolean isGiven() {
    return at != null;
  }

  /**
   * Refuses a command that asks about something else, too.
   *
   * @param other whether it does
   */
  public void checkAlone(boolean other) {
    if (at != null && other) {
      throw new ParameterException(
          spec.commandLine(),
          "--at is the place of one vise: leave it out, or everything but one VISE.");
    }
  }

  /**
   * The vise where it stands, beside the others of the table {@code standing}; empty, with one line
   * on {@code err}, if that is no place of it.
   */
  public Optional<StandingOutcome> outcome(
      Reading reading, Settings settings, Machine machine, Vise vise, PrintWriter err) {
    return new PlaceText(reading.notation(), err)
        .read(at, machine, vise)
        .map(
            standing ->
                StandingTable.solve(
                    settings,
                    standing,
                    StandingBeside.of(standing, reading.shop().orElseThrow().standing())));
  }
}
