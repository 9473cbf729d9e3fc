package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.LetterInterval;
import rootwright.working.step.NumberDomain;

/**
 * The real values of the one letter at which the roots are as the conditions say.
 *
 * @param discriminant the discriminant as a polynomial in the letter
 * @param boundaries the polynomial in the letter outside whose real roots nothing changes
 * @param ends its real roots, ascending
 * @param counts the number of distinct roots in the domain below, between and above them
 * @param pieces the intervals that belong, ascending and apart
 * @param leadZeros the ends at which the lead coefficient is zero
 */
record LetterRegion(
    Polynomial discriminant,
    Polynomial boundaries,
    List<ExactValue> ends,
    List<Integer> counts,
    List<LetterInterval> pieces,
    List<ExactValue> leadZeros) {

  LetterRegion {
    ends = List.copyOf(ends);
    counts = List.copyOf(counts);
    pieces = List.copyOf(pieces);
    leadZeros = List.copyOf(leadZeros);
  }

  /** Finds the region for a problem with one letter. */
  static LetterRegion of(LetteredProblem problem) {
    LetteredPolynomial polynomial = problem.polynomial();
    Polynomial lead = InLetters.inOne(polynomial.lead(), 1);
    Polynomial discriminant = discriminant(polynomial, lead);
    if (discriminant.isZero()) {
      throw new BeyondLettersException("a root is repeated whatever the letter is");
    }
    NumberDomain domain = domain(problem);
    Polynomial boundaries = lead.times(discriminant);
    if (domain != NumberDomain.REAL) {
      boundaries = boundaries.times(InLetters.inOne(polynomial.coefficient(0), 1));
    }
    if (boundaries.isZero()) {
      throw new BeyondLettersException("0 is a root whatever the letter is");
    }
    Polynomial cuts = boundaries;
    String letter = polynomial.letters().get(0);
    for (Condition.LetterBound bound : problem.conditions(Condition.LetterBound.class)) {
      List<Formula> sides = bound.relation().sides();
      for (int k = 1; k < sides.size(); k++) {
        Polynomial side = BoundAt.difference(sides.get(k - 1).minus(sides.get(k)), letter);
        cuts = side.isZero() ? cuts : cuts.times(side);
      }
    }
    List<ExactValue> ends =
        cuts.degree() < 1
            ? List.of()
            : ExactValues.rootsOf(cuts).stream()
                .map(ExactRoot::value)
                .filter(ExactValue::isReal)
                .toList();
    List<Integer> counts = new ArrayList<>();
    List<Boolean> open = new ArrayList<>();
    for (Rational sample : samples(ends)) {
      List<ExactValue> roots = new NumberAt(polynomial, new RationalValue(sample)).distinctRoots();
      counts.add((int) roots.stream().filter(domain::contains).count());
      open.add(belongs(problem, new RationalValue(sample), letter));
    }
    List<Boolean> closed = ends.stream().map(end -> belongs(problem, end, letter)).toList();
    List<ExactValue> leadZeros = ends.stream().filter(end -> NumberAt.isZero(lead, end)).toList();
    return new LetterRegion(
        discriminant, cuts, ends, counts, pieces(ends, open, closed), leadZeros);
  }

  /** Where roots are counted. */
  static NumberDomain domain(LetteredProblem problem) {
    NumberDomain domain = JudgedLines.domain(problem).orElse(NumberDomain.REAL);
    if (domain != NumberDomain.REAL
        && domain != NumberDomain.POSITIVE
        && domain != NumberDomain.NEGATIVE) {
      throw new BeyondLettersException(
          "which letters give %s for roots is a question about divisors, not about intervals"
              .formatted(domain.words()));
    }
    return domain;
  }

  private static boolean belongs(LetteredProblem problem, ExactValue value, String letter) {
    NumberAt at = new NumberAt(problem.polynomial(), value);
    boolean counted = !problem.conditions(Condition.RealCount.class).isEmpty();
    if (at.leadVanishes() && (!counted || at.rational().isEmpty())) {
      return false;
    }
    Optional<Polynomial> special = at.rational();
    if (special.isPresent() && special.get().isZero()) {
      return false;
    }
    return problem.domain(letter).orElse(NumberDomain.REAL).contains(value)
        && problem.conditions(Condition.LetterBound.class).stream()
            .allMatch(bound -> BoundAt.holds(bound.relation(), letter, value))
        && RootsJudged.objection(problem, at.distinctRoots(), "").isEmpty();
  }

  private static Polynomial discriminant(LetteredPolynomial polynomial, Polynomial lead) {
    int n = polynomial.degree();
    if (n < 2) {
      return Polynomial.ONE;
    }
    String letter = polynomial.letters().get(0);
    int degree = (2 * n - 2) * polynomial.polynomial().degreeIn(1);
    Polynomial sum = Polynomial.ZERO;
    Polynomial vanishing = Polynomial.ONE;
    int found = 0;
    for (int point = 0; found <= degree; point++) {
      Rational k = Rational.of(point);
      if (lead.at(k).isZero()) {
        continue;
      }
      Rational value = Discriminant.of(polynomial.at(Map.of(letter, k)));
      sum = sum.plus(vanishing.times(value.minus(sum.at(k)).over(vanishing.at(k))));
      vanishing = vanishing.times(Polynomial.withRoots(List.of(k)));
      found++;
    }
    return sum;
  }

  /** One rational number below, between and above the ends. */
  private static List<Rational> samples(List<ExactValue> ends) {
    if (ends.isEmpty()) {
      return List.of(Rational.ZERO);
    }
    List<Rational> samples = new ArrayList<>();
    samples.add(Rational.of(low(ends.get(0), 20).floor()).minus(Rational.ONE));
    for (int k = 1; k < ends.size(); k++) {
      samples.add(between(ends.get(k - 1), ends.get(k)));
    }
    samples.add(Rational.of(high(ends.get(ends.size() - 1), 20).floor()).plus(Rational.TWO));
    return samples;
  }

  private static Rational between(ExactValue one, ExactValue other) {
    for (int digits = 20; ; digits *= 2) {
      Rational low = high(one, digits);
      Rational high = low(other, digits);
      if (low.compareTo(high) < 0) {
        return low.plus(high).over(Rational.TWO);
      }
    }
  }

  private static Rational low(ExactValue value, int digits) {
    return value.enclosure(digits).real().low().toRational();
  }

  private static Rational high(ExactValue value, int digits) {
    return value.enclosure(digits).real().high().toRational();
  }

  /** Neighbouring cells that belong, joined. */
  private static List<LetterInterval> pieces(
      List<ExactValue> ends, List<Boolean> open, List<Boolean> closed) {
    List<LetterInterval> pieces = new ArrayList<>();
    int k = 0;
    while (k < open.size()) {
      if (open.get(k)) {
        int last = k;
        while (last < ends.size() && closed.get(last) && open.get(last + 1)) {
          last++;
        }
        boolean lowIn = k > 0 && closed.get(k - 1);
        boolean highIn = last < ends.size() && closed.get(last);
        pieces.add(
            new LetterInterval(
                k > 0 ? Optional.of(ends.get(k - 1)) : Optional.empty(),
                lowIn,
                last < ends.size() ? Optional.of(ends.get(last)) : Optional.empty(),
                highIn));
        k = last + 1;
      } else {
        boolean next = k + 1 < open.size() && open.get(k + 1);
        if (k < ends.size() && closed.get(k) && !next) {
          pieces.add(LetterInterval.point(ends.get(k)));
        }
        k++;
      }
    }
    return pieces;
  }

  /** Whether only single values belong. */
  boolean isFinite() {
    return pieces.stream().allMatch(LetterInterval::isPoint);
  }

  /** The single values, if only such belong. */
  List<ExactValue> points() {
    return pieces.stream().map(LetterInterval::low).flatMap(Optional::stream).toList();
  }
}
