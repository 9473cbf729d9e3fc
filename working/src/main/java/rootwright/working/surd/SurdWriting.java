package rootwright.working.surd;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.SurdSum;

/** Sums of square roots as they are written, the rational part first. */
public final class SurdWriting {

  private SurdWriting() {}

  /** The number as a formula. */
  public static Formula of(SurdSum number) {
    List<Formula> terms = new ArrayList<>();
    if (!number.rationalPart().isZero()) {
      terms.add(Formula.number(number.rationalPart()));
    }
    number
        .terms()
        .forEach(
            (under, factor) -> {
              if (!under.equals(BigInteger.ONE)) {
                terms.add(term(Rational.of(under), factor));
              }
            });
    return NormalForm.of(Formula.sum(terms));
  }

  private static Formula term(Rational under, Rational factor) {
    List<Formula> factors = new ArrayList<>();
    if (!factor.absolute().isOne()) {
      factors.add(Formula.number(factor.absolute()));
    }
    if (under.signum() < 0) {
      factors.add(new Formula.ImaginaryUnit());
    }
    if (!under.absolute().isOne()) {
      factors.add(new Formula.Radical(Formula.number(under.absolute()), 2));
    }
    Formula size = Formula.product(factors);
    return factor.signum() < 0 ? new Formula.Negative(size) : size;
  }
}
