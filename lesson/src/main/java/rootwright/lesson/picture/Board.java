package rootwright.lesson.picture;

import java.util.ArrayList;
import java.util.List;
import rootwright.lesson.text.Phrase;
import rootwright.press.pdf.Typeface;

/**
 * A slide in the making: a title and at most eight rows, one entry after the other, with a margin
 * for warnings and figures. As with chalk, what stands stays where it is: a term that goes is
 * struck out when the next line comes, and a term that is new is underlined.
 */
public final class Board {

  /** How many rows fit. */
  public static final int ROWS = 8;

  private static final double LEFT = 150;
  private static final double RIGHT = 1824;
  private static final double TOP = 196;
  private static final double BOTTOM = 1036;
  private static final double MARGIN = 1352;
  private static final double GAP = 24;
  private static final double INDENT = 40;

  /** How the board is divided. */
  public enum Division {
    /** One column. */
    WHOLE,
    /** A column for lines, and a margin. */
    WITH_MARGIN
  }

  private final String title;
  private final double width;
  private final List<Layer> layers = new ArrayList<>();
  private List<Placed> last = List.of();
  private double y = TOP;
  private double marginY = TOP;
  private int rows;
  private int warnings;

  /** A piece of the last line, where it stands. */
  private record Placed(Atom.Piece piece, double x, double baseline) {}

  /** An empty board with its title. */
  public Board(String title, Division division) {
    this.title = title;
    width = (division == Division.WHOLE ? RIGHT : MARGIN - 60) - LEFT;
    List<Mark> marks = new ArrayList<>();
    // The typeface has no prime; an apostrophe looks the same.
    marks.add(
        new Mark.Letters(
            title.replace('′', '’').replace('\'', '’'), 96, 122, 64, Typeface.Cut.BOLD, Ink.INK));
    marks.add(Mark.Stroke.line(96, 150, RIGHT, 150, 3, Ink.RULE));
    if (division == Division.WITH_MARGIN) {
      marks.add(Mark.Stroke.line(MARGIN - 30, TOP - 20, MARGIN - 30, BOTTOM, 2, Ink.RULE));
    }
    layers.add(new Layer(0, title, marks));
  }

  /** Whether nothing stands on it but the title. */
  public boolean isEmpty() {
    return rows == 0;
  }

  /** Whether an entry has room on the rest of the board. */
  public boolean fits(Entry entry) {
    List<Row> set = set(entry);
    double height = set.stream().mapToDouble(Board::height).sum();
    return rows + set.size() <= ROWS && y + height <= BOTTOM + GAP;
  }

  /** What explains the marks in front of the lines, at the right of the title. */
  public void legend() {
    List<Mark> marks = new ArrayList<>();
    double baseline = 122;
    double argued = Typeface.SERIF.width("argued", Typeface.Cut.ITALIC, Setter.SIZE);
    double computed = Typeface.SERIF.width("computed", Typeface.Cut.ITALIC, Setter.SIZE);
    double x = RIGHT - argued - computed - 160;
    tick(Entry.Tick.CHECKED, x, baseline, marks);
    marks.add(letters("computed", x + 50, baseline, Typeface.Cut.ITALIC));
    tick(Entry.Tick.ARGUED, x + 50 + computed + 40, baseline, marks);
    marks.add(letters("argued", x + 50 + computed + 90, baseline, Typeface.Cut.ITALIC));
    layers.add(new Layer(0, "", marks));
  }

  /** Writes an entry below the others, with the reveal at which it appears. */
  public void add(Entry entry, int reveal) {
    List<Mark> marks = new ArrayList<>();
    List<Placed> placed = new ArrayList<>();
    double begin = y;
    boolean first = true;
    for (Row row : set(entry)) {
      double baseline = y + row.ascent();
      if (first) {
        tick(entry.tick(), LEFT - 62, baseline, marks);
      }
      row(row, baseline, marks, placed);
      y += height(row);
      rows++;
      first = false;
    }
    if (entry.formula().isPresent()) {
      compare(placed, reveal, marks);
      last = placed;
    }
    layers.add(new Layer(reveal, entry.label(), marks));
    entry.note().ifPresent(note -> note(note, begin, reveal));
  }

