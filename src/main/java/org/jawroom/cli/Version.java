package org.jawroom.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version, as the build wrote it down. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"jawroom " + number()};
  }

  static String number() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      properties.load(in);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return properties.getProperty("version");
  }
}
