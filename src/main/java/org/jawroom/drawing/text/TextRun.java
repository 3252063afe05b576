package org.jawroom.drawing.text;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A run of {@link Typeface#shown} text that is written in one way. Words with letters that the
 * built-in typeface lacks, that run from right to left, or that carry combining marks become
 * outlines, laid out by the rules of their script (Unicode Standard Annex 9, and the font's own
 * shaping); all else is text in the built-in typeface. A run of outlines never includes adjacent
 * items, so that bidirectional reordering leaves a number after a name in its place.
 */
public record TextRun(String text, boolean outlined) {

  /** Outlines are laid out at this size and scaled, so that widths are proportional to the size. */
  private static final float LAID_OUT = 100;

  /**
   * The extent of outlines above and below the baseline in multiples of the size: within the line
   * spacing.
   */
  private static final double ABOVE = 0.86;

  private static final double BELOW = 0.26;

  private static final FontRenderContext EXACT =
      new FontRenderContext(new AffineTransform(), true, true);

  /** One grapheme cluster (Unicode Standard Annex 29). */
  private static final Pattern LETTER = Pattern.compile("\\X");

  /** The runs of {@code shown} from left to right, at least one. */
  public static List<TextRun> of(String shown) {
    if (!isForeign(shown)) {
      return List.of(new TextRun(shown, false));
    }
    List<TextRun> runs = new ArrayList<>();
    StringBuilder run = new StringBuilder();
    boolean outlined = false;
    for (String word : shown.split("(?<= )")) {
      boolean foreign = isForeign(word);
      if (run.length() > 0 && (foreign != outlined || outlined && endsAName(run))) {
        end(runs, run, outlined);
      }
      outlined = foreign;
      run.append(word);
    }
    end(runs, run, outlined);
    return runs;
  }

  /** After a comma or similar the next item begins, which must keep its place after the first. */
  private static boolean endsAName(StringBuilder run) {
    String words = run.toString().stripTrailing();
    int last = words.codePointBefore(words.length());
    return !Character.isLetterOrDigit(last) && !Typeface.isForeign(last);
  }

  /** The space after outlines is a run of its own: SVG drops a leading space of a text element. */
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

  /** The end of the grapheme that begins at {@code from}. */
  public static int next(String text, int from) {
    Matcher letter = LETTER.matcher(text).region(from, text.length());
    return letter.lookingAt() ? letter.end() : text.length();
  }

  /** The beginning of the grapheme that ends at {@code end}. */
  public static int before(String text, int end) {
    int start = 0;
    for (int at = 0; at < end; at = next(text, at)) {
      start = at;
    }
    return start;
  }

  /** The width in points. */
  public double width(Typeface face, double size) {
    if (!outlined) {
      return face.sized(size).getStringBounds(text, EXACT).getWidth();
    }
    TextLayout layout = layout(face);
    Rectangle2D ink = layout.getBounds();
    return Math.max(layout.getAdvance(), ink.getMaxX()) * scale(ink, size);
  }

  /** The glyphs as a shape, y down, with its baseline origin at (0, 0). */
  public Shape outline(Typeface face, double size) {
    TextLayout layout = layout(face);
    double scale = scale(layout.getBounds(), size);
    return layout.getOutline(AffineTransform.getScaleInstance(scale, scale));
  }

  /** The scale at which glyphs with marks above and below stay within their line. */
  private static double scale(Rectangle2D ink, double size) {
    double up = Math.max(1, -ink.getMinY() / (LAID_OUT * ABOVE));
    double down = Math.max(1, ink.getMaxY() / (LAID_OUT * BELOW));
    return size / LAID_OUT / Math.max(up, down);
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
