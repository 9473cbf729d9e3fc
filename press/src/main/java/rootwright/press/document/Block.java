package rootwright.press.document;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;

/** A block of a paper, set below the block before it. */
public sealed interface Block {

  /** The answer of the case that fits. */
  <R> R choose(Cases<R> cases);

  /** This block and every block inside it. */
  default Stream<Block> withInner() {
    return Stream.of(this);
  }

  /**
   * A heading below the title.
   *
   * @param level 1 for a section, 2 for a part of it
   */
  record Heading(int level, List<Piece> pieces) implements Block {
    /**
     * @throws IllegalArgumentException if the level is neither 1 nor 2
     */
    public Heading {
      pieces = List.copyOf(pieces);
      if (level < 1 || level > 2) {
        throw new IllegalArgumentException("a heading of level %d".formatted(level));
      }
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.heading(this);
    }
  }

  /** A paragraph. */
  record Paragraph(List<Piece> pieces) implements Block {
    public Paragraph {
      pieces = List.copyOf(pieces);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.paragraph(this);
    }
  }

  /** A formula on lines of its own. */
  record Display(Formula formula) implements Block {
    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.display(this);
    }
  }

  /**
   * A numbered item: what is asked, and room for what is answered. It is kept on one page where a
   * page can hold it.
   *
   * @param number printed before it, from 1
   * @param points what a right answer is worth, empty if not said
   * @param statement what is given and asked
   * @param response how it is answered
   * @param scoring what is right; only on papers for the coach
   */
  record Item(
      int number,
      Optional<Integer> points,
      List<Block> statement,
      Response response,
      Optional<Scoring> scoring)
      implements Block {
    /**
     * @throws IllegalArgumentException if the number or the points are below 1, or the scoring
     *     names a letter that is not among the choices
     */
    public Item {
      statement = List.copyOf(statement);
      if (number < 1) {
        throw new IllegalArgumentException("an item numbered %d".formatted(number));
      }
      points.ifPresent(
          worth -> {
            if (worth < 1) {
              throw new IllegalArgumentException("an item worth %d points".formatted(worth));
            }
          });
      scoring.ifPresent(key -> key.requireFit(response));
    }

    @Override
    public Stream<Block> withInner() {
      return Stream.concat(Stream.of(this), statement.stream().flatMap(Block::withInner));
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.item(this);
    }
  }

  /**
   * A line of a working: the claim at the left, its reason at the line's end.
   *
   * @param claim usually one formula
   * @param reason may be empty
   */
  record WorkedLine(List<Piece> claim, List<Piece> reason) implements Block {
    public WorkedLine {
      claim = List.copyOf(claim);
      reason = List.copyOf(reason);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.workedLine(this);
    }
  }

  /** Entries one below the other, numbered or with a dash. */
  record Entries(Marker marker, List<List<Piece>> entries) implements Block {
    /** What stands before an entry. */
    public enum Marker {
      /** 1, 2, 3 … */
      NUMBER,
      /** A dash. */
      DASH
    }

    public Entries {
      entries = entries.stream().map(List::copyOf).toList();
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.entries(this);
    }
  }

  /**
   * A table with one row of heads.
   *
   * @param caption said before the table, may be empty
   * @param columns heads and how the cells below are placed
   * @param rows each with as many cells as there are columns
   */
  record Table(List<Piece> caption, List<Column> columns, List<List<List<Piece>>> rows)
      implements Block {
    /**
     * One column.
     *
     * @param head what stands above it
     * @param placing where its cells stand
     * @param share how much of the width it gets, compared with the other columns
     */
    public record Column(List<Piece> head, Placing placing, int share) {
      /**
       * @throws IllegalArgumentException if the share is below 1
       */
      public Column {
        head = List.copyOf(head);
        if (share < 1) {
          throw new IllegalArgumentException("a column with a share of %d".formatted(share));
        }
      }
    }

    /** Where the cells of a column stand. */
    public enum Placing {
      /** At the left edge. */
      START,
      /** In the middle. */
      CENTRE,
      /** At the right edge, for numbers. */
      END
    }

    /**
     * @throws IllegalArgumentException if there is no column, or a row has another number of cells
     */
    public Table {
      caption = List.copyOf(caption);
      columns = List.copyOf(columns);
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
      int width = columns.size();
      if (width == 0) {
        throw new IllegalArgumentException("a table without columns");
      }
      rows.forEach(
          row -> {
            if (row.size() != width) {
              throw new IllegalArgumentException(
                  "a row of %d cells in a table of %d columns".formatted(row.size(), width));
            }
          });
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.table(this);
    }
  }

  /**
   * A drawing.
   *
   * @param drawing black and greys only, so that it survives the copier
   * @param alternative what it shows, in words
   * @param width in millimetres
   * @param caption printed below, may be empty
   */
  record Figure(Svg drawing, String alternative, int width, List<Piece> caption) implements Block {
    /**
     * @throws IllegalArgumentException if the alternative is blank or the width is not positive
     */
    public Figure {
      caption = List.copyOf(caption);
      if (alternative.isBlank()) {
        throw new IllegalArgumentException("a figure without a text alternative");
      }
      if (width < 1) {
        throw new IllegalArgumentException("a figure %d millimetres wide".formatted(width));
      }
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.figure(this);
    }
  }

  /** Blocks set apart by a frame, with a title in bold. */
  record Frame(List<Piece> title, List<Block> blocks) implements Block {
    public Frame {
      title = List.copyOf(title);
      blocks = List.copyOf(blocks);
    }

    @Override
    public Stream<Block> withInner() {
      return Stream.concat(Stream.of(this), blocks.stream().flatMap(Block::withInner));
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.frame(this);
    }
  }

  /** A horizontal line across the text. */
  record Rule() implements Block {
    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.rule(this);
    }
  }

  /** A line to be filled in by hand with who one is: each label is followed by a blank. */
  record NameLine(List<String> labels) implements Block {
    public NameLine {
      labels = List.copyOf(labels);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.nameLine(this);
    }
  }

  /** What follows begins on a new page. */
  record PageBreak() implements Block {
    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.pageBreak(this);
    }
  }

  /** A paragraph from texts and formulas; see {@link Piece#line}. */
  static Block paragraph(Object... parts) {
    return new Paragraph(Piece.line(parts));
  }

  /** A section heading. */
  static Block heading(String text) {
    return new Heading(1, Piece.line(text));
  }

  /**
   * One answer for each kind of block.
   *
   * @param <R> what is answered
   */
  interface Cases<R> {
    /** The answer for a {@link Heading}. */
    R heading(Heading heading);

    /** The answer for a {@link Paragraph}. */
    R paragraph(Paragraph paragraph);

    /** The answer for a {@link Display}. */
    R display(Display display);

    /** The answer for an {@link Item}. */
    R item(Item item);

    /** The answer for a {@link WorkedLine}. */
    R workedLine(WorkedLine line);

    /** The answer for {@link Entries}. */
    R entries(Entries entries);

    /** The answer for a {@link Table}. */
    R table(Table table);

    /** The answer for a {@link Figure}. */
    R figure(Figure figure);

    /** The answer for a {@link Frame}. */
    R frame(Frame frame);

    /** The answer for a {@link Rule}. */
    R rule(Rule rule);

    /** The answer for a {@link NameLine}. */
    R nameLine(NameLine line);

    /** The answer for a {@link PageBreak}. */
    R pageBreak(PageBreak pageBreak);
  }
}