  /** Puts a figure of this height into the margin. */
  public void figure(List<Mark> marks, String label, double height) {
    List<Mark> moved = new ArrayList<>();
    marks.forEach(mark -> moved.add(Moved.by(mark, MARGIN, marginY)));
    layers.add(new Layer(0, label, moved));
    marginY += height + 40;
  }

  /** The slide. */
  public Picture finished() {
    return new Picture(title, layers);
  }

  private List<Row> set(Entry entry) {
    List<Atom> words = Setter.phrase(entry.words(), Typeface.Cut.PLAIN, width);
    List<Atom> formula =
        entry.formula().map(shown -> Setter.formula(shown, width - INDENT)).orElse(List.of());
    List<Atom> because =
        entry.because().isEmpty()
            ? List.of()
            : Setter.phrase(
                Phrase.words("  ").then("", entry.because()), Typeface.Cut.ITALIC, width);
    List<Row> rowsOfAll = new ArrayList<>();
    if (words.isEmpty() || formula.isEmpty()) {
      List<Atom> main = words.isEmpty() ? formula : words;
      List<Row> together = Row.filled(joined(main, because, 50), width, INDENT);
      return together.size() == 1
          ? together
          : separate(Row.filled(main, width, INDENT), because, rowsOfAll);
    }
    List<Row> together = Row.filled(joined(words, formula, Setter.room()), width, INDENT);
    if (together.size() == 1) {
      return separate(together, because, rowsOfAll);
    }
    rowsOfAll.addAll(Row.filled(words, width, 0));
    Row.filled(formula, width - INDENT, INDENT).forEach(row -> rowsOfAll.add(indented(row)));
    return separate(List.of(), because, rowsOfAll);
  }

  private List<Row> separate(List<Row> main, List<Atom> because, List<Row> into) {
    into.addAll(main);
    Row.filled(because, width - INDENT, 0).forEach(row -> into.add(indented(row)));
    return into;
  }

  private static Row indented(Row row) {
    return new Row(
        row.placed().stream().map(each -> new Row.Placed(each.atom(), each.x() + INDENT)).toList(),
        row.width() + INDENT,
        row.ascent(),
        row.descent());
  }

  /** One after the other, with this room between them, where a row may end. */
  private static List<Atom> joined(List<Atom> first, List<Atom> second, double room) {
    List<Atom> all = new ArrayList<>(first);
    for (int k = 0; k < second.size(); k++) {
      Atom atom = second.get(k);
      if (k > 0) {
        all.add(atom);
      } else if (atom instanceof Atom.Piece piece) {
        all.add(new Atom.Piece(piece.drawing(), piece.key(), piece.sign(), room, true));
      } else if (atom instanceof Atom.Word word) {
        all.add(word.after(room));
      }
    }
    return all;
  }

  /** Rows of a note stand closer. */
  private static double noteHeight(Row row) {
    return Math.max(row.ascent() + row.descent() + 10, 62);
  }

  private static double height(Row row) {
    return Math.max(row.ascent() + row.descent() + GAP, 84);
  }

  private void row(Row row, double baseline, List<Mark> marks, List<Placed> placed) {
    for (Row.Placed each : row.placed()) {
      double x = LEFT + each.x();
      if (each.atom() instanceof Atom.Word word) {
        Ink ink = word.cut() == Typeface.Cut.ITALIC ? Ink.QUIET : Ink.INK;
        marks.add(new Mark.Letters(word.text(), x, baseline, word.size(), word.cut(), ink));
      } else if (each.atom() instanceof Atom.Piece piece) {
        marks.add(new Mark.Outline(piece.drawing(), x, baseline - piece.ascent(), Ink.INK));
        if (!piece.key().isEmpty()) {
          placed.add(new Placed(piece, x, baseline));
        }
      }
    }
  }

