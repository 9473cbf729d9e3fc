package rootwright.desk.table;

import java.io.StringReader;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import rootwright.composing.blueprint.AnswerWish;
import rootwright.composing.blueprint.AskWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.KnownNames;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.RealWish;
import rootwright.composing.blueprint.RootsWish;
import rootwright.composing.blueprint.ShorterRoute;
import rootwright.composing.blueprint.WorkingWish;
import rootwright.desk.table.UnreadableBlueprintException.Fault;

/**
 * Reads an order written as YAML (or as JSON, which is YAML too), by the published schema. What is
 * not said, or left blank, is as in {@link Blueprint#USUAL}. All faults are collected, each with
 * its line. Only the tree of nodes is made; nothing in the text is run or made an object.
 */
final class BlueprintReader {

  private static final int LONGEST_TEXT = 100_000;

  private static final Map<String, String> KEYS =
      Map.ofEntries(
          Map.entry("ask", "an ask, such as Σ 1/r^2"),
          Map.entry("family", "the name of a family of asks, such as power-sum"),
          Map.entry("surprise", "true"),
          Map.entry("kinds", "a list of kinds of ask, such as [value, discriminant]"),
          Map.entry("degree", "a whole number, such as 3"),
          Map.entry("size", "a whole number, such as 12"),
          Map.entry("lead", "a whole number or a range, such as 1 or 2..5"),
          Map.entry("roots", "any, distinct, no-rational or irreducible"),
          Map.entry("real", "open, all, not-all or how many"),
          Map.entry("answer", "any, whole, 0..999, /12 or =2026"),
          Map.entry("with", "a list of routes, such as [evaluate]"),
          Map.entry("without", "a list of routes, such as [log-derivative]"),
          Map.entry("shorter", "a list such as [reduce-powers than build-from-e by 2]"),
          Map.entry("slips", "a whole number, such as 3"),
          Map.entry("traps", "a list of slips, such as [lead-forgotten]"),
          Map.entry("level", "a whole number from 1 to 5"),
          Map.entry("choices", "a whole number from 3 to 5"),
          Map.entry("many", "a whole number, such as 8"),
          Map.entry("seed", "a whole number, such as 41"),
          Map.entry("avoid", "a list of files, such as [shelf.txt]"));

  private final List<Fault> faults = new ArrayList<>();
  private Blueprint order = Blueprint.USUAL;
  private Set<String> kinds = Set.of();
  private int asks;
  private boolean leadSaid;

  private BlueprintReader() {}

  /**
   * Reads an order.
   *
   * @throws UnreadableBlueprintException if something in it cannot be read
   */
  static Blueprint read(String text) throws UnreadableBlueprintException {
    BlueprintReader reader = new BlueprintReader();
    reader.readAll(text);
    if (!reader.faults.isEmpty()) {
      reader.faults.sort(Comparator.comparingInt(Fault::line));
      throw new UnreadableBlueprintException(reader.faults);
    }
    return reader.order;
  }

  private void readAll(String text) {
    if (text.length() > LONGEST_TEXT) {
      faults.add(
          new Fault(
              1,
              "the order has %d characters".formatted(text.length()),
              "write at most " + LONGEST_TEXT));
      return;
    }
    try {
      LoaderOptions options = new LoaderOptions();
      options.setAllowDuplicateKeys(false);
      Node root = new Yaml(options).compose(new StringReader(text));
      if (root == null) {
        return;
      }
      if (root instanceof MappingNode mapping) {
        mapping.getValue().forEach(this::entry);
        surprise();
        usualLead();
      } else {
        faults.add(
            new Fault(
                line(root), "an order is a list of wishes", "write one wish a line: degree: 3"));
      }
    } catch (MarkedYAMLException broken) {
      int line = broken.getProblemMark() == null ? 1 : broken.getProblemMark().getLine() + 1;
      faults.add(
          new Fault(
              line,
              "this is not YAML: " + broken.getProblem(),
              "write one wish a line, and texts with signs in quotes: ask: \"Σ r^2\""));
    } catch (YAMLException broken) {
      faults.add(new Fault(1, "this is not YAML", "write one wish a line: degree: 3"));
    }
  }

  private void entry(NodeTuple entry) {
    String key = entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
    Node value = entry.getValueNode();
    if (!KEYS.containsKey(key)) {
      faults.add(
          new Fault(
              line(entry.getKeyNode()),
              "there is no wish “%s”".formatted(key),
              "the nearest is “%s”".formatted(KnownNames.nearest(key, KEYS.keySet()))));
    } else if (!(value instanceof ScalarNode scalar && isBlank(scalar))) {
      try {
        wish(key, value);
      } catch (IllegalArgumentException unreadable) {
        faults.add(
            new Fault(
                line(value), "%s is “%s”".formatted(key, shown(value)), "write " + KEYS.get(key)));
      }
    }
  }

