package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.OptionalInt;
import java.util.Set;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.AnswerWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.RootsWish;
import rootwright.web.reply.FaultException;

/** An order for the composer as the page sends it; the same words as on the command line. */
final class BlueprintBody {

  private BlueprintBody() {}

  /**
   * Reads the order.
   *
   * @throws FaultException if a wish cannot be read
   */
  static Blueprint read(JsonNode body) {
    int size = whole(body, "size", 12);
    return new Blueprint(
        body.path("ask").asText("").strip(),
        whole(body, "degree", 3),
        size,
        Math.min(whole(body, "lead", 3), size),
        answer(body.path("answer").asText("whole").strip()),
        roots(body.path("roots").asText("no-rational")),
        optional(body, "real"),
        Set.of(),
        Set.of(),
        whole(body, "slips", 3),
        optional(body, "level"),
        whole(body, "choices", 4),
        whole(body, "many", 5),
        seed(body));
  }

  private static int whole(JsonNode body, String name, int usual) {
    String text = body.path(name).asText("").strip();
    try {
      return text.isEmpty() ? usual : Integer.parseInt(text);
    } catch (NumberFormatException noNumber) {
      throw unreadable(name, text, "a whole number");
    }
  }

  private static long seed(JsonNode body) {
    String text = body.path("seed").asText("1").strip();
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException noNumber) {
      throw unreadable("seed", text, "a whole number");
    }
  }

  private static OptionalInt optional(JsonNode body, String name) {
    return body.path(name).asText("").isBlank()
        ? OptionalInt.empty()
        : OptionalInt.of(whole(body, name, 0));
  }

  private static AnswerWish answer(String wish) {
    try {
      int dots = wish.indexOf("..");
      if (wish.equals("whole")) {
        return new AnswerWish.Whole();
      } else if (wish.startsWith("/")) {
        return new AnswerWish.Fraction(Long.parseLong(wish.substring(1).strip()));
      } else if (wish.startsWith("=")) {
        return new AnswerWish.Wanted(Rational.parse(wish.substring(1).strip()));
      } else if (dots > 0) {
        long low = Long.parseLong(wish.substring(0, dots).strip());
        return new AnswerWish.Between(low, Long.parseLong(wish.substring(dots + 2).strip()));
      }
    } catch (IllegalArgumentException | ArithmeticException noNumber) {
      throw unreadable("answer", wish, "numbers, the lower first");
    }
    throw unreadable("answer", wish, "whole, 0..999, /12 or =2026");
  }

  private static RootsWish roots(String wish) {
    return switch (wish) {
      case "any" -> RootsWish.ANY;
      case "distinct" -> RootsWish.DISTINCT;
      case "no-rational" -> RootsWish.NO_RATIONAL_ROOT;
      case "irreducible" -> RootsWish.IRREDUCIBLE;
      default -> throw unreadable("roots", wish, "any, distinct, no-rational or irreducible");
    };
  }

  private static FaultException unreadable(String name, String text, String expected) {
    return new FaultException(
        422,
        "wish-unreadable",
        "The wish for %s, “%s”, cannot be read; it should be %s.".formatted(name, text, expected));
  }
}
