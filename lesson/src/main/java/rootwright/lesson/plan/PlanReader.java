package rootwright.lesson.plan;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import rootwright.working.proof.Letters;

/** Reads a plan from its file and remembers where everything stands. */
public final class PlanReader {

  private static final List<String> OF_PLAN =
      List.of("title", "topic", "roots", "minutes", "words-a-minute", "aim", "known", "steps");
  private static final List<String> OF_STEP =
      List.of(
          "step",
          "title",
          "fact",
          "polynomial",
          "find",
          "route",
          "slip",
          "figure",
          "seconds",
          "lines");
  private static final List<String> OF_LINE = List.of("words", "write", "think", "because", "say");
  private static final List<String> OF_PACE = List.of("new", "recap", "captions");

  private final List<Complaint> complaints = new ArrayList<>();

  private PlanReader() {}

  /**
   * The plan in a text.
   *
   * @throws BadPlanException if the text is no plan; says at which lines
   */
  public static Plan read(String text) throws BadPlanException {
    PlanReader reader = new PlanReader();
    Plan plan = reader.plan(node(text));
    if (!reader.complaints.isEmpty()) {
      throw new BadPlanException(reader.complaints);
    }
    return plan;
  }

  private static MappingNode node(String text) throws BadPlanException {
    LoaderOptions options = new LoaderOptions();
    options.setAllowDuplicateKeys(false);
    options.setMaxAliasesForCollections(0);
    try {
      Node node = new Yaml(new SafeConstructor(options)).compose(new StringReader(text));
      if (node instanceof MappingNode mapping) {
        return mapping;
      }
      throw bad(1, "This is no plan of a lesson.", "", "it begins with title: and topic:");
    } catch (MarkedYAMLException wrong) {
      int line = wrong.getProblemMark() == null ? 1 : wrong.getProblemMark().getLine() + 1;
      throw bad(
          line,
          "The file is not YAML from here on: " + wrong.getProblem() + ".",
          "",
          "put a text with : or # in it between double quotes");
    } catch (YAMLException wrong) {
      throw bad(1, "The file is not YAML: " + wrong.getMessage(), "", "");
    }
  }

  private static BadPlanException bad(int line, String text, String found, String mend) {
    return new BadPlanException(List.of(new Complaint(line, text, found, mend)));
  }

  private Plan plan(MappingNode node) {
    Map<String, Node> fields = fields(node, OF_PLAN);
    List<PlanStep> steps = new ArrayList<>();
    for (Node step : sequence(fields, "steps")) {
      steps.add(step(step));
    }
    if (steps.isEmpty()) {
      complain(node, "The plan has no steps.", "", "write at least one under steps:");
    }
    return new Plan(
        text(fields, "title"),
        text(fields, "topic"),
        letters(node, fields),
        number(node, fields, "minutes", 1, 600, 45),
        pace(node, fields),
        text(fields, "aim"),
        sequence(fields, "known").stream().map(PlanReader::scalar).toList(),
        steps,
        fields.containsKey("minutes") ? place(fields.getOrDefault("minutes", node)) : place(node));
  }

  private Letters letters(MappingNode node, Map<String, Node> fields) {
    String names = text(fields, "roots");
    try {
      return names.isEmpty() ? Letters.usual(3) : new Letters(List.of(names.split("\\s*,\\s*")));
    } catch (IllegalArgumentException wrong) {
      complain(
          fields.getOrDefault("roots", node),
          "These cannot be the roots: " + wrong.getMessage() + ".",
          names,
          "write them with commas between: r, s, t");
      return Letters.usual(3);
    }
  }

  private Pace pace(MappingNode node, Map<String, Node> fields) {
    if (!(fields.get("words-a-minute") instanceof MappingNode mapping)) {
      return Pace.MIDDLE;
    }
    Map<String, Node> words = fields(mapping, OF_PACE);
    try {
      return new Pace(
          number(node, words, "new", 1, 1000, Pace.MIDDLE.fresh()),
          number(node, words, "recap", 1, 1000, Pace.MIDDLE.recap()),
          number(node, words, "captions", 1, 1000, Pace.MIDDLE.captions()));
    } catch (IllegalArgumentException wrong) {
      complain(mapping, "This pace cannot be: " + wrong.getMessage() + ".", "", "");
      return Pace.MIDDLE;
    }
  }

