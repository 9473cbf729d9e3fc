package rootwright.working.fraction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.subject.Inquiry;

/**
 * Reads “partial fractions of (5x + 3)/(x² − 3x + 2)” and “A, B, C if (x + 3)/((x − 1)²(x + 2)) =
 * A/(x − 1) + B/(x − 1)² + C/(x + 2)”.
 */
final class FractionReader {

  private static final int HIGHEST_DEGREE = 8;
  private static final int LONGEST = 500;
  private static final String LETTERS = "ABCDEFGH";

  private static final Pattern WORDS =
      Pattern.compile(
          "(?:the )?partial fractions?(?: decomposition| expansion)?(?: (?:of|for) (?<of>.+))?"
              + "|(?:decompose|split|resolve|expand|write)(?: (?<what>.+?))?(?: (?:in|into|as)(?: a sum of)? partial fractions)",
          Pattern.CASE_INSENSITIVE);

  private FractionReader() {}

  /**
   * What was read.
   *
   * @param fractions the form with its letters
   * @param whole the fraction as it was written
   * @param ask what is asked of the letters; absent if the fractions themselves are
   * @param shape the form as it was written; absent if it was not given
   */
  record Read(
      ExplicitFractions fractions, Formula whole, Optional<Formula> ask, Optional<Formula> shape) {}

  static boolean isLike(Inquiry inquiry) {
    if (inquiry.ask().length() > LONGEST) {
      return false;
    }
    if (inquiry.conditions().isEmpty()) {
      return words(inquiry).isPresent();
    }
    return inquiry.conditions().size() == 1 && shape(inquiry).isPresent();
  }

  /** The fraction that is to be split, as typed. */
  private static Optional<String> words(Inquiry inquiry) {
    Matcher matcher = WORDS.matcher(inquiry.ask().strip().replaceAll("\\s+", " "));
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String of = matcher.group("of") != null ? matcher.group("of") : matcher.group("what");
    return of == null || of.matches("(?i)it|this|the fraction")
        ? Optional.of(inquiry.polynomial())
            .filter(text -> text.contains("/") || text.contains("frac"))
        : Optional.of(of);
  }

  /** The identity, if it is one in one small letter with capitals on one side. */
  private static Optional<Formula.Relation> shape(Inquiry inquiry) {
    String text = inquiry.conditions().get(0);
    if (!text.contains("=") || text.length() > LONGEST) {
      return Optional.empty();
    }
    try {
      if (!(FormulaReader.formula(text) instanceof Formula.Relation relation)
          || relation.sides().size() != 2
          || relation.comparisons().get(0) != Formula.Comparison.EQUAL) {
        return Optional.empty();
      }
      Set<String> right = capitals(relation.sides().get(1));
      Set<String> left = capitals(relation.sides().get(0));
      long small =
          FormulaNames.in(relation).stream()
              .filter(name -> Character.isLowerCase(name.charAt(0)))
              .count();
      boolean turned = right.isEmpty();
      Formula sum = relation.sides().get(turned ? 0 : 1);
      boolean fraction = sum.contains(part -> part instanceof Formula.Quotient);
      return small == 1 && right.isEmpty() != left.isEmpty() && fraction
          ? Optional.of(
              turned
                  ? new Formula.Relation(
                      List.of(relation.sides().get(1), relation.sides().get(0)),
                      relation.comparisons())
                  : relation)
          : Optional.empty();
    } catch (UnreadableException words) {
      return Optional.empty();
    }
  }

  private static Set<String> capitals(Formula formula) {
    Set<String> capitals = new TreeSet<>();
    FormulaNames.in(formula).stream()
        .filter(name -> Character.isUpperCase(name.charAt(0)))
        .forEach(capitals::add);
    return capitals;
  }

  static Read read(Inquiry inquiry) throws UnreadableException {
    if (inquiry.conditions().isEmpty()) {
      Formula whole = FormulaReader.formula(words(inquiry).orElseThrow());
      Set<String> names = FormulaNames.in(whole);
      if (names.size() != 1) {
        throw refused(inquiry, "A fraction in one letter is split.");
      }
      String x = names.iterator().next();
      RationalFunction function = function(whole, x);
      Polynomial above = inX(function, true);
      Polynomial below = inX(function, false);
      requireFraction(below, inquiry);
      return new Read(
          new ExplicitFractions(x, above, below, parts(below, x)),
          whole,
          Optional.empty(),
          Optional.empty());
    }
    Formula.Relation identity = shape(inquiry).orElseThrow();
    String x =
        FormulaNames.in(identity).stream()
            .filter(name -> Character.isLowerCase(name.charAt(0)))
            .findFirst()
            .orElseThrow();
    Formula whole = withPolynomial(identity.sides().get(0), inquiry, x);
    RationalFunction function = function(whole, x);
    Polynomial below = inX(function, false);
    requireFraction(below, inquiry);
    List<ExplicitFractions.Part> parts = new ArrayList<>();
    Formula sum = identity.sides().get(1);
    for (Formula term : sum instanceof Formula.Sum terms ? terms.terms() : List.of(sum)) {
      parts.add(part(term, x, below, inquiry));
    }
    return new Read(
        new ExplicitFractions(x, inX(function, true), below, parts),
        whole,
        Optional.of(FormulaReader.formula(inquiry.ask())),
        Optional.of(sum));
  }

