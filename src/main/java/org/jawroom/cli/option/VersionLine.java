package org.jawroom.cli.option;

import org.jawroom.app.output.Version;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints. */
public final class VersionLine implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"jawroom " + Version.number()};
  }
}
