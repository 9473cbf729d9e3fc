package rootwright.cli;

import java.util.Map;
import rootwright.working.review.LineFinding;
import rootwright.working.review.LineVerdict;
import rootwright.working.review.Review;
import rootwright.working.review.SlipMatch;

/** A working that was judged, for a terminal: a sign before each line, what was found below it. */
final class ReviewReport {

  private static final Map<LineVerdict, String> SIGNS =
      Map.of(
          LineVerdict.FOLLOWS, "✓",
          LineVerdict.UNEXPLAINED, "?",
          LineVerdict.WRONG, "✗",
          LineVerdict.FOLLOWS_FROM_WRONG, "↳",
          LineVerdict.REMARK, " ",
          LineVerdict.UNDECIDED, "–");

  private final Ink ink;
  private final Paragraph paragraph;

  ReviewReport(Console console) {
    this.ink = console.terminal() ? Ink.COLOURED : Ink.PLAIN;
    this.paragraph = new Paragraph(console.width());
  }

  String of(Review review) {
    for (LineFinding line : review.lines()) {
      boolean first = review.firstWrong().filter(line::equals).isPresent();
      line(line, first);
    }
    paragraph.blank();
    paragraph.add(
        "",
        review
                .firstWrong()
                .map(wrong -> "The first wrong line is line " + wrong.number() + ". ")
                .orElse("No line is wrong. ")
            + review.end().words());
    return paragraph.text();
  }

  private void line(LineFinding line, boolean first) {
    String sign = SIGNS.getOrDefault(line.verdict(), " ");
    paragraph.add(
        "%3d %s  ".formatted(line.number(), sign), first ? ink.strong(line.text()) : line.text());
    String indent = " ".repeat(9);
    String found = line.verdict().words() + ": " + line.reason();
    paragraph.add(
        indent, line.verdict() == LineVerdict.WRONG ? ink.warning(found) : ink.faint(found));
    for (SlipMatch slip : line.slips()) {
      paragraph.add(indent, "perhaps " + slip.name() + ": " + slip.text());
    }
  }
}
