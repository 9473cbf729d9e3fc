package rootwright.working.values;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.ReadFormula;
import rootwright.algebra.notation.Reading;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.algebra.symmetric.QuotientRecognition;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.working.check.exact.Expansion;
import rootwright.working.problem.Problem;
import rootwright.working.problem.WholeNumber;
import rootwright.working.subject.Conditions;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Quality;

/** Reads the conditions of an inquiry into symmetric values of numbers. */
final class DataReader {

  /** Most numbers that are worked with. */
  static final int MOST_NUMBERS = 6;

  /** Highest power, or index of a power sum, in what is given. */
  private static final int HIGHEST_GIVEN = 24;

  private static final List<String> USUAL = List.of("x", "y", "z", "u", "v", "w");

  private static final List<String> UNKNOWNS = List.of("t", "u", "v", "w", "T", "q");

  private final Inquiry inquiry;
  private final Conditions conditions;

  private DataReader(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.conditions = Conditions.of(inquiry);
  }

  /**
   * The data.
   *
   * @throws UnreadableException if a condition is no equation between symmetric expressions, or the
   *     numbers are too many or have no names
   */
  static SymmetricData read(Inquiry inquiry) throws UnreadableException {
    return new DataReader(inquiry).read();
  }

  private SymmetricData read() throws UnreadableException {
    List<Formula> relations = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    List<String> reading = new ArrayList<>();
    for (String text : conditions.formulas()) {
      ReadFormula read = FormulaReader.read(text);
      read.readings().stream().map(Reading::text).forEach(reading::add);
      if (isHigh(read.formula(), HIGHEST_GIVEN)) {
        throw refused(
            "too-large",
            "Given values are worked with up to power %d.".formatted(HIGHEST_GIVEN),
            text,
            "lower powers");
      }
      for (Formula pair : pairs(read.formula(), text)) {
        relations.add(pair);
        texts.add(text);
      }
    }
    List<String> names = names(relations);
    if (relations.stream().allMatch(relation -> FormulaNames.in(relation).isEmpty())
        && conditions.names().isEmpty()
        && inquiry.statement().roots().isEmpty()
        && names.equals(counted(relations))) {
      reading.add(
          "as %d values are given, %d numbers are meant: %s"
              .formatted(names.size(), names.size(), String.join(", ", names)));
    }
    Set<String> allowed = Set.copyOf(names);
    List<GivenValue> givens = new ArrayList<>();
    for (int k = 0; k < relations.size(); k++) {
      for (String name : FormulaNames.in(relations.get(k))) {
        if (!allowed.contains(name)) {
          throw refused(
              "unknown-letter",
              "The letter %s is not one of the numbers %s."
                  .formatted(name, String.join(", ", names)),
              texts.get(k),
              "one of " + String.join(", ", names));
        }
      }
      givens.add(given((Formula.Relation) relations.get(k), names, texts.get(k)));
    }
    return new SymmetricData(
        names,
        UNKNOWNS.stream().filter(letter -> !allowed.contains(letter)).findFirst().orElse("T"),
        conditions.domain(),
        conditions.qualities().contains(Quality.DISTINCT),
        givens,
        reading);
  }

  /** Whether a power, or an index of a family, is above a limit or no number. */
  static boolean isHigh(Formula formula, int highest) {
    Predicate<Formula> high =
        exponent ->
            WholeNumber.of(exponent)
                .map(k -> k.abs().compareTo(BigInteger.valueOf(highest)) > 0)
                .orElse(true);
    return formula.contains(
        part ->
            (part instanceof Formula.Power power && high.test(power.exponent()))
                || (part instanceof Formula.Family family && high.test(family.index())));
  }

  /** a = b = c gives a = b and b = c; where the last side is a number, all are compared with it. */
  private List<Formula> pairs(Formula formula, String text) throws UnreadableException {
    if (!(formula instanceof Formula.Relation relation)
        || relation.comparisons().stream().anyMatch(c -> c != Formula.Comparison.EQUAL)) {
      throw refused(
          "condition-unread",
          "“%s” is no equation; values are given by equations, and kinds of numbers in words."
              .formatted(text),
          text,
          "an equation such as x + y = 5, or words such as “x, y real”");
    }
    List<Formula> sides = relation.sides();
    Formula last = sides.get(sides.size() - 1);
    boolean number =
        FormulaNames.in(last).isEmpty() && !last.contains(Formula.Family.class::isInstance);
    List<Formula> pairs = new ArrayList<>();
    for (int k = 0; k + 1 < sides.size(); k++) {
      pairs.add(Formula.equation(sides.get(k), number ? last : sides.get(k + 1)));
    }
    return pairs;
  }

