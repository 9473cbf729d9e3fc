package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.check.Verdict;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;

/** Whether an equation holds for everything that the statement, and the case looked at, allow. */
final class Truths {

  /** What can be said of an equation. */
  enum Truth {
    /** A consequence of the equations of the statement. */
    ALWAYS,
    /** True at what the statement leaves of their solutions, not at all of them. */
    WHERE_ALLOWED,
    /** True of the roots x of the polynomial. */
    AT_ROOTS,
    /** Not true somewhere. */
    REFUTED,
    /** Beyond both checks. */
    UNDECIDED
  }

  private final Ground ground;
  private final TwoChecks checks;
  private final List<MultivariatePolynomial> chosen = new ArrayList<>();
  private Optional<MultivariatePolynomial> supposed = Optional.empty();

  Truths(Ground ground, TwoChecks checks) {
    this.ground = ground;
    this.checks = checks;
  }

  /** From here on this holds too, because names are chosen so. */
  void choose(MultivariatePolynomial zero) {
    chosen.add(zero);
  }

  /** Looks at this case alone, or at everything again. */
  void suppose(Optional<MultivariatePolynomial> zero) {
    supposed = zero;
  }

  Optional<MultivariatePolynomial> supposed() {
    return supposed;
  }

  /** Equations by which names were chosen. */
  List<MultivariatePolynomial> chosen() {
    return List.copyOf(chosen);
  }

  /** All equations that hold, those of the case included. */
  List<MultivariatePolynomial> equations(boolean allowedOnly) {
    List<MultivariatePolynomial> all = new ArrayList<>(ground.equations());
    all.addAll(chosen);
    if (supposed.isPresent()) {
      all.add(supposed.get());
      if (!isPossible(all)) {
        // Where the lead is zero there are not as many roots as there are names.
        all = new ArrayList<>(ground.names().signs());
        all.add(supposed.get());
        return all;
      }
    }
    if (allowedOnly) {
      all.addAll(ground.answered());
    }
    return all;
  }

  Truth of(Formula shown, MultivariatePolynomial zero) {
    if (zero.isZero()) {
      return Truth.ALWAYS;
    }
    boolean narrowed = !ground.answered().isEmpty();
    boolean caseAllowed = narrowed && isPossible(equations(true));
    Verdict first = verdict(shown, equations(false), zero);
    if (first.isConfirmed()) {
      return Truth.ALWAYS;
    }
    boolean undecided = first instanceof Verdict.Undecided;
    if (caseAllowed) {
      Verdict second = verdict(shown, equations(true), zero);
      if (second.isConfirmed() && isNarrowing(zero)) {
        return Truth.WHERE_ALLOWED;
      }
      undecided = second instanceof Verdict.Undecided;
    }
    if (undecided) {
      return Truth.UNDECIDED;
    }
    return atRoots(shown, zero, caseAllowed) ? Truth.AT_ROOTS : Truth.REFUTED;
  }

  /** Whether an equation follows from the statement and the case looked at. */
  boolean isTrue(Formula left, Formula right) {
    return ground
        .writing()
        .difference(left, right)
        .map(zero -> of(Formula.equation(left, right), zero) == Truth.ALWAYS)
        .orElse(false);
  }

  /**
   * Whether an equation in one unknown picks some of the solutions and adds none: "m = −1" does
   * where 5 is excluded, "m² = 1" does not.
   */
  private boolean isNarrowing(MultivariatePolynomial zero) {
    List<Integer> occurring = Steps.unknownsIn(zero);
    if (occurring.size() != 1) {
      return values(MultivariatePolynomial.unknown(0), equations(false)).isEmpty()
          || isFactorOfGiven(zero);
    }
    return values(MultivariatePolynomial.unknown(occurring.get(0)), equations(false))
        .map(
            all ->
                all.squarefreePart()
                    .remainder(Steps.inOne(zero, occurring.get(0)).squarefreePart())
                    .isZero())
        .orElse(true);
  }

  private boolean isFactorOfGiven(MultivariatePolynomial zero) {
    return ground.given().stream()
        .anyMatch(
            known ->
                Ideal.of(List.of(zero), ground.names().size())
                    .flatMap(ideal -> ideal.factors(known.zero()))
                    .isPresent());
  }

  /** The polynomial's own letter stands for any number first, and then for any root. */
  private boolean atRoots(Formula shown, MultivariatePolynomial zero, boolean allowedOnly) {
    if (!ground.names().isUnknown(ground.unknown())) {
      return false;
    }
    int x = ground.names().number(ground.unknown());
    if (zero.degreeIn(x) < 1) {
      return false;
    }
    for (Applied polynomial : ground.polynomials()) {
      List<MultivariatePolynomial> equations = equations(allowedOnly);
      equations.add(polynomial.at(MultivariatePolynomial.unknown(x)));
      if (verdict(shown, equations, zero).isConfirmed()) {
        return true;
      }
    }
    return false;
  }

  private Verdict verdict(
      Formula shown, List<MultivariatePolynomial> equations, MultivariatePolynomial zero) {
    return checks.verdict(shown, new Claim.Consequence(ground.names().size(), equations, zero));
  }

  /** Whether these equations have a common solution. */
  boolean isPossible(List<MultivariatePolynomial> equations) {
    return Ideal.of(equations, ground.names().size())
        .map(ideal -> !ideal.isEverything())
        .orElse(true);
  }

  /** The polynomial whose roots are the values of something, if these are finitely many. */
  Optional<Polynomial> values(MultivariatePolynomial of, List<MultivariatePolynomial> equations) {
    List<MultivariatePolynomial> all = new ArrayList<>(equations);
    for (int k = 0; k < ground.names().size(); k++) {
      int unknown = k;
      if (of.degreeIn(k) < 1 && equations.stream().allMatch(e -> e.degreeIn(unknown) < 1)) {
        // Nothing is said of it, so that any number may be put for it.
        all.add(MultivariatePolynomial.unknown(k));
      }
    }
    return Ideal.of(all, ground.names().size())
        .filter(ideal -> !ideal.isEverything())
        .filter(ideal -> ideal.isFinite() || isFixed(of, equations))
        .flatMap(ideal -> ideal.minimalPolynomial(of));
  }

  /** Whether one of the equations is in the unknown of this alone. */
  private static boolean isFixed(
      MultivariatePolynomial of, List<MultivariatePolynomial> equations) {
    List<Integer> occurring = Steps.unknownsIn(of);
    return equations.stream().anyMatch(equation -> Steps.unknownsIn(equation).equals(occurring));
  }

  /**
   * What something is equal to, written as briefly as the equations allow: those of the
   * coefficients alone or all that is given.
   */
  Optional<MultivariatePolynomial> value(MultivariatePolynomial of, boolean coefficientsOnly) {
    List<MultivariatePolynomial> equations =
        coefficientsOnly
            ? ground.given().stream()
                .filter(known -> known.source().equals(GroundReader.COEFFICIENTS))
                .map(Known::zero)
                .toList()
            : equations(false);
    return Ideal.of(equations, ground.names().size()).flatMap(ideal -> ideal.remainder(of));
  }
}
