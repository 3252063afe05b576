package org.jawroom.cli;

/** Whether a text is one JSON value by the grammar of RFC 8259; reads it, makes nothing of it. */
public final class JsonCheck {
  private final String text;
  private int at;

  private JsonCheck(String text) {
    this.text = text;
  }

  public static boolean isValid(String text) {
    JsonCheck check = new JsonCheck(text);
    return check.value() && check.skipped() == text.length();
  }

  private boolean value() {
    skipped();
    if (at >= text.length()) {
      return false;
    }
    return switch (text.charAt(at)) {
      case '{' -> members('}', true);
      case '[' -> members(']', false);
      case '"' -> matches("\"([^\"\\\\\\x00-\\x1f]|\\\\([\"\\\\/bfnrt]|u[0-9a-fA-F]{4}))*\"");
      default -> matches("true|false|null|-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");
    };
  }

  private boolean members(char end, boolean named) {
    at++;
    if (text.charAt(skipped()) == end) {
      at++;
      return true;
    }
    while (true) {
      if (named && !(value() && text.charAt(skipped()) == ':' && at++ >= 0)) {
        return false;
      }
      if (!value()) {
        return false;
      }
      char next = text.charAt(skipped());
      at++;
      if (next == end) {
        return true;
      }
      if (next != ',') {
        return false;
      }
    }
  }

  private boolean matches(String pattern) {
    var matcher = java.util.regex.Pattern.compile(pattern).matcher(text).region(at, text.length());
    boolean found = matcher.lookingAt();
    at = found ? matcher.end() : at;
    return found;
  }

  private int skipped() {
    while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return at;
  }
}
