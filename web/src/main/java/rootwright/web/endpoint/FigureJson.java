package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rootwright.desk.Desk;
import rootwright.desk.figure.PicturedRoot;
import rootwright.desk.figure.PicturedSum;
import rootwright.desk.figure.RootPicture;
import rootwright.desk.figure.SequencePicture;
import rootwright.working.problem.Problem;

/** The numbers of the figures of a problem, under {@code figure}. */
final class FigureJson {

  private FigureJson() {}

  /** Adds what can be drawn; nothing for a polynomial without roots. */
  static void add(ObjectNode reply, Desk desk, Problem problem) {
    desk.picture(problem)
        .ifPresent(picture -> roots(reply.withObject("/figure"), picture, problem));
    desk.sequence(problem).ifPresent(sums -> sums(reply.withObject("/figure"), sums));
  }

  private static void roots(ObjectNode figure, RootPicture picture, Problem problem) {
    ArrayNode roots = figure.putArray("roots");
    List<String> names = problem.roots();
    int named = 0;
    for (PicturedRoot root : picture.roots()) {
      int upTo = Math.min(named + root.multiplicity(), names.size());
      ObjectNode node = roots.addObject();
      node.put("name", String.join(", ", names.subList(named, upTo)));
      node.set("names", roots.arrayNode());
      names.subList(named, upTo).forEach(node.withArray("names")::add);
      node.put("re", root.real()).put("im", root.imaginary()).put("radius", root.radius());
      node.put("multiplicity", root.multiplicity()).put("real", root.isReal());
      named = upTo;
    }
    picture.coefficients().forEach(figure.withArray("coefficients")::add);
  }

  private static void sums(ObjectNode figure, SequencePicture sums) {
    ArrayNode list = figure.putArray("powerSums");
    for (PicturedSum sum : sums.sums()) {
      list.addObject().put("k", sum.exponent()).put("text", sum.value()).put("asked", sum.asked());
    }
  }
}
