package org.jawroom.tables;

/**
 * A setting in force.
 *
 * @param text its value, lengths in millimetres; for a setting without a value, what that means
 * @param origin its source: {@code settings.csv row 3}, {@code option --clearance}, or {@code
 *     default}
 */
public record SettingUsed(String name, String text, String origin) {

  static final String BY_DEFAULT = "default";

  public boolean isDefault() {
    return origin.equals(BY_DEFAULT);
  }
}
