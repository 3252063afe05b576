package org.jawroom.cli;

import org.jawroom.app.output.Version;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints. */
final class VersionLine implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"jawroom " + Version.number()};
  }
}
