package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.RealRootCount;
import rootwright.working.review.LinearCombination;

/**
 * Looks for one step that leads from what stands above to an equation: algebra alone, multiples of
 * known equations added up, values put in, or an equation in one unknown solved.
 */
final class Steps {

  private static final int HIGHEST_TOGETHER = 4;
  private static final int MOST_TOGETHER = 10;
  private static final int MOST_MULTIPLES = 150;

  private final List<Known> facts;
  private final List<MultivariatePolynomial> names;
  private final List<MultivariatePolynomial> signs;
  private final int unknowns;

  /**
   * @param facts what a line may lean on, the latest first
   * @param names equations by which roots are called something
   * @param signs what the root signs stand for
   */
  Steps(
      List<Known> facts,
      List<MultivariatePolynomial> names,
      List<MultivariatePolynomial> signs,
      int unknowns) {
    this.facts = List.copyOf(facts);
    this.names = List.copyOf(names);
    this.signs = List.copyOf(signs);
    this.unknowns = unknowns;
  }

  /** The step as a phrase, if one step leads to this being zero. */
  Optional<String> to(MultivariatePolynomial zero) {
    if (zero.isZero() || isMember(signs, zero)) {
      return Optional.of("by algebra");
    }
    return added(zero, facts, 0)
        .or(() -> putIn(zero))
        .or(() -> solved(zero))
        .or(() -> added(zero, facts, 1))
        .or(() -> named(zero));
  }

  /**
   * Whether several lines together lead to it, however they are multiplied: one step only where the
   * line itself shows the numbers that were put in.
   */
  Optional<String> together(MultivariatePolynomial zero) {
    List<MultivariatePolynomial> equations = new ArrayList<>(signs);
    facts.stream()
        .filter(fact -> fact.sound() && fact.zero().degree() <= HIGHEST_TOGETHER)
        .limit(MOST_TOGETHER)
        .forEach(fact -> equations.add(fact.zero()));
    return isMember(equations, zero)
        ? Optional.of("the lines above, put in together")
        : Optional.empty();
  }

  /** What the roots are called, put into one equation. */
  private Optional<String> named(MultivariatePolynomial zero) {
    for (Known fact : facts) {
      List<MultivariatePolynomial> equations = new ArrayList<>(signs);
      equations.addAll(names);
      equations.add(fact.zero());
      if (!names.isEmpty() && !names.contains(fact.zero()) && isMember(equations, zero)) {
        return Optional.of("the names of the roots put into " + fact.source());
      }
    }
    return Optional.empty();
  }

  /** The step if this is the only real solution of a known equation. */
  Optional<String> onlyReal(MultivariatePolynomial zero) {
    List<Integer> occurring = unknownsIn(zero);
    if (occurring.size() != 1 || zero.degree() != 1) {
      return Optional.empty();
    }
    int k = occurring.get(0);
    Polynomial linear = inOne(zero, k);
    for (Known fact : facts) {
      if (unknownsIn(fact.zero()).equals(occurring)) {
        Polynomial whole = inOne(fact.zero(), k);
        Polynomial.Division division = whole.divide(linear);
        if (division.remainder().isZero()
            && RealRootCount.of(division.quotient()).distinct() == 0) {
          return Optional.of("the only real solution of " + fact.source());
        }
      }
    }
    return Optional.empty();
  }

  /** A polynomial in the unknown with this number alone, as one in x. */
  static Polynomial inOne(MultivariatePolynomial polynomial, int unknown) {
    return Polynomial.ofAscending(
        polynomial.coefficientsIn(unknown).stream()
            .map(part -> part.coefficient(Monomial.ONE))
            .toList());
  }

  /** The step if one of these two facts, or both together, lead to it. */
  Optional<String> fromPair(MultivariatePolynomial zero, Known wrong) {
    List<Known> alone = List.of(wrong);
    Steps single = new Steps(alone, List.of(), signs, unknowns);
    Optional<String> found = single.to(zero);
    for (int k = 0; found.isEmpty() && k < facts.size(); k++) {
      if (!facts.get(k).equals(wrong)) {
        List<Known> pair = List.of(wrong, facts.get(k));
        Steps two = new Steps(pair, List.of(), signs, unknowns);
        found = two.added(zero, pair, 0).or(() -> two.putIn(zero)).or(() -> two.solved(zero));
      }
    }
    return found.or(() -> withTwoGiven(zero, wrong));
  }

