package rootwright.working.pasted;

import static rootwright.working.pasted.SentenceParts.IMPERATIVE;
import static rootwright.working.pasted.SentenceParts.NAMES;
import static rootwright.working.pasted.SentenceParts.OPENING;
import static rootwright.working.pasted.SentenceParts.OWNER;
import static rootwright.working.pasted.SentenceParts.ROOTS;
import static rootwright.working.pasted.SentenceParts.THEN;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.working.problem.Statement;

/**
 * A form in which problems about the roots of a polynomial are worded.
 *
 * @param pattern with the groups {@code poly} and {@code ask}, and perhaps {@code names} or {@code
 *     condition}
 * @param joint what joins the condition to the ask
 */
record SentenceForm(Pattern pattern, String joint) {

  private static final String OF = "\\s+(?:of|to)\\s+";
  private static final String NAMED = "(?<names>" + NAMES + ")";
  private static final String POLY = "(?<poly>.+?)";
  private static final String ASK = "(?<ask>.+)$";
  private static final String END = "\\s*[.?!]*$";
  private static final String ARE = "\\s+(?:be|are|is|denote|being)\\s+";
  private static final String WHERE =
      "[\\s,]+(?:if|where|when|given\\s+that|knowing\\s+that|with)\\s+";
  private static final String VALUES =
      "^(?:"
          + IMPERATIVE
          + "\\s+)?(?<ask>(?:all\\s+|the\\s+)?(?:real\\s+|possible\\s+)*values?\\s+of\\s+.{1,40}?)"
          + "\\s+(?:for\\s+which|such\\s+that|so\\s+that|if|when)\\s+";

  /** The forms, in the order in which a sentence is tried. */
  static final List<SentenceForm> ALL =
      List.of(
          form(OPENING + NAMED + ARE + ROOTS + OF + OWNER + POLY + THEN + ASK),
          form(OPENING + ROOTS + OF + OWNER + POLY + ARE + NAMED + THEN + ASK),
          form(
              OPENING
                  + OWNER
                  + POLY
                  + "[\\s,]+(?:has|have|having|with)\\s+(?:as\\s+)?"
                  + ROOTS
                  + "\\s+"
                  + NAMED
                  + THEN
                  + ASK),
          form(
              "^(?:"
                  + IMPERATIVE
                  + "\\s+)?(?<ask>.+?)"
                  + WHERE
                  + NAMED
                  + ARE
                  + ROOTS
                  + OF
                  + OWNER
                  + POLY
                  + END),
          form(
              "^(?:"
                  + IMPERATIVE
                  + "\\s+)?(?<ask>.+?)"
                  + WHERE
                  + ROOTS
                  + OF
                  + OWNER
                  + POLY
                  + ARE
                  + NAMED
                  + END),
          new SentenceForm(
              SentenceParts.pattern(
                  VALUES + ROOTS + OF + OWNER + POLY + "\\s+(?:are|is)\\s+(?<condition>.+)$"),
              " if roots "),
          new SentenceForm(
              SentenceParts.pattern(
                  VALUES + OWNER + POLY + "\\s+(?:has|have)\\s+(?<condition>.+)$"),
              " if "),
          new SentenceForm(
              SentenceParts.pattern(
                  OPENING
                      + ROOTS
                      + OF
                      + OWNER
                      + POLY
                      + "\\s+(?:are|is)\\s+(?<condition>[a-z ]+?)"
                      + THEN
                      + ASK),
              " if roots "),
          new SentenceForm(
              SentenceParts.pattern(
                  OPENING
                      + OWNER
                      + POLY
                      + "\\s+(?:has|have)\\s+(?<condition>[a-z0-9 ]+?)"
                      + THEN
                      + ASK),
              " if "),
          new SentenceForm(
              SentenceParts.pattern(
                  "^(?:"
                      + IMPERATIVE
                      + "\\s+)?(?<ask>(?:all\\s+|the\\s+)?(?:real\\s+|integers?\\s+|numbers?\\s+)*[a-zA-Zα-ω])"
                      + "\\s+(?:for\\s+which|such\\s+that|so\\s+that|if|when)\\s+"
                      + OWNER
                      + POLY
                      + "\\s+(?:has|have)\\s+(?<condition>.+)$"),
              " if "),
          new SentenceForm(
              SentenceParts.pattern(
                  OPENING
                      + "(?<condition>(?:the\\s+)?(?:sum|product)\\s.*?roots)"
                      + OF
                      + OWNER
                      + POLY
                      + "\\s+(?:is|equals|be)\\s+(?:equal\\s+to\\s+)?(?<value>[-−]?[0-9/.]*[0-9])"
                      + THEN
                      + ASK),
              " if "),
          form(
              "^(?:"
                  + IMPERATIVE
                  + "\\s+)?(?<ask>(?:how\\s+many|number\\s+of|the|sum|product|are)\\b.*?"
                  + "(?:roots?|zeros?|zeroes|solutions?|discriminant))"
                  + OF
                  + OWNER
                  + "(?<poly>[^.?!]*(?:\\.\\d[^.?!]*)*)"
                  + END),
          form("^(?<ask>how\\s+many\\s+.*?roots?)\\s+does\\s+" + OWNER + POLY + "\\s+have" + END));

  private static SentenceForm form(String expression) {
    return new SentenceForm(SentenceParts.pattern(expression), "");
  }

  /** The problem that a sentence states, if it has this form. */
  Optional<Statement> read(String sentence, Optional<String> unknown) {
    Matcher matcher = pattern.matcher(sentence);
    if (!matcher.find()) {
      return Optional.empty();
    }
    String expression = pattern.pattern();
    String ask = matcher.group("ask").strip();
    if (expression.contains("?<condition>")) {
      String value = expression.contains("?<value>") ? " is " + matcher.group("value") : "";
      ask =
          letters(ask).replaceFirst("[.?!\\s]+$", "")
              + joint
              + matcher.group("condition").replaceFirst("[.?!\\s]+$", "").strip()
              + value;
    }
    List<String> names =
        expression.contains("?<names>") ? SentenceParts.names(matcher.group("names")) : List.of();
    return Optional.of(new Statement(matcher.group("poly").strip(), ask, names, unknown));
  }

  private static String letters(String ask) {
    return ask.replaceFirst(
        "(?i)^(?:all\\s+|the\\s+)?(?:real\\s+|possible\\s+|integers?\\s+|numbers?\\s+)*(?:values?\\s+of\\s+)?(?:the\\s+)?(?:constant\\s+|parameter\\s+|number\\s+|coefficient\\s+)?",
        "");
  }
}
