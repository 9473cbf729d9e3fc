package rootwright.working.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.problem.Problem;
import rootwright.working.step.Setting;

/**
 * Looks for one step that leads from what is known to an equality: algebra alone, facts put in, or
 * multiples of known equations added.
 *
 * <p>That an equality is true does not make it follow: from the coefficients everything true
 * follows in the end, and a reader wants to see how.
 */
final class Derivation {

  private static final int HIGHEST_TOGETHER = 4;

  private final Problem problem;
  private final FormalValues formal;
  private final GenericPolynomial generic;

  Derivation(Problem problem, Setting setting) {
    this.problem = problem;
    this.formal = new FormalValues(setting, problem.unknown());
    this.generic = new GenericPolynomial(problem);
  }

  /** The step as a phrase, if one step leads from these facts to the equality. */
  Optional<String> of(Formula left, Formula right, List<Fact> facts) {
    if (formal.same(left, right)) {
      return Optional.of(
          formal.isInRoots(left) || formal.hasUnknown(left)
              ? "by algebra, whatever the roots are"
              : "arithmetic");
    }
    if (formal.same(generic.writtenOut(left), generic.writtenOut(right))) {
      return Optional.of("true of the roots of every polynomial with this leading coefficient");
    }
    return substituted(left, right, facts).or(() -> combined(left, right, facts));
  }

  /** The same where some facts are wrong: these may also be multiplied by anything. */
  Optional<String> ofWrong(Formula left, Formula right, List<Fact> facts) {
    return of(left, right, facts).or(() -> wrongTogether(left, right, facts));
  }

  private Optional<String> wrongTogether(Formula left, Formula right, List<Fact> facts) {
    List<Fact> wrong = facts.stream().filter(fact -> !fact.sound()).toList();
    Optional<MultivariatePolynomial> target = difference(left, right);
    if (target.isEmpty() || wrong.isEmpty() || problem.degree() > HIGHEST_TOGETHER) {
      return Optional.empty();
    }
    List<MultivariatePolynomial> equations = new ArrayList<>();
    for (Fact fact : wrong) {
      difference(fact.left(), fact.right()).ifPresent(equations::add);
    }
    if (Together.leadTo(equations, target.get(), problem.degree())) {
      return Optional.of("from " + listed(wrong.stream().map(Fact::source).toList()));
    }
    for (Fact fact : facts) {
      List<MultivariatePolynomial> more = new ArrayList<>(equations);
      difference(fact.left(), fact.right()).ifPresent(more::add);
      if (fact.sound() && Together.leadTo(more, target.get(), problem.degree())) {
        List<String> sources = new ArrayList<>(wrong.stream().map(Fact::source).toList());
        sources.add(fact.source());
        return Optional.of("from " + listed(sources));
      }
    }
    return Optional.empty();
  }

  /** Whether the problem's own letter occurs. */
  boolean hasUnknown(Formula formula) {
    return formal.hasUnknown(formula);
  }

  /** Whether nothing but numbers occurs. */
  boolean isNumber(Formula formula) {
    return !formula.contains(
        part ->
            part instanceof Formula.Name
                || part instanceof Formula.Family
                || part instanceof Formula.Aggregate);
  }

  /** Whether a root, or anything made of roots, occurs. */
  boolean isInRoots(Formula formula) {
    return formal.isInRoots(formula);
  }

  /** Whether the two are the same by algebra alone, or written alike. */
  boolean isSame(Formula one, Formula other) {
    return one.equals(other) || formal.same(one, other);
  }

  private Optional<String> substituted(Formula left, Formula right, List<Fact> facts) {
    Substitution intoLeft = new Substitution(formal, facts);
    Formula newLeft = intoLeft.into(left);
    if (!intoLeft.used().isEmpty() && formal.same(newLeft, right)) {
      return Optional.of(putIn(intoLeft.used()));
    }
    Substitution intoRight = new Substitution(formal, facts);
    Formula newRight = intoRight.into(right);
    if (!intoRight.used().isEmpty() && formal.same(left, newRight)) {
      return Optional.of(putIn(intoRight.used()));
    }
    if (formal.same(newLeft, newRight)) {
      Set<Fact> used = new LinkedHashSet<>(intoLeft.used());
      used.addAll(intoRight.used());
      return Optional.of(putIn(used));
    }
    return Optional.empty();
  }

  private Optional<String> combined(Formula left, Formula right, List<Fact> facts) {
    Optional<MultivariatePolynomial> target = difference(left, right);
    if (target.isEmpty()) {
      return Optional.empty();
    }
    // Lines above come first, so that they are used before anything else.
    List<MultivariatePolynomial> generators = new ArrayList<>();
    List<String> sources = new ArrayList<>();
    for (Fact fact : facts) {
      boolean formula = isInRoots(fact.right());
      if (fact.sound() || !formula) {
        // A wrong formula, taken as an identity in the roots, would contradict the coefficients.
        difference(fact.left(), fact.right()).ifPresent(generators::add);
        sources.addAll(Collections.nCopies(generators.size() - sources.size(), fact.source()));
      }
      if (formula) {
        withNumbers(fact, facts).ifPresent(generators::add);
        sources.addAll(Collections.nCopies(generators.size() - sources.size(), fact.source()));
      }
    }
    LinearCombination lines = new LinearCombination(generators);
    if (lines.of(MultivariatePolynomial.ONE).isPresent()) {
      // Lines that contradict one another would lead to anything.
      return Optional.empty();
    }
    Optional<List<Integer>> found = lines.of(target.get());
    // A bare number shows nothing of how a theorem was used; two theorems would be two steps.
    boolean bare = right instanceof Formula.Numeral numeral && !numeral.value().isZero();
    if (found.isEmpty() && !bare) {
      for (Theorems.Vanishing theorem : new Theorems(problem).upTo(target.get().degree())) {
        found = lines.and(theorem.polynomial()).of(target.get());
        if (found.isPresent()) {
          sources.add(theorem.why());
          break;
        }
      }
    }
    return found.map(used -> "from " + listed(used.stream().map(sources::get).toList()));
  }

  /** An equation with the numbers put in that others give for its parts. */
  private Optional<MultivariatePolynomial> withNumbers(Fact fact, List<Fact> facts) {
    List<Fact> numbers = facts.stream().filter(other -> !isInRoots(other.right())).toList();
    Substitution substitution = new Substitution(formal, numbers);
    return difference(substitution.into(fact.left()), substitution.into(fact.right()));
  }

  /** Left minus right as a polynomial in the roots, where it is one. */
  private Optional<MultivariatePolynomial> difference(Formula left, Formula right) {
    return formal
        .of(left)
        .flatMap(one -> formal.of(right).map(one::minus))
        .filter(RationalFunction::isPolynomial)
        .map(RationalFunction::numerator);
  }

  private static String putIn(Set<Fact> used) {
    List<String> sources = used.stream().map(Fact::source).distinct().toList();
    return sources.equals(List.of(Facts.COEFFICIENTS))
        ? "read off the coefficients"
        : listed(sources) + " put in";
  }

  private static String listed(Collection<String> sources) {
    List<String> distinct = sources.stream().distinct().toList();
    int last = distinct.size() - 1;
    return distinct.size() == 1
        ? distinct.get(0)
        : String.join(", ", distinct.subList(0, last)) + " and " + distinct.get(last);
  }
}
