package org.jawroom.app.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version, as written by the build. */
public final class Version {
  private Version() {}

  public static String number() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      properties.load(in);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return properties.getProperty("version");
  }
}
