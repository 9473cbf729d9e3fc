package rootwright.desk.paper;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.press.paper.State;
import rootwright.working.problem.Statement;

/** A paper as a tree of named texts, and back. Names that are not known are refused. */
final class PaperTree {

  private static final Set<String> OF_A_PAPER =
      Set.of(
          "paper",
          "title",
          "language",
          "instruction",
          "date",
          "edition",
          "state",
          "code",
          "corrects",
          "items",
          "versions");
  private static final Set<String> OF_AN_ITEM =
      Set.of(
          "given",
          "find",
          "roots",
          "unknown",
          "form",
          "points",
          "options",
          "hints",
          "key",
          "read-from",
          "level",
          "prove",
          "proof");
  private static final String FORMAT = "1";

  private final JsonNode tree;

  PaperTree(JsonNode tree) {
    this.tree = tree;
  }

  static ObjectNode of(FiledPaper paper) {
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    tree.put("paper", 1);
    tree.put("title", paper.title());
    tree.put("language", paper.language());
    tree.put("instruction", paper.instruction());
    tree.put("date", paper.date().toString());
    tree.put("edition", paper.edition());
    tree.put("state", PaperFile.word(paper.state()));
    if (!paper.code().isEmpty()) {
      tree.put("code", paper.code());
    }
    paper
        .corrects()
        .ifPresent(
            correction ->
                tree.putObject("corrects")
                    .put("code", correction.code())
                    .put("cause", correction.cause())
                    .put("file", correction.file()));
    ObjectNode items = tree.putObject("items");
    paper.items().forEach((name, item) -> items.set(name, of(item)));
    ObjectNode versions = tree.putObject("versions");
    paper.versions().forEach((mark, names) -> list(versions, mark.isEmpty() ? "-" : mark, names));
    return tree;
  }

  private static ObjectNode of(FiledItem item) {
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    if (item instanceof FiledItem.Proof proof) {
      tree.put("prove", proof.claim());
      list(tree, "proof", proof.proof());
      return tree.put("points", proof.points());
    }
    FiledItem.Problem problem = (FiledItem.Problem) item;
    tree.put("given", problem.statement().polynomial());
    tree.put("find", problem.statement().find());
    if (!problem.statement().roots().isEmpty()) {
      tree.put("roots", String.join(", ", problem.statement().roots()));
    }
    problem.statement().unknown().ifPresent(letter -> tree.put("unknown", letter));
    tree.put("form", problem.form().word());
    tree.put("points", problem.points());
    if (problem.form() == AnswerForm.CHOICE) {
      list(tree, "options", problem.options());
    }
    if (!problem.key().isEmpty()) {
      tree.put("key", problem.key());
      tree.put("read-from", problem.readFrom());
    }
    if (!problem.level().isEmpty()) {
      tree.put("level", problem.level());
    }
    list(tree, "hints", problem.hints());
    return tree;
  }

  private static void list(ObjectNode tree, String name, List<String> texts) {
    ArrayNode list = tree.putArray(name);
    texts.forEach(list::add);
  }

  FiledPaper paper() {
    if (!tree.isObject() || !FORMAT.equals(text(tree, "paper"))) {
      throw new IllegalArgumentException("no paper: the file does not say “paper: 1”");
    }
    requireKnown(tree, OF_A_PAPER, "the paper");
    Map<String, FiledItem> items = new LinkedHashMap<>();
    tree.path("items")
        .properties()
        .forEach(e -> items.put(e.getKey(), item(e.getKey(), e.getValue())));
    Map<String, List<String>> versions = new LinkedHashMap<>();
    tree.path("versions")
        .properties()
        .forEach(e -> versions.put(e.getKey().equals("-") ? "" : e.getKey(), texts(e.getValue())));
    JsonNode correction = tree.path("corrects");
    return new FiledPaper(
        required(tree, "title", "the paper"),
        or(text(tree, "language"), "en"),
        text(tree, "instruction"),
        date(required(tree, "date", "the paper")),
        number(tree, "edition", "the paper", 1),
        state(or(text(tree, "state"), "draft")),
        text(tree, "code"),
        correction.isObject()
            ? Optional.of(
                new FiledPaper.Correction(
                    text(correction, "code"), text(correction, "cause"), text(correction, "file")))
            : Optional.empty(),
        items,
        versions);
  }

  private static FiledItem item(String name, JsonNode tree) {
    String where = "item " + name;
    requireKnown(tree, OF_AN_ITEM, where);
    int points = number(tree, "points", where, 4);
    if (tree.has("prove")) {
      return new FiledItem.Proof(required(tree, "prove", where), texts(tree.path("proof")), points);
    }
    List<String> roots =
        List.of(text(tree, "roots").split(",")).stream()
            .map(String::strip)
            .filter(root -> !root.isEmpty())
            .toList();
    return new FiledItem.Problem(
        new Statement(
            given(tree, where),
            required(tree, "find", where),
            roots,
            Optional.of(text(tree, "unknown")).filter(letter -> !letter.isEmpty())),
        AnswerForm.named(or(text(tree, "form"), "short")),
        points,
        texts(tree.path("options")),
        texts(tree.path("hints")),
        text(tree, "key"),
        text(tree, "read-from"),
        text(tree, "level"));
  }

  private static void requireKnown(JsonNode tree, Set<String> names, String where) {
    for (Iterator<String> name = tree.fieldNames(); name.hasNext(); ) {
      String next = name.next();
      if (!names.contains(next)) {
        throw new IllegalArgumentException(
            "%s has “%s”, which means nothing here".formatted(where, next));
      }
    }
  }

  private static String text(JsonNode tree, String name) {
    return tree.path(name).asText("").strip();
  }

  /** What is given must be said, but is empty where the ask brings its own data. */
  private static String given(JsonNode tree, String where) {
    return tree.path("given").isTextual() ? text(tree, "given") : required(tree, "given", where);
  }

  private static String required(JsonNode tree, String name, String where) {
    String text = text(tree, name);
    if (text.isEmpty()) {
      throw new IllegalArgumentException("%s has no “%s”".formatted(where, name));
    }
    return text;
  }

  private static String or(String text, String otherwise) {
    return text.isEmpty() ? otherwise : text;
  }

  private static int number(JsonNode tree, String name, String where, int otherwise) {
    String text = text(tree, name);
    if (text.isEmpty()) {
      return otherwise;
    }
    if (!text.matches("[1-9]\\d{0,5}")) {
      throw new IllegalArgumentException(
          "%s: “%s” is a whole number from 1, not “%s”".formatted(where, name, text));
    }
    return Integer.parseInt(text);
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException wrong) {
      throw new IllegalArgumentException(
          "the date is written like 2026-11-26, not “%s”".formatted(text), wrong);
    }
  }

  private static State state(String text) {
    for (State state : State.values()) {
      if (PaperFile.word(state).equals(text)) {
        return state;
      }
    }
    throw new IllegalArgumentException(
        "the state is draft, checked, frozen or printed, not “%s”".formatted(text));
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(text -> texts.add(text.asText("").strip()));
    return texts;
  }
}
