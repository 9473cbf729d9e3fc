package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;

/** Turns a worked problem into equations between unknowns. */
final class GroundReader {

  private static final List<String> ROOT_NAMES = List.of("r", "s", "t", "u", "v", "w");
  private static final List<String> FUNCTION_NAMES = List.of("P", "Q");
  private static final Pattern DEGREE = Pattern.compile("P has degree (\\d{1,2})");
  private static final String AREA = "A";
  private static final Set<String> OF_REAL_ROOTS =
      Set.of("sum-of-real-roots", "all-roots-real", "number-of-real-roots");

  /** How the coefficients are pointed to. */
  static final String COEFFICIENTS = "the coefficients";

  private static final String STATEMENT = "the statement";

  /** More roots than this are not entered as unknowns. */
  private static final int MOST_ROOTS = 5;

  private final Solution solution;
  private final Given given;
  private final Names names = new Names();
  private final List<Applied> polynomials = new ArrayList<>();
  private final List<Known> equations = new ArrayList<>();
  private final Set<String> words = new HashSet<>();
  private Formula find;

  private GroundReader(Solution solution) {
    this.solution = solution;
    this.given = solution.given();
    this.find = given.find();
  }

  /** What the working stands on; empty if the problem has too many roots for that. */
  static Optional<Ground> of(Solution solution) {
    return new GroundReader(solution).ground();
  }

  private Optional<Ground> ground() {
    List<Formula> stated =
        given.polynomial() instanceof Formula.Listing list
            ? list.items()
            : List.of(given.polynomial());
    List<List<String>> roots = roots(stated);
    if (roots.stream().anyMatch(list -> list.size() > MOST_ROOTS)) {
      return Optional.empty();
    }
    if (roots.stream().allMatch(List::isEmpty)) {
      given.roots().forEach(names::number);
    }
    roots.forEach(list -> list.forEach(names::number));
    if (!given.unknown().isEmpty()) {
      names.number(given.unknown());
    }
    for (int k = 0; k < stated.size(); k++) {
      read(stated.get(k), k < roots.size() ? roots.get(k) : List.of());
    }
    given.conditions().forEach(this::condition);
    data();
    FormulaNames.in(given.find()).forEach(this::letter);
    Writing writing = new Writing(names, polynomials);
    triangle(writing);
    described(writing);
    if (solution.kind().equals("disguised-equation") && isSolutions(given.find())) {
      find = Formula.name(given.unknown());
    }
    words.forEach(word -> inWords(word, writing));
    return Optional.of(
        new Ground(
            solution,
            names,
            polynomials,
            given.unknown(),
            find,
            equations,
            answered(writing),
            words));
  }

  private void letter(String name) {
    if (!names.isKnown(name)) {
      names.number(name);
    }
  }

  /** Names for all roots of each polynomial, those of the statement first. */
  private List<List<String>> roots(List<Formula> stated) {
    List<List<String>> all = new ArrayList<>();
    Set<String> taken = new HashSet<>(given.roots());
    stated.forEach(formula -> taken.addAll(FormulaNames.in(formula)));
    for (int k = 0; k < stated.size(); k++) {
      int degree = degree(stated.get(k));
      List<String> mine = new ArrayList<>();
      if (stated.size() == 1) {
        mine.addAll(given.roots().subList(0, Math.min(degree, given.roots().size())));
      } else if (k < given.roots().size() && degree > 0) {
        mine.add(given.roots().get(k));
      }
      if (OF_REAL_ROOTS.contains(solution.kind())) {
        // Only a few names are kept for roots, so that u can be used for something else.
        mine.subList(Math.min(3, mine.size()), mine.size()).clear();
      }
      List<String> free =
          stated.size() == 1
              ? ROOT_NAMES.stream().filter(name -> !taken.contains(name)).toList()
              : List.of();
      for (int j = mine.size(); j < degree; j++) {
        int at = j - mine.size();
        boolean named = mine.size() == j && given.roots().isEmpty() && j < free.size();
        mine.add(named ? free.get(j) : "root " + (at + j) + " of " + FUNCTION_NAMES.get(k % 2));
      }
      all.add(mine);
    }
    return all;
  }

  private int degree(Formula formula) {
    Names scratch = new Names();
    scratch.number(given.unknown());
    FormulaNames.in(formula).forEach(scratch::number);
    return given.unknown().isEmpty()
        ? 0
        : new Writing(scratch, List.of())
            .of(formula)
            .filter(f -> f.isPolynomial() && !(formula instanceof Formula.Relation))
            .map(f -> f.numerator().degreeIn(0))
            .orElse(0);
  }