  /** Strikes out what goes from the last line and underlines what is new in this one. */
  private void compare(List<Placed> now, int reveal, List<Mark> marks) {
    List<Placed> before = terms(last);
    List<Placed> after = terms(now);
    Changes changes =
        Changes.between(
            before.stream().map(each -> each.piece().key()).toList(),
            after.stream().map(each -> each.piece().key()).toList());
    if (!changes.isChange() || !leftSide(last).equals(leftSide(now))) {
      return;
    }
    List<Mark> struck = new ArrayList<>();
    for (int gone : changes.gone()) {
      Placed place = before.get(gone);
      double middle = place.baseline() + (place.piece().descent() - place.piece().ascent()) / 2;
      double end = place.x() + place.piece().width();
      struck.add(Mark.Stroke.line(place.x() - 4, middle + 12, end + 4, middle - 12, 5, Ink.STRUCK));
    }
    for (int fresh : changes.fresh()) {
      Placed place = after.get(fresh);
      double under = place.baseline() + place.piece().descent() + 10;
      marks.add(
          Mark.Stroke.line(
              place.x(), under, place.x() + place.piece().width(), under, 6, Ink.FRESH));
    }
    if (!struck.isEmpty()) {
      layers.add(new Layer(reveal, "", struck));
    }
  }

  /** What a line is about: everything before its first relation sign. */
  private static List<String> leftSide(List<Placed> pieces) {
    return pieces.stream()
        .map(each -> each.piece().key())
        .takeWhile(key -> !Pieces.isRelation(key))
        .toList();
  }

  private static List<Placed> terms(List<Placed> pieces) {
    return pieces.stream().filter(each -> !each.piece().sign()).toList();
  }

  private void note(Entry.Note note, double beside, int reveal) {
    double from = Math.max(beside, marginY);
    Phrase text =
        Phrase.words(note.text() + " It gives ")
            .scanned()
            .then("", Phrase.of(note.value()))
            .then("", Phrase.words("."));
    List<Row> set =
        Row.filled(Setter.phrase(text, Typeface.Cut.PLAIN, RIGHT - MARGIN), RIGHT - MARGIN, 0);
    double height = set.stream().mapToDouble(Board::noteHeight).sum();
    from = Math.max(marginY, Math.min(from, BOTTOM - height));
    if (warnings > 0 && from + height > BOTTOM + GAP) {
      return;
    }
    List<Mark> marks = new ArrayList<>();
    double at = from;
    for (Row row : set) {
      double baseline = at + row.ascent();
      for (Row.Placed each : row.placed()) {
        double x = MARGIN + each.x();
        if (each.atom() instanceof Atom.Word word) {
          marks.add(new Mark.Letters(word.text(), x, baseline, word.size(), word.cut(), Ink.INK));
        } else if (each.atom() instanceof Atom.Piece piece) {
          marks.add(new Mark.Outline(piece.drawing(), x, baseline - piece.ascent(), Ink.INK));
        }
      }
      at += noteHeight(row);
    }
    marks.add(Mark.Stroke.line(MARGIN - 16, from - 6, MARGIN - 16, at - 10, 8, Ink.WARNING));
    layers.add(new Layer(reveal, "Warning: " + text.plain(), marks));
    marginY = at + 30;
    warnings++;
  }

  private static void tick(Entry.Tick tick, double x, double baseline, List<Mark> marks) {
    if (tick == Entry.Tick.CHECKED) {
      marks.add(
          new Mark.Stroke(
              List.of(
                  new Mark.Point(x, baseline - 14),
                  new Mark.Point(x + 11, baseline - 2),
                  new Mark.Point(x + 32, baseline - 32)),
              5,
              Ink.FRESH));
    } else if (tick == Entry.Tick.ARGUED) {
      marks.add(letters("“", x + 6, baseline + 4, Typeface.Cut.BOLD));
    }
  }

  private static Mark letters(String text, double x, double baseline, Typeface.Cut cut) {
    return new Mark.Letters(text, x, baseline, Setter.SIZE, cut, Ink.QUIET);
  }
}
