package rootwright.working.identity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.subject.Conditions;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Quality;

/** Reads “prove r³ + s³ + t³ = 3rst” with its conditions. */
final class ConjectureReader {

  /** Most letters that are worked with. */
  static final int MOST_LETTERS = 6;

  private static final Pattern OPENING =
      Pattern.compile(
          "\\s*(prove or (refute|disprove)|prove|disprove|refute|show|is it true|does it follow|verify)"
              + "(\\s*:|\\s+that\\b|\\b)\\s*(?<claim>.*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private final Inquiry inquiry;

  private ConjectureReader(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  /** Whether an ask begins like a claim to be proved. */
  static boolean isClaim(String ask) {
    return OPENING.matcher(ask).matches();
  }

  /**
   * The conjecture.
   *
   * @throws UnreadableException if the claim or a condition is no equation between rational
   *     expressions, or there are too many letters
   */
  static Conjecture read(Inquiry inquiry) throws UnreadableException {
    return new ConjectureReader(inquiry).read();
  }

  private Conjecture read() throws UnreadableException {
    Matcher matcher = OPENING.matcher(inquiry.ask());
    String claim = matcher.matches() ? matcher.group("claim") : inquiry.ask();
    Conditions sorted = Conditions.of(inquiry);
    Formula.Relation claimed = relation(claim, true);
    List<Formula.Relation> relations = new ArrayList<>();
    Set<String> letters = new LinkedHashSet<>(sorted.names());
    for (String text : sorted.formulas()) {
      Formula.Relation relation = relation(text, false);
      relations.add(relation);
      letters.addAll(FormulaNames.in(relation));
    }
    letters.addAll(FormulaNames.in(claimed));
    if (letters.size() > MOST_LETTERS || letters.isEmpty()) {
      throw refused(
          letters.isEmpty() ? "no-names" : "too-large",
          "There are %d letters; between 1 and %d are worked with."
              .formatted(letters.size(), MOST_LETTERS),
          claim,
          "an equation with letters");
    }
    Map<String, Integer> numbers = new LinkedHashMap<>();
    letters.forEach(letter -> numbers.put(letter, numbers.size()));
    List<Equation> conditions = new ArrayList<>();
    List<MultivariatePolynomial> unequal = new ArrayList<>();
    for (Formula.Relation relation : relations) {
      for (int k = 0; k < relation.comparisons().size(); k++) {
        Equation equation = equation(relation.sides().get(k), relation.sides().get(k + 1), numbers);
        if (relation.comparisons().get(k) == Formula.Comparison.NOT_EQUAL) {
          unequal.add(equation.difference().numerator());
          unequal.add(equation.difference().denominator());
        } else {
          conditions.add(equation);
        }
      }
    }
    qualities(sorted, numbers.size(), unequal);
    List<Equation> claims = new ArrayList<>();
    for (int k = 0; k + 1 < claimed.sides().size(); k++) {
      claims.add(equation(claimed.sides().get(k), claimed.sides().get(k + 1), numbers));
    }
    return new Conjecture(
        List.copyOf(letters), claims, conditions, unequal, sorted.domain(), List.copyOf(relations));
  }

  private static void qualities(
      Conditions sorted, int letters, List<MultivariatePolynomial> unequal) {
    for (int i = 0; i < letters; i++) {
      MultivariatePolynomial letter = MultivariatePolynomial.unknown(i);
      if (sorted.qualities().contains(Quality.NONZERO)
          || sorted.qualities().contains(Quality.POSITIVE)
          || sorted.qualities().contains(Quality.NATURAL)) {
        unequal.add(letter);
      }
      for (int j = 0; j < i && sorted.qualities().contains(Quality.DISTINCT); j++) {
        unequal.add(letter.minus(MultivariatePolynomial.unknown(j)));
      }
    }
  }

  private static Equation equation(Formula left, Formula right, Map<String, Integer> numbers)
      throws UnreadableException {
    return new Equation(left, right, FormulaExpansion.expand(left.minus(right), numbers));
  }

  private Formula.Relation relation(String text, boolean claim) throws UnreadableException {
    Formula formula = FormulaReader.formula(text);
    if (formula instanceof Formula.Relation relation
        && relation.comparisons().stream()
            .allMatch(
                c ->
                    c == Formula.Comparison.EQUAL
                        || (!claim && c == Formula.Comparison.NOT_EQUAL))) {
      return relation;
    }
    throw refused(
        claim ? "no-claim" : "condition-unread",
        claim
            ? "What is to be proved must be an equation; inequalities are not decided here."
            : "“%s” is no equation; conditions are equations, ≠, or words such as “real”."
                .formatted(text),
        text,
        "an equation such as a + b + c = 0");
  }

  private UnreadableException refused(String code, String sentence, String text, String expected) {
    String find = inquiry.statement().find();
    int at = Math.max(0, find.indexOf(text));
    return new UnreadableException(
        new Refusal(code, sentence, find, find.codePointCount(0, at), expected, ""));
  }
}
