package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rootwright.desk.Desk;
import rootwright.desk.figure.Picture;
import rootwright.desk.figure.PicturedRoot;
import rootwright.desk.figure.PicturedSum;
import rootwright.desk.figure.Pictures;
import rootwright.desk.figure.RootPicture;
import rootwright.desk.figure.SequencePicture;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/** The numbers of the figures of a problem, under {@code figure}. */
final class FigureJson {

  private static final ObjectMapper JSON = new ObjectMapper();

  private FigureJson() {}

  /** Adds what can be drawn; nothing for a problem of which there is nothing to see. */
  static void add(ObjectNode reply, Desk desk, Statement statement, Solution solution) {
    Pictures pictures = desk.pictures();
    pictures
        .roots(statement, solution)
        .ifPresent(
            picture -> roots(reply.withObject("/figure"), picture, solution.given().roots()));
    pictures.sums(statement, solution).ifPresent(sums -> sums(reply.withObject("/figure"), sums));
    for (Picture picture : pictures.of(statement, solution)) {
      ObjectNode node = JSON.valueToTree(picture);
      reply.withObject("/figure").withArray("pictures").add(node.put("kind", picture.kind()));
    }
  }

  private static void roots(ObjectNode figure, RootPicture picture, List<String> names) {
    ArrayNode roots = figure.putArray("roots");
    int named = 0;
    for (PicturedRoot root : picture.roots()) {
      int from = Math.min(named, names.size());
      int upTo = Math.min(named + root.multiplicity(), names.size());
      ObjectNode node = roots.addObject();
      node.put("name", String.join(", ", names.subList(from, upTo)));
      node.set("names", roots.arrayNode());
      names.subList(from, upTo).forEach(node.withArray("names")::add);
      node.put("re", root.real()).put("im", root.imaginary()).put("radius", root.radius());
      node.put("multiplicity", root.multiplicity()).put("real", root.isReal());
      named = upTo;
    }
    picture.coefficients().forEach(figure.withArray("coefficients")::add);
  }

  private static void sums(ObjectNode figure, SequencePicture sums) {
    figure.put("sequence", sums.name());
    ArrayNode list = figure.putArray("powerSums");
    for (PicturedSum sum : sums.sums()) {
      list.addObject().put("k", sum.exponent()).put("text", sum.value()).put("asked", sum.asked());
    }
  }
}