  /** P(x) stands for the polynomial, where one is given. */
  private static Formula withPolynomial(Formula side, Inquiry inquiry, String x)
      throws UnreadableException {
    if (inquiry.polynomial().isEmpty()) {
      return side;
    }
    Formula polynomial = FormulaReader.formula(inquiry.polynomial().replaceAll("=\\s*0\\s*$", ""));
    return side.rewrite(
        part ->
            part.equals(new Formula.Application("P", List.of(Formula.name(x))))
                ? polynomial
                : part);
  }

  private static ExplicitFractions.Part part(
      Formula term, String x, Polynomial below, Inquiry inquiry) throws UnreadableException {
    if (!(term instanceof Formula.Quotient quotient)) {
      throw refused(inquiry, "Every term should be a letter, or Bx + C, over a factor.");
    }
    Polynomial denominator = FormulaExpansion.polynomial(quotient.under(), x);
    List<String> letters = new ArrayList<>();
    Formula above = quotient.over();
    for (Formula one : above instanceof Formula.Sum sum ? sum.terms() : List.of(above)) {
      Formula letter =
          one instanceof Formula.Product product && product.factors().size() == 2
              ? product.factors().get(0)
              : one;
      if (!(letter instanceof Formula.Name name)) {
        throw refused(inquiry, "Above a stroke a letter is expected, or Bx + C.");
      }
      letters.add(name.spelling());
    }
    ExplicitFractions.Part part =
        new ExplicitFractions.Part(letters, denominator, quotient.under());
    if (denominator.degree() < 1
        || !part.numerator(x).equals(above)
        || !below.remainder(denominator).isZero()) {
      throw refused(
          inquiry, "Below every stroke a factor of the denominator is expected, in powers.");
    }
    return part;
  }

  /** All powers of all irreducible factors. */
  static List<ExplicitFractions.Part> parts(Polynomial below, String x) {
    List<ExplicitFractions.Part> parts = new ArrayList<>();
    List<IrreducibleFactor> factors = new ArrayList<>(Factorisation.of(below).factors());
    factors.sort(
        Comparator.comparingInt((IrreducibleFactor one) -> one.polynomial().degree())
            .thenComparing(one -> root(one.polynomial()).absolute())
            .thenComparing(one -> root(one.polynomial())));
    int next = 0;
    for (IrreducibleFactor factor : factors) {
      Polynomial primitive = factor.polynomial().primitive();
      for (int power = 1; power <= factor.multiplicity(); power++) {
        List<String> letters = new ArrayList<>();
        for (int k = 0; k < primitive.degree(); k++) {
          letters.add(String.valueOf(LETTERS.charAt(next++)));
        }
        Formula written = PolynomialFormula.of(primitive, x);
        parts.add(
            new ExplicitFractions.Part(
                letters, primitive.power(power), power == 1 ? written : written.power(power)));
      }
    }
    return parts;
  }

  private static Rational root(Polynomial factor) {
    return factor.coefficient(0).over(factor.lead()).negate();
  }

  private static RationalFunction function(Formula whole, String x) throws UnreadableException {
    return FormulaExpansion.expand(whole, Map.of(x, 0));
  }

  private static Polynomial inX(RationalFunction function, boolean above) {
    var side = above ? function.numerator() : function.denominator();
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k <= side.degreeIn(0); k++) {
      ascending.add(side.coefficient(Monomial.power(0, k)));
    }
    return Polynomial.ofAscending(ascending);
  }

  private static void requireFraction(Polynomial below, Inquiry inquiry)
      throws UnreadableException {
    if (below.degree() < 1 || below.degree() > HIGHEST_DEGREE) {
      throw refused(
          inquiry,
          "The denominator has degree %d; 1 to %d are worked."
              .formatted(below.degree(), HIGHEST_DEGREE));
    }
  }

  private static UnreadableException refused(Inquiry inquiry, String sentence) {
    return new UnreadableException(
        new Refusal(
            "unsupported",
            sentence,
            inquiry.statement().find(),
            0,
            "such as “A, B if (x+3)/((x-1)(x+2)) = A/(x-1) + B/(x+2)”",
            ""));
  }
}
