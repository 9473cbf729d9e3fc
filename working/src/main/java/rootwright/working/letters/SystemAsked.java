package rootwright.working.letters;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.step.Claim;
import rootwright.working.step.NumberDomain;

/**
 * Several letters that are to be found together.
 *
 * @param problem the problem
 * @param equations what the conditions say of the letters
 * @param system their numerators
 * @param rows all solutions, a value for every letter
 * @param kept those that the other conditions leave
 * @param reasons why the others are thrown out
 */
record SystemAsked(
    LetteredProblem problem,
    List<LetterEquation> equations,
    List<MultivariatePolynomial> system,
    List<List<Rational>> rows,
    List<List<Rational>> kept,
    List<String> reasons) {

  SystemAsked {
    equations = List.copyOf(equations);
    system = List.copyOf(system);
    rows = List.copyOf(rows);
    kept = List.copyOf(kept);
    reasons = List.copyOf(reasons);
  }

  static SystemAsked of(LetteredProblem problem) {
    List<LetterEquation> equations = new LetterEquations(problem).all();
    int n = problem.polynomial().letters().size();
    List<MultivariatePolynomial> system = new ArrayList<>();
    for (LetterEquation equation : equations) {
      List<MultivariatePolynomial> parts =
          equation.shape() == LetterEquation.Shape.JOINT
              ? equation.value().numerator().coefficientsIn(n + 1)
              : List.of(equation.value().numerator());
      parts.stream().filter(part -> !part.isZero()).forEach(system::add);
    }
    List<List<Rational>> rows = new ArrayList<>(solve(system, n));
    List<List<Rational>> kept = new ArrayList<>();
    List<String> reasons = new ArrayList<>();
    for (List<Rational> row : rows) {
      Optional<String> objection = objection(problem, row);
      if (objection.isPresent()) {
        reasons.add(objection.get());
      } else {
        kept.add(row);
      }
    }
    return new SystemAsked(problem, equations, system, rows, kept, reasons);
  }

  private static Optional<String> objection(LetteredProblem problem, List<Rational> row) {
    List<String> letters = problem.polynomial().letters();
    Map<String, Rational> numbers = new TreeMap<>();
    List<String> here = new ArrayList<>();
    for (int k = 0; k < row.size(); k++) {
      numbers.put(letters.get(k), row.get(k));
      here.add(
          "%s = %s".formatted(letters.get(k), LetterSolution.text(new RationalValue(row.get(k)))));
      NumberDomain domain = problem.domain(letters.get(k)).orElse(NumberDomain.REAL);
      if (!domain.contains(new RationalValue(row.get(k)))) {
        return Optional.of("%s is not %s".formatted(here.get(k), LetterDomainWords.one(domain)));
      }
    }
    String words = String.join(", ", here);
    Polynomial special = problem.polynomial().at(numbers);
    if (special.degree() < problem.polynomial().degree()) {
      return Optional.of("for %s the lead coefficient is 0".formatted(words));
    }
    List<ExactValue> roots = ExactValues.rootsOf(special).stream().map(ExactRoot::value).toList();
    return RootsJudged.objection(problem, roots, words);
  }

  private static List<List<Rational>> solve(List<MultivariatePolynomial> system, int letters) {
    boolean linear = system.stream().allMatch(equation -> equation.degree() <= 1);
    if (linear) {
      return linear(system, letters);
    } else if (letters != 2) {
      throw new BeyondLettersException(
          "more than two letters are found from linear equations only");
    }
    return inTwo(system);
  }

  /** Gauss and Jordan. */
  private static List<List<Rational>> linear(List<MultivariatePolynomial> system, int letters) {
    List<MultivariatePolynomial> rest = new ArrayList<>(system);
    Map<Integer, MultivariatePolynomial> solved = new TreeMap<>();
    while (!rest.isEmpty()) {
      MultivariatePolynomial equation = rest.remove(0);
      int letter = 1;
      while (letter <= letters && equation.degreeIn(letter) == 0) {
        letter++;
      }
      if (letter > letters) {
        if (!equation.isZero()) {
          return List.of();
        }
        continue;
      }
      Rational lead = equation.coefficient(Monomial.power(letter, 1));
      MultivariatePolynomial image =
          MultivariatePolynomial.unknown(letter).minus(equation.times(lead.reciprocal()));
      int chosen = letter;
      rest.replaceAll(other -> put(other, chosen, image, letters));
      solved.replaceAll((other, value) -> put(value, chosen, image, letters));
      solved.put(letter, image);
    }
    List<Rational> row = new ArrayList<>();
    for (int k = 1; k <= letters; k++) {
      MultivariatePolynomial value = solved.getOrDefault(k, MultivariatePolynomial.unknown(k));
      if (!value.isConstant()) {
        throw new BeyondLettersException(
            "the conditions leave a letter open; give as many as there are letters");
      }
      row.add(value.coefficient(Monomial.ONE));
    }
    return List.of(row);
  }

  private static MultivariatePolynomial put(
      MultivariatePolynomial into, int letter, MultivariatePolynomial image, int letters) {
    List<MultivariatePolynomial> images = new ArrayList<>();
    for (int k = 0; k <= letters; k++) {
      images.add(k == letter ? image : MultivariatePolynomial.unknown(k));
    }
    return into.substitute(images);
  }

  /** One equation gives one letter by the other; put into the rest it leaves one letter. */
  private static List<List<Rational>> inTwo(List<MultivariatePolynomial> system) {
    for (MultivariatePolynomial equation : system) {
      for (int letter = 1; letter <= 2; letter++) {
        List<MultivariatePolynomial> parts = equation.coefficientsIn(letter);
        if (parts.size() == 2 && parts.get(1).isConstant()) {
          return substituted(system, equation, letter, parts);
        }
      }
    }
    throw new BeyondLettersException(
        "two letters are found where a condition gives one of them by the other");
  }

  private static List<List<Rational>> substituted(
      List<MultivariatePolynomial> system,
      MultivariatePolynomial used,
      int letter,
      List<MultivariatePolynomial> parts) {
    int other = 3 - letter;
    Rational lead = parts.get(1).coefficient(Monomial.ONE);
    MultivariatePolynomial image = parts.get(0).times(lead.reciprocal().negate());
    Polynomial common = Polynomial.ZERO;
    for (MultivariatePolynomial equation : system) {
      if (!equation.equals(used)) {
        Polynomial left = InLetters.inOne(put(equation, letter, image, 2), other);
        common = common.isZero() ? left : left.isZero() ? common : common.gcd(left);
      }
    }
    if (common.isZero()) {
      throw new BeyondLettersException(
          "the conditions leave a letter open; give as many as there are letters");
    }
    Set<List<Rational>> rows = new HashSet<>();
    List<List<Rational>> ordered = new ArrayList<>();
    if (common.degree() < 1) {
      return ordered;
    }
    for (IrreducibleFactor factor : Factorisation.of(common).factors()) {
      if (factor.polynomial().degree() > 1) {
        throw new BeyondLettersException(
            "several letters are found where all their values are rational");
      }
      Rational value = factor.polynomial().coefficient(0).over(factor.polynomial().lead()).negate();
      Rational first = InLetters.inOne(image, other).at(value);
      List<Rational> row = letter == 1 ? List.of(first, value) : List.of(value, first);
      if (rows.add(row)) {
        ordered.add(row);
      }
    }
    ordered.sort(
        Comparator.<List<Rational>, Rational>comparing(row -> row.get(0))
            .thenComparing(row -> row.get(1)));
    return ordered;
  }

  /** The claim that the rows are all solutions. */
  Claim claim() {
    return new Claim.SystemSolutions(problem.polynomial().letters().size(), system, rows);
  }

  /** The rows that are kept, in words of an answer. */
  Answer answer() {
    return new Answer.Items(kept.stream().map(this::shown).toList());
  }

  /** {@code a = -3, b = 2}. */
  Formula shown(List<Rational> row) {
    List<Formula> equations = new ArrayList<>();
    for (int k = 0; k < row.size(); k++) {
      equations.add(
          Formula.equation(
              Formula.name(problem.polynomial().letters().get(k)), Formula.number(row.get(k))));
    }
    return new Formula.Listing(equations);
  }
}