  private List<String> names(List<Formula> relations) throws UnreadableException {
    Set<String> names = new LinkedHashSet<>(inquiry.statement().roots());
    if (names.isEmpty()) {
      names.addAll(conditions.names());
    }
    if (names.isEmpty()) {
      relations.forEach(relation -> names.addAll(FormulaNames.in(relation)));
    }
    if (names.isEmpty()) {
      try {
        names.addAll(FormulaNames.in(FormulaReader.formula(inquiry.ask())));
      } catch (UnreadableException words) {
        names.clear();
      }
    }
    if (names.isEmpty()) {
      names.addAll(counted(relations));
    }
    if (names.isEmpty()) {
      throw refused(
          "no-names",
          "It is not said how many numbers there are.",
          inquiry.conditions().get(0),
          "their names, such as “, x, y, z” behind the conditions");
    } else if (names.size() > MOST_NUMBERS) {
      throw refused(
          "too-large",
          "There are %d numbers; at most %d are worked with.".formatted(names.size(), MOST_NUMBERS),
          inquiry.conditions().get(0),
          "fewer numbers");
    }
    return List.copyOf(names);
  }

  /**
   * Where only p_1, …, p_n or e_1, …, e_n are given, without a gap, n numbers are meant; so many
   * values fix them.
   */
  private List<String> counted(List<Formula> relations) {
    Set<BigInteger> indices = new TreeSet<>();
    for (Formula relation : relations) {
      relation.contains(
          part -> {
            if (part instanceof Formula.Family family) {
              WholeNumber.of(family.index()).ifPresent(indices::add);
            }
            return false;
          });
    }
    int n = indices.size();
    boolean gapless =
        n > 1
            && n <= USUAL.size()
            && indices.stream()
                .allMatch(
                    index -> index.signum() > 0 && index.compareTo(BigInteger.valueOf(n)) <= 0);
    return gapless ? USUAL.subList(0, n) : List.of();
  }

  private GivenValue given(Formula.Relation relation, List<String> names, String text)
      throws UnreadableException {
    Formula left = relation.sides().get(0);
    Formula right = relation.sides().get(1);
    Optional<Rational> number = constant(right, names);
    if (number.isEmpty() && constant(left, names).isPresent()) {
      Formula swapped = left;
      left = right;
      right = swapped;
      number = constant(right, names);
    }
    Formula shown = number.isPresent() ? left : left.minus(right);
    SymmetricQuotient quotient = quotient(shown, names, text);
    Rational value = number.orElse(Rational.ZERO);
    MultivariatePolynomial over = quotient.numerator().toElementary().polynomial();
    MultivariatePolynomial under = quotient.denominator().toElementary().polynomial();
    return under.isConstant()
        ? new GivenValue(
            relation,
            shown,
            over.times(under.coefficient(Monomial.ONE).reciprocal()),
            MultivariatePolynomial.ONE,
            value)
        : new GivenValue(relation, shown, over, under, value);
  }

  private static Optional<Rational> constant(Formula formula, List<String> names) {
    return Expansion.of(formula, formal(names, formula))
        .filter(value -> value.numerator().isConstant() && value.denominator().isConstant())
        .map(
            value ->
                value
                    .numerator()
                    .coefficient(Monomial.ONE)
                    .over(value.denominator().coefficient(Monomial.ONE)));
  }

  private SymmetricQuotient quotient(Formula formula, List<String> names, String text)
      throws UnreadableException {
    Optional<SymmetricQuotient> found = symmetric(formula, names);
    if (found.isEmpty()) {
      throw refused(
          "not-symmetric",
          "%s changes when two of the numbers are exchanged, or is too long; only symmetric values are worked with."
              .formatted(UnicodeWriter.write(formula)),
          text,
          "an expression that stays the same when the numbers change places");
    }
    return found.get();
  }

  /** The formula as a symmetric quotient in the numbers, if it is one. */
  static Optional<SymmetricQuotient> symmetric(Formula formula, List<String> names) {
    return Expansion.of(formula, formal(names, formula))
        .map(DataReader::lowest)
        .flatMap(
            function ->
                SymmetricQuotient.recognise(function, names.size())
                        instanceof QuotientRecognition.Symmetric symmetric
                    ? Optional.of(symmetric.quotient())
                    : Optional.empty());
  }

  private static RationalFunction lowest(RationalFunction function) {
    return function.isPolynomial() ? function : function.lowestTerms();
  }

  /** Only the number of roots matters where an expression is written out. */
  private static Problem formal(List<String> names, Formula ask) {
    return new Problem(
        Polynomial.monomial(Rational.ONE, names.size()),
        Formula.name("x").power(names.size()),
        "x",
        names,
        ask,
        List.of());
  }

  /** A refusal that points at a condition. */
  private UnreadableException refused(String code, String sentence, String text, String expected) {
    String find = inquiry.statement().find();
    int at = Math.max(0, find.indexOf(text));
    return new UnreadableException(
        new Refusal(code, sentence, find, find.codePointCount(0, at), expected, ""));
  }

  /** The product of the denominators that must not be zero, and of the distances if asked. */
  static MultivariatePolynomial mustNotVanish(SymmetricData data) {
    MultivariatePolynomial product = MultivariatePolynomial.ONE;
    for (GivenValue given : data.givens()) {
      if (given.isFraction()) {
        product = product.times(given.under());
      }
    }
    return data.distinct() && data.count() > 1
        ? product.times(Discriminant.universal(data.count()).polynomial())
        : product;
  }
}
