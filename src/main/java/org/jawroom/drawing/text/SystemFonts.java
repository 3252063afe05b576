package org.jawroom.drawing.text;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The fonts of this machine, for letters that the built-in typeface lacks. They are loaded only
 * when such a letter occurs, always in the same order, so that the same text on the same machine
 * gives the same outlines.
 */
final class SystemFonts {

  /** Java's logical fonts, each a composite of system-dependent fonts. */
  private static final Set<String> LOGICAL =
      Set.of("Dialog", "DialogInput", "Monospaced", "SansSerif", "Serif");

  /** Faces other than the regular upright one; used only if there is no alternative. */
  private static final List<String> SPECIAL =
      List.of(
          "serif",
          "mono",
          "bold",
          "italic",
          "oblique",
          "light",
          "thin",
          "black",
          "condensed",
          "medium",
          "display",
          "extra");

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private static final Map<Integer, Optional<Font>> FOUND = new ConcurrentHashMap<>();

  private SystemFonts() {}

  /** Initialised lazily. */
  private static final class All {
    static final List<Font> FONTS = load();

    private static List<Font> load() {
      try {
        return Arrays.stream(GraphicsEnvironment.getLocalGraphicsEnvironment().getAllFonts())
            .filter(font -> !LOGICAL.contains(font.getFamily(Locale.ROOT)))
            .sorted(
                Comparator.comparingInt(SystemFonts::rank)
                    .thenComparing(font -> font.getFontName(Locale.ROOT))
                    .thenComparing(Font::getPSName))
            .toList();
      } catch (RuntimeException | LinkageError | InternalError noFonts) {
        // A machine without fonts or without a font library: only the built-in typeface is left.
        return List.of();
      }
    }
  }

  /** Whether some font draws this letter. */
  static boolean have(int letter) {
    return first(letter).isPresent();
  }

  /**
   * The font to draw {@code letter} in: {@code before} if that has it, so that a word stays in one
   * font.
   */
  static Optional<Font> of(int letter, Optional<Font> before) {
    return before.filter(font -> draws(font, letter)).or(() -> first(letter));
  }

  private static Optional<Font> first(int letter) {
    return FOUND.computeIfAbsent(
        letter, one -> All.FONTS.stream().filter(font -> draws(font, one)).findFirst());
  }

  /** A font may have a letter as a colour bitmap only, which has no outline. */
  private static boolean draws(Font font, int letter) {
    return font.canDisplay(letter)
        && (Character.isSpaceChar(letter)
            || !font.createGlyphVector(EXACT, Character.toString(letter))
                .getVisualBounds()
                .isEmpty());
  }

  /** Plain sans-serif faces first. */
  private static int rank(Font font) {
    String name = font.getFontName(Locale.ROOT).toLowerCase(Locale.ROOT);
    boolean special = SPECIAL.stream().anyMatch(name.replace("sans-serif", "sans")::contains);
    return (special ? 2 : 0) + (name.contains("sans") ? 0 : 1);
  }
}
