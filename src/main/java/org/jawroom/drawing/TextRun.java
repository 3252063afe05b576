package org.jawroom.drawing;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stretch of {@link Typeface#shown} text that is written in one way. Words of letters that the
 * built-in typeface lacks, that run from right to left, or that bear marks are outlines, laid out
 * as their script wants it (Unicode Standard Annex 9, and the shaping that the font itself asks
 * for); all else is text in the built-in typeface. A run of outlines never holds what stands beside
 * it: a number after a name stays where it is written.
 */
public record TextRun(String text, boolean outlined) {

  /** Outlines are laid out in this size and scaled, so that widths grow evenly with the size. */
  private static final float LAID_OUT = 100;

  private static final FontRenderContext EXACT =
      new FontRenderContext(new AffineTransform(), true, true);

  /** What people see as one letter (Unicode Standard Annex 29). */
  private static final Pattern LETTER = Pattern.compile("\\X");

  /** The runs of {@code shown} from left to right; one at least. */
  public static List<TextRun> of(String shown) {
    if (!isForeign(shown)) {
      return List.of(new TextRun(shown, false));
    }
    List<TextRun> runs = new ArrayList<>();
    StringBuilder run = new StringBuilder();
    boolean outlined = false;
    for (String word : shown.split("(?<= )")) {
      boolean foreign = isForeign(word);
      if (foreign != outlined && run.length() > 0) {
        end(runs, run, outlined);
      }
      outlined = foreign;
      run.append(word);
    }
    end(runs, run, outlined);
    return runs;
  }

  /** The blank after outlines is a run of its own: SVG drops one that text begins with. */
  private static void end(List<TextRun> runs, StringBuilder run, boolean outlined) {
    String text = run.toString();
    String words = outlined ? text.stripTrailing() : text;
    runs.add(new TextRun(words, outlined));
    if (words.length() < text.length()) {
      runs.add(new TextRun(text.substring(words.length()), false));
    }
    run.setLength(0);
  }

  private static boolean isForeign(String text) {
    return text.codePoints().anyMatch(Typeface::isForeign);
  }

  /** The end of the letter, as people see it, that begins at {@code from}. */
  public static int next(String text, int from) {
    Matcher letter = LETTER.matcher(text).region(from, text.length());
    return letter.lookingAt() ? letter.end() : text.length();
  }

  /** The beginning of the letter, as people see it, that ends at {@code end}. */
  public static int before(String text, int end) {
    int start = 0;
    for (int at = 0; at < end; at = next(text, at)) {
      start = at;
    }
    return start;
  }

  /** Points. */
  public double width(Typeface face, double size) {
    return outlined
        ? layout(face).getAdvance() * size / LAID_OUT
        : face.sized(size).getStringBounds(text, EXACT).getWidth();
  }

  /** The letters as a shape, y down, that starts at (0, 0) on its line. */
  public Shape outline(Typeface face, double size) {
    return layout(face)
        .getOutline(AffineTransform.getScaleInstance(size / LAID_OUT, size / LAID_OUT));
  }

  private TextLayout layout(Typeface face) {
    AttributedString attributed = new AttributedString(text);
    attributed.addAttribute(TextAttribute.RUN_DIRECTION, TextAttribute.RUN_DIRECTION_LTR);
    Font builtIn = face.sized(LAID_OUT);
    Optional<Font> before = Optional.empty();
    Font now = builtIn;
    int from = 0;
    for (int at = 0; at < text.length(); at = next(text, at)) {
      Font font = builtIn;
      if (!Typeface.hasAll(text.substring(at, next(text, at)))) {
        before = SystemFonts.of(text.codePointAt(at), before);
        font = before.map(found -> found.deriveFont(builtIn.getStyle(), LAID_OUT)).orElse(builtIn);
      }
      if (!font.equals(now) && at > from) {
        attributed.addAttribute(TextAttribute.FONT, now, from, at);
        from = at;
      }
      now = font;
    }
    attributed.addAttribute(TextAttribute.FONT, now, from, text.length());
    return new TextLayout(attributed.getIterator(), EXACT);
  }
}