  /** A multiple of the wrong one by a number, and two others that are put in. */
  private Optional<String> withTwoGiven(MultivariatePolynomial zero, Known wrong) {
    List<Known> given =
        facts.stream().filter(fact -> fact.sound() && fact.zero().degree() <= 3).limit(8).toList();
    for (int i = 0; i < given.size(); i++) {
      for (int j = i + 1; j < given.size(); j++) {
        List<MultivariatePolynomial> generators = new ArrayList<>(List.of(wrong.zero()));
        List<String> sources = new ArrayList<>(List.of(wrong.source()));
        for (Known fact : List.of(given.get(i), given.get(j))) {
          generators.add(fact.zero());
          sources.add(fact.source());
          for (int k = 0; k < unknowns; k++) {
            generators.add(fact.zero().times(MultivariatePolynomial.unknown(k)));
            sources.add(fact.source());
          }
        }
        Optional<List<Integer>> used = new LinearCombination(generators).of(zero);
        if (used.isPresent()) {
          return Optional.of("from " + listed(used.get().stream().map(sources::get).toList()));
        }
      }
    }
    return Optional.empty();
  }

  /** Multiples of facts by numbers, or by numbers and single unknowns. */
  private Optional<String> added(MultivariatePolynomial zero, List<Known> from, int degree) {
    List<MultivariatePolynomial> generators = new ArrayList<>();
    List<String> sources = new ArrayList<>();
    for (Known fact : from) {
      generators.add(fact.zero());
      sources.add(fact.source());
    }
    if (degree > 0) {
      for (Known fact : from) {
        for (int k = 0; k < unknowns && generators.size() < MOST_MULTIPLES; k++) {
          generators.add(fact.zero().times(MultivariatePolynomial.unknown(k)));
          sources.add(fact.source());
        }
      }
    }
    for (MultivariatePolynomial sign : signs) {
      generators.add(sign);
      sources.add("");
    }
    return new LinearCombination(generators)
        .of(zero)
        .map(used -> "from " + listed(used.stream().map(sources::get).toList()));
  }

  /** Equations that are solved for an unknown are put into the others. */
  private Optional<String> putIn(MultivariatePolynomial zero) {
    MultivariatePolynomial now = zero;
    List<String> used = new ArrayList<>();
    List<Known> rest = new ArrayList<>(facts);
    for (int round = 0; round < unknowns; round++) {
      Optional<Solved> solved = Solved.first(rest, now);
      if (solved.isEmpty()) {
        return Optional.empty();
      }
      Solved found = solved.get();
      used.add(found.fact().source());
      now = found.into(now, unknowns);
      List<Known> next = new ArrayList<>();
      for (Known fact : rest) {
        MultivariatePolynomial put = found.into(fact.zero(), unknowns);
        if (!fact.equals(found.fact()) && !put.isZero()) {
          next.add(new Known(put, fact.source(), fact.sound()));
        }
      }
      rest = next;
      if (now.isZero() || isMember(signs, now)) {
        return Optional.of(listed(used) + " put in");
      }
      Optional<String> further = new Steps(rest, List.of(), signs, unknowns).solved(now);
      if (further.isPresent()) {
        return Optional.of(listed(used) + " put in, " + further.get());
      }
    }
    return Optional.empty();
  }

  /** One equation whose solutions all make it zero: solved, or divided by what is common. */
  private Optional<String> solved(MultivariatePolynomial zero) {
    for (Known fact : facts) {
      if (unknownsIn(zero).stream().allMatch(unknownsIn(fact.zero())::contains)) {
        List<MultivariatePolynomial> equations = new ArrayList<>(signs);
        equations.add(fact.zero());
        if (isMember(equations, zero)
            || isMember(equations, zero.power(2))
            || isMember(equations, zero.power(3))) {
          return Optional.of(fact.source() + ", factored or solved");
        }
      }
    }
    return Optional.empty();
  }

  private boolean isMember(List<MultivariatePolynomial> equations, MultivariatePolynomial zero) {
    return !equations.isEmpty()
        && Ideal.of(equations, unknowns).flatMap(ideal -> ideal.factors(zero)).isPresent();
  }

  /** The numbers of the unknowns that occur. */
  static List<Integer> unknownsIn(MultivariatePolynomial polynomial) {
    return IntStream.range(0, polynomial.unknowns())
        .filter(k -> polynomial.degreeIn(k) > 0)
        .boxed()
        .toList();
  }

  private static String listed(List<String> sources) {
    Set<String> distinct = new LinkedHashSet<>(sources);
    distinct.remove("");
    List<String> all = List.copyOf(distinct);
    int last = all.size() - 1;
    return last < 0
        ? "what is above"
        : last == 0
            ? all.get(0)
            : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
  }
}
