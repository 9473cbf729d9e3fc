package rootwright.press.pdf;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.markup.Markup;

/** Sets blocks, one below the other. */
final class BlockSetter implements Block.Cases<Markup> {

  /** The start of the text of this block, moved in by a length. */
  private static final String MOVED_IN = "inherited-property-value(start-indent) + ";

  /**
   * Kept on one page as strongly as can be, yet broken where a page cannot hold it. The strength
   * "always" would let an item that is taller than a page run off the page.
   */
  private static final String KEPT = "100";

  private final Setting setting;
  private final Markup into;
  private final double measure;

  /**
   * Blocks with lines of this width.
   *
   * @param measure in points
   */
  BlockSetter(Setting setting, Markup into, double measure) {
    this.setting = setting;
    this.into = into;
    this.measure = measure;
  }

  void all(List<Block> blocks) {
    for (int k = 0; k < blocks.size(); k++) {
      boolean introduces =
          blocks.get(k) instanceof Block.Paragraph
              && k + 1 < blocks.size()
              && (blocks.get(k + 1) instanceof Block.Table || follows(blocks, k));
      if (introduces) {
        into.open("fo:block", "keep-with-next.within-page", "always");
      }
      blocks.get(k).choose(this);
      if (introduces) {
        into.close();
      }
    }
  }

  /** A statement below its heading stays with the working that follows it. */
  private static boolean follows(List<Block> blocks, int place) {
    return place > 0
        && blocks.get(place - 1) instanceof Block.Heading
        && (blocks.get(place + 1) instanceof Block.WorkedLine
            || blocks.get(place + 1) instanceof Block.Paragraph);
  }

  @Override
  public Markup heading(Block.Heading heading) {
    boolean section = heading.level() == 1;
    into.open(
        "fo:block",
        "role",
        section ? "H2" : "H3",
        "font-weight",
        "bold",
        "font-size",
        section ? "1.2em" : "1em",
        "space-before",
        section ? "1.6em" : "1.1em",
        "space-after",
        "0.3em",
        "keep-with-next.within-page",
        "always",
        "keep-together.within-page",
        "always");
    Setting own = section ? setting.scaled(1.2) : setting;
    into.raw(PieceSetter.set(heading.pieces(), own, running(), Typeface.Cut.BOLD).objects());
    return into.close();
  }

  @Override
  public Markup paragraph(Block.Paragraph paragraph) {
    into.open("fo:block", "space-before", "0.5em", "widows", "2", "orphans", "2");
    into.raw(line(paragraph.pieces(), running(), Typeface.Cut.PLAIN).objects());
    return into.close();
  }

  @Override
  public Markup display(Block.Display display) {
    double in = 2 * setting.page().size();
    double hang = 1.5 * setting.page().size();
    into.open(
        "fo:block",
        "start-indent",
        MOVED_IN + Points.pt(in + hang),
        "text-indent",
        Points.pt(-hang),
        "space-before",
        "0.6em",
        "space-after",
        "0.4em");
    var manner = PieceSetter.Manner.alone(measure - in - hang);
    into.raw(
        line(List.of(new Piece.Mathematics(display.formula())), manner, Typeface.Cut.PLAIN)
            .objects());
    return into.close();
  }

  @Override
  public Markup item(Block.Item item) {
    return new ItemSetter(setting, into, measure).item(item);
  }

  @Override
  public Markup workedLine(Block.WorkedLine line) {
    double hang = 1.5 * setting.page().size();
    var manner = PieceSetter.Manner.alone(measure - hang);
    SetLine claim = line(line.claim(), manner, Typeface.Cut.PLAIN);
    SetLine reason =
        line(line.reason(), PieceSetter.Manner.running(measure - hang), Typeface.Cut.ITALIC);
    boolean onOneLine = claim.width() + reason.width() + 2 * setting.page().size() <= measure;
    into.open("fo:block", "space-before", "0.45em", "keep-together.within-page", KEPT);
    into.open(
        "fo:block",
        "start-indent",
        MOVED_IN + Points.pt(hang),
        "text-indent",
        Points.pt(-hang),
        "text-align-last",
        onOneLine ? "justify" : "start");
    into.raw(claim.objects());
    if (!line.reason().isEmpty()) {
      if (onOneLine) {
        Leaders.rest(into);
      } else {
        into.close();
        into.open(
            "fo:block",
            "start-indent",
            MOVED_IN + Points.pt(4 * hang),
            "text-align",
            "end",
            "keep-with-previous.within-page",
            "always");
      }
      into.open("fo:inline", "font-style", "italic").raw(reason.objects()).close();
    } else if (onOneLine) {
      Leaders.rest(into);
    }
    return into.close().close();
  }

