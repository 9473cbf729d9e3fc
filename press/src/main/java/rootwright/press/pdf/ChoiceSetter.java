package rootwright.press.pdf;

import java.util.List;
import rootwright.press.document.Response;
import rootwright.press.markup.Markup;

/**
 * Sets choices in columns of equal width: all in a row if they fit, else in half as many columns,
 * else one below the other.
 */
final class ChoiceSetter {

  private final Setting setting;
  private final Markup into;
  private final double measure;

  ChoiceSetter(Setting setting, Markup into, double measure) {
    this.setting = setting;
    this.into = into;
    this.measure = measure;
  }

  Markup choices(Response.Choices choices) {
    double label = 0;
    for (Response.Choice choice : choices.choices()) {
      label = Math.max(label, setting.width(label(choice), Typeface.Cut.BOLD));
    }
    double indent = Hanging.indent(setting, label);
    List<SetLine> set =
        choices.choices().stream()
            .map(
                choice ->
                    PieceSetter.set(
                        choice.pieces(),
                        setting,
                        PieceSetter.Manner.alone(measure - indent),
                        Typeface.Cut.PLAIN))
            .toList();
    double widest = indent + set.stream().mapToDouble(SetLine::width).max().orElse(0);
    int count = choices.choices().size();
    for (int columns : new int[] {count, (count + 1) / 2, 2}) {
      if (columns > 1 && columns * (widest + setting.page().size()) <= measure) {
        return rows(choices.choices(), set, label, columns);
      }
    }
    return list(choices.choices(), set, label);
  }

  private Markup rows(List<Response.Choice> choices, List<SetLine> set, double label, int columns) {
    double column = measure / columns;
    for (int from = 0; from < choices.size(); from += columns) {
      into.open(
          "fo:block", "space-before", "0.6em", "text-indent", "0pt", "wrap-option", "no-wrap");
      double written = 0;
      for (int k = from; k < Math.min(from + columns, choices.size()); k++) {
        Leaders.room(Math.max(0, (k - from) * column - written), into);
        String mark = label(choices.get(k));
        double room = Hanging.indent(setting, label) - setting.width(mark, Typeface.Cut.BOLD);
        into.leaf("fo:inline", mark, "font-weight", "bold");
        Leaders.room(room, into);
        into.raw(set.get(k).objects());
        written = (k - from) * column + Hanging.indent(setting, label) + set.get(k).width();
      }
      into.close();
    }
    return into;
  }

  private Markup list(List<Response.Choice> choices, List<SetLine> set, double label) {
    for (int k = 0; k < choices.size(); k++) {
      Hanging.open(setting, label, label(choices.get(k)), Typeface.Cut.BOLD, "0.45em", into);
      into.raw(set.get(k).objects());
      into.close();
    }
    return into;
  }

  private static String label(Response.Choice choice) {
    return "(" + choice.letter() + ")";
  }
}
