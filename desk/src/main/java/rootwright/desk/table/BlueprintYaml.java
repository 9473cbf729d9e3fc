package rootwright.desk.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.StringJoiner;
import java.util.TreeSet;
import rootwright.composing.blueprint.AskWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.ShorterRoute;
import rootwright.composing.blueprint.WorkingWish;

/** Writes an order as YAML that {@link BlueprintReader} reads back to the same order. */
final class BlueprintYaml {

  private final StringBuilder text = new StringBuilder("# An order for fresh problems.\n");

  private BlueprintYaml() {}

  /** The order, one wish a line; wishes that say nothing are left out. */
  static String of(Blueprint blueprint) {
    return new BlueprintYaml().write(blueprint);
  }

  private String write(Blueprint blueprint) {
    ask(blueprint.ask());
    PolynomialWish polynomial = blueprint.polynomial();
    line("degree", polynomial.degree());
    line("size", polynomial.size());
    line(
        "lead",
        polynomial.leastLead() == polynomial.largestLead()
            ? Integer.toString(polynomial.leastLead())
            : polynomial.leastLead() + ".." + polynomial.largestLead());
    line("roots", polynomial.roots().text());
    line("real", polynomial.real().text());
    line("answer", quoted(blueprint.answer().text()));
    working(blueprint.working());
    line("choices", blueprint.choices());
    line("many", blueprint.many());
    line("seed", blueprint.seed());
    list("avoid", blueprint.avoid());
    return text.toString();
  }

  private void ask(AskWish wish) {
    if (wish instanceof AskWish.Given given) {
      line("ask", quoted(given.text()));
    } else if (wish instanceof AskWish.OfFamily family) {
      line("family", quoted(family.name()));
    } else if (wish instanceof AskWish.Surprise surprise) {
      line("surprise", "true");
      list("kinds", new TreeSet<>(surprise.kinds()));
    }
  }

  private void working(WorkingWish wish) {
    list("with", new TreeSet<>(wish.with()));
    list("without", new TreeSet<>(wish.without()));
    list("shorter", wish.shorter().stream().map(ShorterRoute::text).toList());
    wish.slips().ifPresent(least -> line("slips", least));
    list("traps", new TreeSet<>(wish.traps()));
    wish.level().ifPresent(level -> line("level", level));
  }

  private void line(String key, Object value) {
    text.append(key).append(": ").append(value).append('\n');
  }

  private void list(String key, Collection<String> values) {
    if (!values.isEmpty()) {
      StringJoiner list = new StringJoiner(", ", "[", "]");
      List<String> all = new ArrayList<>(values);
      all.forEach(value -> list.add(quoted(value)));
      line(key, list);
    }
  }

  /** In double quotes, with the escapes that YAML and JSON share. */
  private static String quoted(String value) {
    StringBuilder quoted = new StringBuilder("\"");
    value
        .codePoints()
        .forEach(
            sign -> {
              if (sign == '"' || sign == '\\') {
                quoted.append('\\').appendCodePoint(sign);
              } else if (Character.isISOControl(sign)) {
                quoted.append("\\u%04x".formatted(sign));
              } else {
                quoted.appendCodePoint(sign);
              }
            });
    return quoted.append('"').toString();
  }
}