  @Override
  public Markup entries(Block.Entries entries) {
    int number = 1;
    double hang =
        entries.marker() == Block.Entries.Marker.NUMBER
            ? setting.width(entries.entries().size() + ".", Typeface.Cut.PLAIN)
            : setting.width("–", Typeface.Cut.PLAIN);
    for (List<Piece> entry : entries.entries()) {
      String marker = entries.marker() == Block.Entries.Marker.NUMBER ? number + "." : "–";
      Hanging.open(setting, hang, marker, Typeface.Cut.PLAIN, "0.35em", into);
      var manner = PieceSetter.Manner.running(measure - Hanging.indent(setting, hang));
      into.raw(line(entry, manner, Typeface.Cut.PLAIN).objects());
      into.close();
      number++;
    }
    return into;
  }

  @Override
  public Markup table(Block.Table table) {
    return new TableSetter(setting, into, measure).table(table);
  }

  @Override
  public Markup figure(Block.Figure figure) {
    double width = Math.min(measure, figure.width() * Points.A_MILLIMETRE);
    into.open(
        "fo:block",
        "text-align",
        "center",
        "space-before",
        "0.8em",
        "keep-together.within-page",
        KEPT);
    into.open("fo:block");
    into.open(
        "fo:instream-foreign-object",
        "role",
        "Figure",
        "fox:alt-text",
        figure.alternative(),
        "content-width",
        Points.pt(width),
        "content-height",
        Points.pt(width * figure.drawing().heightToWidth()));
    into.raw(figure.drawing().source());
    into.close().close();
    if (!figure.caption().isEmpty()) {
      into.open(
          "fo:block",
          "role",
          "Caption",
          "font-size",
          "0.9em",
          "space-before",
          "0.3em",
          "keep-with-previous.within-page",
          "always");
      into.raw(
          PieceSetter.set(figure.caption(), setting.scaled(0.9), running(), Typeface.Cut.PLAIN)
              .objects());
      into.close();
    }
    return into.close();
  }

  @Override
  public Markup frame(Block.Frame frame) {
    double padding = 0.7 * setting.page().size();
    into.open(
        "fo:block",
        "border",
        "0.6pt solid black",
        "padding",
        Points.pt(padding),
        "start-indent",
        MOVED_IN + Points.pt(padding + 0.6),
        "end-indent",
        "inherited-property-value(end-indent) + " + Points.pt(padding + 0.6),
        "space-before",
        "1em",
        "space-after",
        "0.6em",
        "keep-together.within-page",
        KEPT);
    into.open("fo:block", "font-weight", "bold", "keep-with-next.within-page", "always");
    into.raw(line(frame.title(), running(), Typeface.Cut.BOLD).objects());
    into.close();
    new BlockSetter(setting, into, measure - 2 * padding - 1.2).all(frame.blocks());
    return into.close();
  }

  @Override
  public Markup rule(Block.Rule rule) {
    return into.empty(
        "fo:block",
        "border-top",
        "0.5pt solid black",
        "space-before",
        "0.9em",
        "space-after",
        "0.9em",
        "line-height",
        "0pt");
  }

  @Override
  public Markup nameLine(Block.NameLine line) {
    into.open("fo:block", "space-before", "1.2em", "space-after", "1em");
    double gap = setting.page().size();
    double labels = 0;
    for (String label : line.labels()) {
      labels += setting.width(label + " ", Typeface.Cut.PLAIN);
    }
    int count = line.labels().size();
    double free = Math.max(0, measure - labels - gap * (count - 1));
    // The first blank is for the name and gets a double share.
    double share = free / (count + 1);
    for (int k = 0; k < count; k++) {
      if (k > 0) {
        Leaders.room(gap, into);
      }
      into.text(line.labels().get(k) + " ");
      Leaders.rule(k == 0 ? 2 * share : share, into);
    }
    return into.close();
  }

  @Override
  public Markup pageBreak(Block.PageBreak pageBreak) {
    return into.empty("fo:block", "break-after", "page");
  }

  private PieceSetter.Manner running() {
    return PieceSetter.Manner.running(measure);
  }

  private SetLine line(List<Piece> pieces, PieceSetter.Manner manner, Typeface.Cut cut) {
    return PieceSetter.set(pieces, setting, manner, cut);
  }
}
