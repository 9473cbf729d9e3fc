package rootwright.composing.blueprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.composing.family.Families;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;

/**
 * An ask made ready for the scan.
 *
 * @param pattern the ask on a polynomial without special properties, by which names and form are
 *     settled
 * @param kind the name of the kind of ask
 * @param expression the ask as a function of the coefficients; a constant if it is none
 * @param isValue whether the expression is the answer, so that the scan can look for answers
 */
record CompiledAsk(Problem pattern, String kind, CompiledExpression expression, boolean isValue)
    implements OrderedAsk {

  @Override
  public Draw lot(Blueprint blueprint, Judge judge, int kept, long seed) {
    return Draw.of(this, blueprint, judge, kept, seed);
  }

  /**
   * Reads and compiles an ask.
   *
   * @throws UnreadableException if it cannot be read
   * @throws ContradictoryBlueprintException if it has no single answer, whatever the polynomial
   */
  static CompiledAsk of(String text, int degree, Kinds kinds) throws UnreadableException {
    Polynomial general =
        Polynomial.monomial(Rational.ONE, degree).minus(Polynomial.X).minus(Polynomial.ONE);
    Problem pattern =
        ProblemReader.read(
            Statement.of(PlainWriter.write(PolynomialFormula.of(general, "x")), text));
    String kind = kinds.nameFor(pattern);
    if (!kind.equals(Families.VALUE)) {
      return new CompiledAsk(
          pattern, kind, CompiledExpression.of(degree, MultivariatePolynomial.ONE), false);
    }
    Asked asked = AskedReader.read(pattern);
    Optional<SymmetricQuotient> quotient = asked.quotient();
    if (quotient.isEmpty()) {
      throw new ContradictoryBlueprintException(
          List.of(
              "the ask is not symmetric in the roots, or too long to compile, so its answer is no"
                  + " expression in the coefficients; ask for a sum over all roots, or for"
                  + " resolvent( … )"));
    }
    return new CompiledAsk(
        pattern,
        kind,
        CompiledExpression.of(
            degree,
            quotient.get().numerator().toElementary().polynomial(),
            quotient.get().denominator().toElementary().polynomial()),
        true);
  }

  /** What the order wishes and this ask can never give, one sentence each. */
  List<String> contradictions(Blueprint blueprint) {
    List<String> found = new ArrayList<>();
    AnswerWish wish = blueprint.answer();
    if (isValue) {
      evenPowers(blueprint, found);
      constant()
          .filter(value -> !wish.holds(value))
          .ifPresent(
              value ->
                  found.add(
                      "the answer is %s for every polynomial, which is not the answer wished, “%s”"
                          .formatted(value, wish.text())));
      if (found.isEmpty() && isWholeForMonic() && blueprint.polynomial().isMonic()) {
        if (wish instanceof AnswerWish.Wanted wanted && !wanted.number().isInteger()) {
          found.add("with lead 1 the answer is a whole number, so it cannot be " + wanted.number());
        }
      }
    } else if (kind.equals("roots") && !(wish instanceof AnswerWish.Any)) {
      rationalRoots(blueprint.polynomial().roots(), wish, found);
    } else if (wish instanceof AnswerWish.Wanted && givesPolynomial()) {
      found.add(
          "an answer that is a polynomial cannot be the number wished, “%s”"
              .formatted(wish.text()));
    } else if (wish instanceof AnswerWish.Wanted wanted && kind.equals("real-roots")) {
      int degree = pattern.degree();
      if (!wanted.number().isInteger()
          || wanted.number().signum() < 0
          || wanted.number().compareTo(Rational.of(degree)) > 0) {
        found.add(
            "a polynomial of degree %d cannot have %s real roots"
                .formatted(degree, wanted.number()));
      }
    }
    return found;
  }

  /** Real numbers have no negative even powers. */
  private void evenPowers(Blueprint blueprint, List<String> found) {
    boolean allReal =
        blueprint.polynomial().real() instanceof RealWish.All
            || (blueprint.polynomial().real() instanceof RealWish.Exactly exactly
                && exactly.count() == pattern.degree());
    boolean even =
        AskedReader.read(pattern).powerSumIndex().filter(index -> index % 2 == 0).isPresent();
    boolean negative =
        (blueprint.answer() instanceof AnswerWish.Wanted wanted && wanted.number().signum() < 0)
            || (blueprint.answer() instanceof AnswerWish.Between between && between.high() < 0);
    if (allReal && even && negative) {
      found.add(
          "with all roots real a sum of even powers is not negative, so it cannot be as wished, “%s”"
              .formatted(blueprint.answer().text()));
    }
  }

  /** A wish about the numbers that are the roots is a wish for rational roots. */
  private static void rationalRoots(RootsWish roots, AnswerWish wish, List<String> found) {
    if (roots == RootsWish.IRREDUCIBLE) {
      found.add("an irreducible polynomial cannot have a rational root wanted here");
    } else if (roots.forbidsRationalRoots()) {
      found.add(
          "the roots are the answer, and “%s” wishes for rational ones, which are not allowed here; wish"
                  .formatted(wish.text())
              + " for any answer, or for any roots");
    }
  }

  private boolean givesPolynomial() {
    return kind.equals("polynomial-with-roots")
        || kind.equals("resolvent")
        || kind.equals("reduce");
  }

  private Optional<Rational> constant() {
    MultivariatePolynomial above = expression.numerator().polynomial();
    MultivariatePolynomial below = expression.denominator().polynomial();
    long[] ones = new long[pattern.degree() + 1];
    Arrays.fill(ones, 1);
    return above.degree() <= 0 && below.degree() <= 0 ? expression.valueAt(ones) : Optional.empty();
  }

  /** Whether the denominator is a power of the lead, so that lead 1 gives a whole number. */
  private boolean isWholeForMonic() {
    return expression.isAlwaysDefined()
        && expression.denominator().polynomial().terms().values().stream()
            .allMatch(coefficient -> coefficient.absolute().numerator().equals(BigInteger.ONE));
  }

  /** The ask of another polynomial. */
  Problem on(Polynomial polynomial) {
    Formula written = PolynomialFormula.of(polynomial, pattern.unknown());
    return new Problem(
        polynomial, written, pattern.unknown(), pattern.roots(), pattern.ask(), List.of());
  }
}