  private void read(Formula formula, List<String> roots) {
    if (formula instanceof Formula.Relation relation) {
      condition(relation);
    } else if (!roots.isEmpty()) {
      FormulaNames.in(formula).forEach(this::letter);
      int x = names.number(given.unknown());
      new Writing(names, List.of())
          .of(formula)
          .map(f -> f.numerator().coefficientsIn(x))
          .ifPresent(ascending -> add(ascending, roots));
    }
  }

  private void add(List<MultivariatePolynomial> ascending, List<String> roots) {
    Applied applied = new Applied(FUNCTION_NAMES.get(polynomials.size() % 2), ascending, roots);
    polynomials.add(applied);
    if (isDerived()) {
      return;
    }
    List<MultivariatePolynomial> e = new ArrayList<>(List.of(MultivariatePolynomial.ONE));
    for (String root : roots) {
      MultivariatePolynomial r = MultivariatePolynomial.unknown(names.number(root));
      e.add(MultivariatePolynomial.ZERO);
      for (int j = e.size() - 1; j >= 1; j--) {
        e.set(j, e.get(j).plus(e.get(j - 1).times(r)));
      }
    }
    int n = applied.degree();
    for (int k = 1; k <= n; k++) {
      MultivariatePolynomial left = applied.lead().times(e.get(k));
      MultivariatePolynomial right = ascending.get(n - k);
      equations.add(
          new Known(k % 2 == 0 ? left.minus(right) : left.plus(right), COEFFICIENTS, true));
    }
    for (String root : roots) {
      MultivariatePolynomial r = MultivariatePolynomial.unknown(names.number(root));
      equations.add(
          new Known(
              applied.at(r),
              root.contains(" ") ? COEFFICIENTS : "P(%s) = 0".formatted(root),
              true));
    }
  }

  /** Whether the polynomial was found from the conditions, so that it is not given itself. */
  private boolean isDerived() {
    List<String> letters = new ArrayList<>(given.roots());
    return !given.roots().isEmpty()
        && given.conditions().stream().anyMatch(c -> c instanceof Formula.Relation)
        && FormulaNames.in(given.polynomial()).stream().allMatch(given.unknown()::equals)
        && given.conditions().stream()
            .flatMap(c -> FormulaNames.in(c).stream())
            .allMatch(letters::contains);
  }

  private void condition(Formula condition) {
    boolean equation =
        condition instanceof Formula.Relation relation
            && relation.comparisons().stream().allMatch(c -> c == Formula.Comparison.EQUAL);
    if (!equation) {
      words.add(PlainWriter.write(condition).toLowerCase(Locale.ROOT));
      return;
    }
    FormulaNames.in(condition).forEach(this::letter);
    List<Formula> sides = ((Formula.Relation) condition).sides();
    for (int k = 1; k < sides.size(); k++) {
      new Writing(names, polynomials)
          .difference(sides.get(k - 1), sides.get(k))
          .ifPresent(zero -> equations.add(new Known(zero, STATEMENT, true)));
    }
  }

  /** A polynomial of which only its degree and values are given has unknown coefficients. */
  private void data() {
    Optional<Integer> degree =
        given.conditions().stream()
            .map(PlainWriter::write)
            .map(DEGREE::matcher)
            .filter(Matcher::find)
            .map(found -> Integer.valueOf(found.group(1)))
            .findFirst();
    if (degree.isEmpty() || !polynomials.isEmpty()) {
      return;
    }
    List<MultivariatePolynomial> ascending = new ArrayList<>();
    for (int k = 0; k <= degree.get(); k++) {
      ascending.add(MultivariatePolynomial.unknown(names.number("coefficient " + k)));
    }
    if (words.contains("p is monic")) {
      ascending.set(degree.get(), MultivariatePolynomial.ONE);
    }
    names.number("x");
    polynomials.add(new Applied("P", ascending, List.of()));
    given.conditions().forEach(this::condition);
  }