  private PlanStep step(Node node) {
    if (!(node instanceof MappingNode mapping)) {
      complain(node, "A step begins with its kind.", scalar(node), "write - step: example");
      return PlanStep.of(StepKind.AIM, "", List.of());
    }
    Map<String, Node> fields = fields(mapping, OF_STEP);
    String word = text(fields, "step");
    StepKind kind =
        StepKind.named(word)
            .orElseGet(
                () -> {
                  complain(
                      mapping,
                      "There is no kind of step “%s”.".formatted(word),
                      "",
                      "kinds are "
                          + String.join(
                              ", ", Arrays.stream(StepKind.values()).map(StepKind::word).toList()));
                  return StepKind.AIM;
                });
    List<PlanLine> lines = new ArrayList<>();
    for (Node line : sequence(fields, "lines")) {
      lines.add(line(line));
    }
    return new PlanStep(
        kind,
        text(fields, "title"),
        text(fields, "fact"),
        text(fields, "polynomial"),
        text(fields, "find"),
        text(fields, "route"),
        text(fields, "slip"),
        text(fields, "figure"),
        number(mapping, fields, "seconds", 1, 600, 0),
        lines,
        place(mapping));
  }

  private PlanLine line(Node node) {
    if (!(node instanceof MappingNode mapping)) {
      return new PlanLine(scalar(node), "", "", "", "", place(node));
    }
    Map<String, Node> fields = fields(mapping, OF_LINE);
    Node formula = fields.getOrDefault("write", fields.getOrDefault("think", mapping));
    return new PlanLine(
        text(fields, "words"),
        text(fields, "write"),
        text(fields, "think"),
        text(fields, "because"),
        text(fields, "say"),
        place(formula));
  }

  private Map<String, Node> fields(MappingNode node, List<String> known) {
    Map<String, Node> fields = new LinkedHashMap<>();
    for (NodeTuple tuple : node.getValue()) {
      String key = scalar(tuple.getKeyNode());
      if (!known.contains(key)) {
        complain(
            tuple.getKeyNode(),
            "Nothing called “%s” belongs here.".formatted(key),
            "",
            "known are " + String.join(", ", known));
      } else if (fields.put(key, tuple.getValueNode()) != null) {
        complain(tuple.getKeyNode(), "“%s” stands here twice.".formatted(key), "", "");
      }
    }
    return fields;
  }

  private List<Node> sequence(Map<String, Node> fields, String key) {
    Node node = fields.get(key);
    if (node == null) {
      return List.of();
    }
    if (node instanceof SequenceNode sequence) {
      return sequence.getValue();
    }
    complain(node, "Under “%s” stands a list.".formatted(key), scalar(node), "begin each with -");
    return List.of();
  }

  private int number(
      Node whole, Map<String, Node> fields, String key, int least, int most, int otherwise) {
    String written = text(fields, key);
    if (written.isEmpty()) {
      return otherwise;
    }
    try {
      int number = Integer.parseInt(written.strip());
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException noNumber) {
      // Said below, as for a number that is too large.
    }
    complain(
        fields.getOrDefault(key, whole),
        "“%s” wants a whole number from %d to %d.".formatted(key, least, most),
        written,
        "");
    return otherwise;
  }

  private static String text(Map<String, Node> fields, String key) {
    Node node = fields.get(key);
    return node == null ? "" : scalar(node);
  }

  private static String scalar(Node node) {
    return node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
  }

  private static int place(Node node) {
    return node.getStartMark().getLine() + 1;
  }

  private void complain(Node at, String text, String found, String mend) {
    complaints.add(new Complaint(place(at), text, found, mend));
  }
}
