package rootwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/** One call of the command line, in this process, with what it printed. */
record Shell(int status, String out, String err) {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int WIDTH = 100;

  static Shell run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            new BufferedReader(new StringReader("")),
            false,
            WIDTH);
    int status = Main.commandLine(console).execute(arguments);
    return new Shell(status, out.toString(), err.toString());
  }

  static Shell work(String polynomial, String find) {
    return run("work", "--polynomial", polynomial, "--find", find);
  }

  static Shell workAsJson(String polynomial, String find) {
    return run("work", "--polynomial", polynomial, "--find", find, "--json");
  }

  /** The single object that was printed. */
  JsonNode json() {
    List<JsonNode> all = objects();
    if (all.size() != 1) {
      throw new IllegalStateException(all.size() + " objects: " + out + err);
    }
    return all.get(0);
  }

  /** Every line of the output as an object. */
  List<JsonNode> objects() {
    return out.lines().map(Shell::read).toList();
  }

  /** The texts of one field of every element of an array. */
  static List<String> texts(JsonNode array, String field) {
    List<String> texts = new ArrayList<>();
    array.forEach(element -> texts.add(element.path(field).asText()));
    return texts;
  }

  private static JsonNode read(String line) {
    try {
      return JSON.readTree(line);
    } catch (JsonProcessingException wrong) {
      throw new IllegalStateException(line, wrong);
    }
  }
}