  private static boolean isBlank(ScalarNode scalar) {
    return scalar.getValue().isBlank()
        || (scalar.isPlain()
            && (scalar.getValue().equals("null") || scalar.getValue().equals("~")));
  }

  private void wish(String key, Node value) {
    PolynomialWish polynomial = order.polynomial();
    WorkingWish working = order.working();
    switch (key) {
      case "ask" -> ask(new AskWish.Given(text(value)), value);
      case "family" -> ask(new AskWish.OfFamily(text(value)), value);
      case "surprise" -> {
        if (yes(value)) {
          ask(new AskWish.Surprise(Set.of()), value);
        }
      }
      case "kinds" -> kinds = names(value);
      case "degree" -> order = order.withPolynomial(polynomial.withDegree(whole(value)));
      case "size" -> order = order.withPolynomial(polynomial.withSize(whole(value)));
      case "lead" -> lead(value);
      case "roots" ->
          order = order.withPolynomial(polynomial.withRoots(RootsWish.parse(text(value))));
      case "real" -> order = order.withPolynomial(polynomial.withReal(RealWish.parse(text(value))));
      case "answer" -> order = order.withAnswer(AnswerWish.parse(text(value)));
      case "with" -> order = order.withWorking(working.withRoutes(names(value)));
      case "without" -> order = order.withWorking(working.withoutRoutes(names(value)));
      case "shorter" ->
          order = order.withWorking(working.withShorter(list(value, ShorterRoute::parse)));
      case "slips" -> order = order.withWorking(working.withSlips(OptionalInt.of(whole(value))));
      case "traps" -> order = order.withWorking(working.withTraps(names(value)));
      case "level" -> order = order.withWorking(working.withLevel(OptionalInt.of(whole(value))));
      case "choices" -> order = order.withChoices(whole(value));
      case "many" -> order = order.withMany(whole(value));
      case "seed" -> order = order.withSeed(seed(value));
      case "avoid" -> order = order.withAvoid(list(value, Function.identity()));
      default -> throw new IllegalStateException("a wish without a reader: " + key);
    }
  }

  private void ask(AskWish wish, Node value) {
    if (++asks > 1) {
      faults.add(
          new Fault(
              line(value),
              "there are two wishes for the ask",
              "write one of ask, family and surprise"));
    }
    order = order.withAsk(wish);
  }

  private void surprise() {
    if (!kinds.isEmpty()) {
      if (order.ask() instanceof AskWish.Surprise) {
        order = order.withAsk(new AskWish.Surprise(kinds));
      } else {
        faults.add(
            new Fault(1, "kinds belong to a surprise", "write surprise: true, or leave kinds out"));
      }
    }
  }

  private void lead(Node value) {
    String text = text(value);
    leadSaid = true;
    int dots = text.indexOf("..");
    int least = whole(dots < 0 ? text : text.substring(0, dots));
    int largest = dots < 0 ? least : whole(text.substring(dots + 2));
    order = order.withPolynomial(order.polynomial().withLead(least, largest));
  }

  /** A lead that is not said is no larger than the coefficients. */
  private void usualLead() {
    PolynomialWish wish = order.polynomial();
    if (!leadSaid && wish.size() >= 1 && wish.largestLead() > wish.size()) {
      order = order.withPolynomial(wish.withLead(1, wish.size()));
    }
  }

  private static String text(Node node) {
    if (node instanceof ScalarNode scalar) {
      return scalar.getValue().strip();
    }
    throw new IllegalArgumentException("not a single value");
  }

  private static boolean yes(Node node) {
    return switch (text(node)) {
      case "true" -> true;
      case "false" -> false;
      default -> throw new IllegalArgumentException("neither true nor false");
    };
  }

  private static int whole(Node node) {
    return whole(text(node));
  }

  private static int whole(String text) {
    return Integer.parseInt(text.strip());
  }

  private static long seed(Node node) {
    BigInteger seed = new BigInteger(text(node));
    if (seed.bitLength() >= Long.SIZE) {
      throw new IllegalArgumentException("beyond 64 bits");
    }
    return seed.longValueExact();
  }

  private static Set<String> names(Node node) {
    return new LinkedHashSet<>(list(node, Function.identity()));
  }

  /** A list; a single value counts as a list of one, and commas separate. */
  private static <T> List<T> list(Node node, Function<String, T> read) {
    List<T> found = new ArrayList<>();
    if (node instanceof SequenceNode sequence) {
      for (Node item : sequence.getValue()) {
        found.add(read.apply(text(item)));
      }
    } else {
      for (String item : text(node).split(",")) {
        found.add(read.apply(item.strip()));
      }
    }
    return found;
  }

  private static String shown(Node node) {
    if (node instanceof ScalarNode scalar) {
      String value = scalar.getValue();
      return value.length() > 40 ? value.substring(0, 38) + "…" : value;
    }
    return node instanceof SequenceNode ? "a list" : "a group of wishes";
  }

  private static int line(Node node) {
    return node.getStartMark().getLine() + 1;
  }
}
