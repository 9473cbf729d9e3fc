package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.Claim;
import rootwright.working.step.LetterInterval;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.RootPlace;

/**
 * The real values of the one letter at which the roots are as the conditions say.
 *
 * @param discriminant the discriminant as a polynomial in the letter
 * @param boundaries the polynomial in the letter outside whose real roots nothing changes
 * @param ends its real roots, ascending
 * @param places where roots are counted
 * @param counts for each place the number of distinct roots there below, between and above the ends
 * @param pieces the intervals that belong, ascending and apart
 * @param leadZeros the ends at which the lead coefficient is zero
 */
record LetterRegion(
    Polynomial discriminant,
    Polynomial boundaries,
    List<ExactValue> ends,
    List<RootPlace> places,
    List<List<Integer>> counts,
    List<LetterInterval> pieces,
    List<ExactValue> leadZeros) {

  LetterRegion {
    ends = List.copyOf(ends);
    places = List.copyOf(places);
    counts = counts.stream().map(List::copyOf).toList();
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
    List<RootPlace> places = places(problem);
    Polynomial boundaries = lead.times(discriminant);
    for (Rational end :
        places.stream().flatMap(place -> place.ends().stream()).distinct().toList()) {
      Polynomial value = polynomial.valueAt(end);
      // Where the end is a root always, another root can pass it only by meeting it.
      boundaries = value.isZero() ? boundaries : boundaries.times(value);
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
    if (range(problem, letter) != NumberDomain.REAL) {
      cuts = cuts.times(Polynomial.X);
    }
    List<ExactValue> ends = realZeros(cuts);
    List<List<Integer>> counts = new ArrayList<>();
    places.forEach(place -> counts.add(new ArrayList<>()));
    List<Boolean> open = new ArrayList<>();
    for (Rational sample : samples(ends)) {
      List<ExactValue> roots = new NumberAt(polynomial, new RationalValue(sample)).distinctRoots();
      for (int k = 0; k < places.size(); k++) {
        counts.get(k).add((int) roots.stream().filter(places.get(k)::contains).count());
      }
      open.add(belongs(problem, new RationalValue(sample), letter));
    }
    List<Boolean> closed = ends.stream().map(end -> belongs(problem, end, letter)).toList();
    List<ExactValue> leadZeros = ends.stream().filter(end -> NumberAt.isZero(lead, end)).toList();
    return new LetterRegion(
        discriminant, cuts, ends, places, counts, pieces(ends, open, closed), leadZeros);
  }

  /** The places where roots are counted. */
  private static List<RootPlace> places(LetteredProblem problem) {
    List<RootPlace> places = new ArrayList<>();
    for (Condition.AllRoots all : problem.conditions(Condition.AllRoots.class)) {
      places.add(
          switch (all.nature()) {
            case REAL, DISTINCT -> RootPlace.REAL;
            case POSITIVE -> RootPlace.POSITIVE;
            case NEGATIVE -> RootPlace.NEGATIVE;
            default ->
                throw new BeyondLettersException(
                    "which letters give %s for roots is a question about divisors, not about intervals"
                        .formatted(all.nature().domain().words()));
          });
    }
    if (!problem.conditions(Condition.RealCount.class).isEmpty()) {
      places.add(RootPlace.REAL);
    }
    places.addAll(JudgedLines.places(problem));
    List<RootPlace> distinct = places.stream().distinct().toList();
    boolean narrower = distinct.stream().anyMatch(place -> !place.equals(RootPlace.REAL));
    boolean allThere = problem.says(RootNature.REAL) || problem.says(RootNature.DISTINCT);
    return narrower && allThere
        ? distinct.stream().filter(place -> !place.equals(RootPlace.REAL)).toList()
        : distinct;
  }

  /** The real zeros of a polynomial, ascending. */
  private static List<ExactValue> realZeros(Polynomial polynomial) {
    return polynomial.degree() < 1
        ? List.of()
        : ExactValues.rootsOf(polynomial).stream()
            .map(ExactRoot::value)
            .filter(ExactValue::isReal)
            .toList();
  }

  /** The real numbers at which a polynomial, not 0, has a sign that the predicate accepts. */
  static List<LetterInterval> whereSign(Polynomial function, IntPredicate accepted) {
    List<ExactValue> ends = realZeros(function);
    List<Boolean> open =
        samples(ends).stream().map(sample -> accepted.test(function.at(sample).signum())).toList();
    List<Boolean> closed = ends.stream().map(end -> accepted.test(0)).toList();
    return pieces(ends, open, closed);
  }

  /** The real numbers at which all these inequalities hold. */
  static List<LetterInterval> whereAll(List<Claim.SignOn> inequalities) {
    Polynomial cuts =
        inequalities.stream().map(Claim.SignOn::function).reduce(Polynomial.ONE, Polynomial::times);
    List<ExactValue> ends = realZeros(cuts);
    List<Boolean> open =
        samples(ends).stream()
            .map(
                sample ->
                    inequalities.stream()
                        .allMatch(one -> one.holdsFor(one.function().at(sample).signum())))
            .toList();
    List<Boolean> closed =
        ends.stream()
            .map(
                end ->
                    inequalities.stream().allMatch(one -> one.holdsFor(sign(one.function(), end))))
            .toList();
    return pieces(ends, open, closed);
  }

  private static int sign(Polynomial function, ExactValue at) {
    if (NumberAt.isZero(function, at)) {
      return 0;
    }
    // No zero of the function lies between the end and a number that is near enough.
    List<ExactValue> zeros = realZeros(function);
    long below = zeros.stream().filter(zero -> ExactValues.compareReal(zero, at) < 0).count();
    List<Rational> samples = samples(zeros);
    return function.at(samples.get((int) below)).signum();
  }

  /** The real numbers in which the letter ranges; whole numbers are sought among them later. */
  private static NumberDomain range(LetteredProblem problem, String letter) {
    return switch (problem.domain(letter).orElse(NumberDomain.REAL)) {
      case POSITIVE, POSITIVE_INTEGER -> NumberDomain.POSITIVE;
      case NEGATIVE -> NumberDomain.NEGATIVE;
      case COMPLEX, RATIONAL ->
          throw new BeyondLettersException("a region is worked for real or whole numbers only");
      default -> NumberDomain.REAL;
    };
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
    return range(problem, letter).contains(value)
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
