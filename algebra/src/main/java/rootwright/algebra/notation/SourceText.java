package rootwright.algebra.notation;

import java.util.Arrays;

/** A text by its code points, and the refusals that point into it. */
final class SourceText {

  private final String text;
  private final int[] points;

  SourceText(String text) throws UnreadableException {
    this.text = text;
    if (text.length() > Limits.LENGTH) {
      throw new UnreadableException(
          new Refusal(
              "too-long",
              "The text has %d characters; at most %d are read."
                  .formatted(text.length(), Limits.LENGTH),
              text.substring(0, 60) + "…",
              0,
              "a shorter text",
              ""));
    }
    points = text.codePoints().toArray();
  }

  int length() {
    return points.length;
  }

  /** The code point at a place; −1 at and beyond the end. */
  int at(int place) {
    return place < points.length ? points[place] : -1;
  }

  /** What stands from one place up to another. */
  String between(int from, int to) {
    return new String(points, from, Math.min(to, points.length) - from);
  }

  /** The text with what stands from one place up to another replaced. */
  String replaced(int from, int to, String by) {
    return between(0, from) + by + between(Math.min(to, points.length), points.length);
  }

  /** The place of the first such code point at or after a place; −1 if there is none. */
  int find(int point, int from) {
    for (int place = from; place < points.length; place++) {
      if (points[place] == point) {
        return place;
      }
    }
    return -1;
  }

  boolean isBlank() {
    return Arrays.stream(points).allMatch(SourceText::isBlank);
  }

  static boolean isBlank(int point) {
    return point == ' '
        || point == '\t'
        || point == '\n'
        || point == '\r'
        || point == '~'
        || point == '$'
        || point == 0x2061
        || point == 0x200B
        || point == 0x2060
        || point == 0xFEFF
        || Character.isSpaceChar(point);
  }

  UnreadableException refused(String code, String sentence, int at, String expected, String mend) {
    return new UnreadableException(
        new Refusal(code, sentence, text, Math.min(at, points.length), expected, mend));
  }
}
