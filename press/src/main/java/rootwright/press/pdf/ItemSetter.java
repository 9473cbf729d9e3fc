package rootwright.press.pdf;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.KeyLine;
import rootwright.press.document.Response;
import rootwright.press.document.Scoring;
import rootwright.press.markup.Markup;

/** Sets an item: its number, what is asked, and room for the answer or, on a key, the answer. */
final class ItemSetter implements Response.Cases<Markup> {

  private final Setting setting;
  private final Markup into;
  private final double measure;

  ItemSetter(Setting setting, Markup into, double measure) {
    this.setting = setting;
    this.into = into;
    this.measure = measure;
  }

  Markup item(Block.Item item) {
    double widest = setting.width("88.", Typeface.Cut.BOLD);
    double indent = Hanging.indent(setting, widest);
    ItemSetter inside = new ItemSetter(setting, into, measure - indent);
    into.open("fo:block", "space-before", "1.3em", "keep-together.within-page", "100");
    Hanging.open(setting, widest, item.number() + ".", Typeface.Cut.BOLD, "0pt", into);
    item.points().ifPresent(points -> into.text("(" + setting.language().points(points) + ") "));
    inside.statement(item.statement());
    into.open("fo:block", "text-indent", "0pt");
    if (item.scoring().isEmpty() || item.response() instanceof Response.Choices) {
      item.response().choose(inside);
    }
    item.scoring().ifPresent(inside::key);
    into.close();
    return into.close().close();
  }

  /** The first paragraph shares the line of the number; the rest stands below. */
  private void statement(List<Block> statement) {
    int rest = 0;
    if (!statement.isEmpty() && statement.get(0) instanceof Block.Paragraph first) {
      into.raw(
          PieceSetter.set(
                  first.pieces(), setting, PieceSetter.Manner.running(measure), Typeface.Cut.PLAIN)
              .objects());
      rest = 1;
    }
    into.open("fo:block", "text-indent", "0pt");
    new BlockSetter(setting, into, measure).all(statement.subList(rest, statement.size()));
    into.close();
  }

  @Override
  public Markup work(Response.Work work) {
    return room(work.lines());
  }

  @Override
  public Markup shortAnswer(Response.ShortAnswer answer) {
    room(answer.lines());
    into.open("fo:block", "space-before", "0.8em", "text-align", "end");
    into.text(setting.language().word("answer") + " ");
    Leaders.rule(Math.min(measure / 2, 60 * Points.A_MILLIMETRE), into);
    return into.close();
  }

  /** Room of so many lines, but never more than most of a page. */
  private Markup room(int lines) {
    double height = Math.min(lines * setting.page().handwriting(), 0.7 * setting.page().depth());
    if (height > 0) {
      into.open("fo:block-container", "height", Points.pt(height), "role", "Artifact");
      into.empty("fo:block").close();
    }
    return into;
  }

  @Override
  public Markup choices(Response.Choices choices) {
    return new ChoiceSetter(setting, into, measure).choices(choices);
  }

  private void key(Scoring scoring) {
    into.open("fo:block", "space-before", "0.5em");
    into.raw(
        PieceSetter.set(
                KeyLine.of(scoring, setting.language()),
                setting,
                PieceSetter.Manner.running(measure),
                Typeface.Cut.PLAIN)
            .objects());
    into.close();
  }
}