  /** Words that are equations between roots, once the roots are named as it suits. */
  private void inWords(String word, Writing writing) {
    List<String> roots = polynomials.isEmpty() ? List.of() : polynomials.get(0).roots();
    if (word.contains("repeated root") && roots.size() >= 2) {
      equation(writing, Formula.name(roots.get(0)), Formula.name(roots.get(1)));
      equation(writing, Formula.name(given.unknown()), Formula.name(roots.get(0)));
    } else if (word.contains("share")) {
      for (Applied polynomial : polynomials) {
        equation(
            writing,
            new Formula.Application(polynomial.name(), List.of(Formula.name(given.unknown()))),
            Formula.number(0));
      }
    } else if (word.contains("progression") && roots.size() == 3) {
      Formula first = Formula.name(roots.get(0));
      Formula middle = Formula.name(roots.get(1));
      Formula last = Formula.name(roots.get(2));
      if (word.contains("arithmetic")) {
        equation(writing, first.plus(last), middle.times(Formula.number(2)));
      } else if (word.contains("geometric")) {
        equation(writing, first.times(last), middle.power(2));
      }
    }
  }

  /** The area of a triangle is A: 16A² = (r + s + t)(−r + s + t)(r − s + t)(r + s − t) (Heron). */
  private void triangle(Writing writing) {
    if (!solution.kind().equals("triangle") || given.roots().size() != 3) {
      return;
    }
    letter(AREA);
    Formula r = Formula.name(given.roots().get(0));
    Formula s = Formula.name(given.roots().get(1));
    Formula t = Formula.name(given.roots().get(2));
    Formula product =
        r.plus(s)
            .plus(t)
            .times(s.plus(t).minus(r))
            .times(r.plus(t).minus(s))
            .times(r.plus(s).minus(t));
    writing
        .difference(Formula.number(16).times(Formula.name(AREA).power(2)), product)
        .ifPresent(zero -> equations.add(new Known(zero, "Heron's formula", true)));
    if (PlainWriter.write(given.find()).contains("area")) {
      find = Formula.name(AREA);
    }
  }

  /** Where the polynomial of a number is asked for, x is that number. */
  private void described(Writing writing) {
    if (solution.kind().equals("polynomial-with-roots")
        && polynomials.isEmpty()
        && given.find() instanceof Formula.Application application
        && application.arguments().size() == 1) {
      equation(writing, Formula.name(given.unknown()), application.arguments().get(0));
    }
  }

  private static boolean isSolutions(Formula find) {
    String text = PlainWriter.write(find).toLowerCase(Locale.ROOT);
    return text.contains("solution") && !text.contains("sum") && !text.contains("product");
  }

  private void equation(Writing writing, Formula left, Formula right) {
    writing
        .difference(left, right)
        .ifPresent(zero -> equations.add(new Known(zero, STATEMENT, true)));
  }

  /** What the answer adds to the equations where the statement keeps only some solutions. */
  private List<MultivariatePolynomial> answered(Writing writing) {
    Answer answer = solution.answer();
    if (answer instanceof Answer.Solutions solutions && find instanceof Formula.Name) {
      return values(solutions.values(), writing, find);
    } else if (answer instanceof Answer.Exact exact) {
      return writing.of(find).filter(RationalFunction::isPolynomial).isPresent()
          ? values(List.of(exact.value()), writing, find)
          : List.of();
    }
    return List.of();
  }

  /** The product of what is asked for less each of the values. */
  private static List<MultivariatePolynomial> values(
      List<ExactValue> values, Writing writing, Formula find) {
    MultivariatePolynomial product = MultivariatePolynomial.ONE;
    for (ExactValue value : values) {
      Optional<MultivariatePolynomial> zero = writing.difference(find, value.toFormula());
      if (zero.isEmpty()) {
        return leastPolynomials(values, writing, find);
      }
      product = product.times(zero.get());
    }
    return values.isEmpty() ? List.of() : List.of(product);
  }

  /** The same for values that are only known as roots of a polynomial. */
  private static List<MultivariatePolynomial> leastPolynomials(
      List<ExactValue> values, Writing writing, Formula find) {
    MultivariatePolynomial product = MultivariatePolynomial.ONE;
    Set<Polynomial> least = new HashSet<>();
    values.forEach(value -> least.add(value.minimalPolynomial()));
    for (Polynomial factor : least) {
      Optional<MultivariatePolynomial> asked = writing.difference(find, Formula.number(0));
      if (asked.isEmpty()) {
        return List.of();
      }
      MultivariatePolynomial at = MultivariatePolynomial.ZERO;
      for (int k = factor.degree(); k >= 0; k--) {
        at = at.times(asked.get()).plus(MultivariatePolynomial.constant(factor.coefficient(k)));
      }
      product = product.times(at);
    }
    return List.of(product);
  }
}
