package rootwright.composing.blueprint;

import java.util.Set;

/**
 * The names of the routes and slips of statements that are not about the roots of one polynomial
 * alone, as far as an order may use them. A test holds them against what is worked.
 */
final class StatementNames {

  static final Set<String> ROUTES =
      Set.of(
          "auxiliary",
          "bounded-squares",
          "cases",
          "cauchy",
          "climb",
          "combination",
          "compose",
          "condition-in-letter",
          "conjugates",
          "counterexample",
          "descent",
          "discriminant-cases",
          "divisors",
          "double-root",
          "ends-and-vertex",
          "euclid",
          "finite-cases",
          "forced-root",
          "heron",
          "known-values",
          "lagrange",
          "levels",
          "maclaurin",
          "name-the-roots",
          "newton-backwards",
          "reduction",
          "resultant",
          "separate-sums",
          "shared-with-derivative",
          "square",
          "subtract",
          "undress",
          "unity",
          "values-at-roots",
          "vanishing");

  static final Set<String> SLIPS =
      Set.of(
          "all-roots",
          "condition-forgotten",
          "cross-term-dropped",
          "equal-pair-allowed",
          "equal-pair-forgotten",
          "equality-turned",
          "example-believed",
          "existence-unchecked",
          "extraneous-kept",
          "factor-forgotten",
          "factor-sign",
          "first-term-only",
          "floor-forgotten",
          "half-forgotten",
          "identical-case-kept",
          "lead-not-divided",
          "level-forgotten",
          "linear-case-lost",
          "logarithm-of-the-sum",
          "lowest-degree",
          "negatives-forgotten",
          "one-level",
          "one-remainder-returns",
          "only-equal-pair",
          "pattern-continued",
          "perimeter-not-halved",
          "product-of-sums",
          "product-undivided",
          "repeated-once",
          "reversal-forgotten",
          "second-solution-lost",
          "sign-of-the-conjugate",
          "sign-of-the-sum",
          "starts-at-1",
          "sum-forgotten",
          "vertex-outside",
          "wrong-letter");

  private StatementNames() {}
}
