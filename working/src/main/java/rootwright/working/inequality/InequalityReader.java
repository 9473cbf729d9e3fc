package rootwright.working.inequality;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.NumberDomain;
import rootwright.working.subject.Conditions;
import rootwright.working.subject.Inquiry;

/** Reads “prove r² + s² + t² ≥ rs + st + tr if r, s, t real”. */
final class InequalityReader {

  private static final int MOST_LETTERS = 5;
  private static final int LONGEST = 600;

  private static final Pattern OPENING =
      Pattern.compile(
          "\\s*(?:prove or (?:refute|disprove)|prove|disprove|refute|show|is it true|verify)"
              + "(?:\\s*:|\\s+that\\b|\\b)\\s*(?<claim>.*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private InequalityReader() {}

  static boolean isLike(Inquiry inquiry) {
    if (!inquiry.polynomial().isEmpty() || inquiry.ask().length() > LONGEST) {
      return false;
    }
    Matcher matcher = OPENING.matcher(inquiry.ask());
    return matcher.matches() && matcher.group("claim").matches("(?s).*(?:[<>≤≥]|\\\\[lg]e).*");
  }

  static Inequality read(Inquiry inquiry) throws UnreadableException {
    Matcher matcher = OPENING.matcher(inquiry.ask());
    String text = matcher.matches() ? matcher.group("claim") : inquiry.ask();
    if (!(FormulaReader.formula(text) instanceof Formula.Relation claim)
        || claim.sides().size() != 2) {
      throw refused(inquiry, "An inequality with two sides is expected.");
    }
    Formula.Comparison sign = claim.comparisons().get(0);
    boolean less = sign == Formula.Comparison.LESS || sign == Formula.Comparison.AT_MOST;
    boolean strict = sign == Formula.Comparison.LESS || sign == Formula.Comparison.GREATER;
    if (!less && sign != Formula.Comparison.GREATER && sign != Formula.Comparison.AT_LEAST) {
      throw refused(inquiry, "An inequality is expected.");
    }
    Formula difference =
        less
            ? claim.sides().get(1).minus(claim.sides().get(0))
            : claim.sides().get(0).minus(claim.sides().get(1));
    Conditions conditions = Conditions.of(inquiry);
    TreeSet<String> names = new TreeSet<>(FormulaNames.in(claim));
    List<Formula.Relation> equations = new ArrayList<>();
    TreeSet<String> positive = new TreeSet<>();
    Optional<Formula> apart = Optional.empty();
    for (String condition : conditions.formulas()) {
      if (!(FormulaReader.formula(condition) instanceof Formula.Relation relation)) {
        throw refused(inquiry, "“%s” is no condition that is worked here.".formatted(condition));
      }
      if (relation.sides().size() == 2
          && relation.comparisons().get(0) == Formula.Comparison.NOT_EQUAL) {
        apart = Optional.of(relation.sides().get(0).minus(relation.sides().get(1)));
        continue;
      }
      if (isPositivity(relation)) {
        positive.addAll(FormulaNames.in(relation));
        continue;
      }
      equations.add(relation);
      names.addAll(FormulaNames.in(relation));
    }
    if (!positive.isEmpty()) {
      // In “a, b > 0” the cut at the comma leaves a name alone.
      positive.addAll(conditions.names());
      if (!positive.containsAll(names)) {
        throw refused(inquiry, "All letters should be positive, or all real.");
      }
      return read(
          inquiry,
          names,
          claim,
          difference,
          strict,
          Optional.of(NumberDomain.POSITIVE),
          equations,
          apart);
    }
    return read(inquiry, names, claim, difference, strict, conditions.domain(), equations, apart);
  }

  private static Inequality read(
      Inquiry inquiry,
      Set<String> names,
      Formula.Relation claim,
      Formula difference,
      boolean strict,
      Optional<NumberDomain> domain,
      List<Formula.Relation> equations,
      Optional<Formula> apart)
      throws UnreadableException {
    if (names.isEmpty() || names.size() > MOST_LETTERS) {
      throw refused(
          inquiry,
          "There are %d letters; between 1 and %d are worked with."
              .formatted(names.size(), MOST_LETTERS));
    }
    if (domain
        .filter(one -> one == NumberDomain.COMPLEX || one == NumberDomain.NEGATIVE)
        .isPresent()) {
      throw refused(inquiry, "Inequalities are worked for real or positive numbers.");
    }
    if (equations.size() > 1
        || (equations.size() == 1
            && (equations.get(0).sides().size() != 2
                || equations.get(0).comparisons().get(0) != Formula.Comparison.EQUAL))) {
      throw refused(inquiry, "At most one equation is worked with beside an inequality.");
    }
    List<String> letters = List.copyOf(names);
    Optional<Map.Entry<String, RationalFunction>> solved = Optional.empty();
    if (!equations.isEmpty()) {
      solved = Optional.of(solved(inquiry, equations.get(0), letters));
    }
    return new Inequality(
        letters,
        claim,
        difference,
        strict,
        domain,
        solved,
        equations.stream().<Formula>map(one -> one).findFirst(),
        apart);
  }

  /** “b > 0”. */
  private static boolean isPositivity(Formula.Relation relation) {
    return relation.sides().size() == 2
        && relation.comparisons().get(0) == Formula.Comparison.GREATER
        && relation.sides().get(1).equals(Formula.number(0));
  }

  private static Map.Entry<String, RationalFunction> solved(
      Inquiry inquiry, Formula.Relation equation, List<String> letters) throws UnreadableException {
    Map<String, Integer> numbers = numbers(letters);
    RationalFunction difference =
        FormulaExpansion.expand(equation.sides().get(0).minus(equation.sides().get(1)), numbers);
    MultivariatePolynomial polynomial = difference.numerator();
    for (int k = letters.size() - 1; k >= 0; k--) {
      List<MultivariatePolynomial> parts = polynomial.coefficientsIn(k);
      if (parts.size() == 2 && parts.get(1).isConstant()) {
        return Map.entry(letters.get(k), new RationalFunction(parts.get(0).negate(), parts.get(1)));
      }
    }
    throw refused(inquiry, "The equation should be linear in one of the letters.");
  }

  static Map<String, Integer> numbers(List<String> letters) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    letters.forEach(letter -> numbers.put(letter, numbers.size()));
    return numbers;
  }

  private static UnreadableException refused(Inquiry inquiry, String sentence) {
    return new UnreadableException(
        new Refusal(
            "unsupported",
            sentence,
            inquiry.statement().find(),
            0,
            "such as “prove a^2 + b^2 >= 2ab if a, b real”",
            ""));
  }
}
