package rootwright.algebra.symmetric;

import java.math.BigInteger;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.internal.PackedPolynomial;
import rootwright.algebra.symmetric.internal.PackedReduction;
import rootwright.algebra.symmetric.internal.Packing;

/**
 * From the m-basis to the e-basis: power sums by their closed form, everything else by the loop
 * that {@link ClassroomReduction} tells aloud. Works in machine words while they are wide enough.
 */
final class ElementaryReduction {

  private ElementaryReduction() {}

  static ElementaryForm of(SymmetricPolynomial polynomial) {
    int largest = 0;
    int weight = 1;
    BigInteger common = BigInteger.ONE;
    for (Map.Entry<Partition, Rational> term : polynomial.terms().entrySet()) {
      largest = Math.max(largest, term.getKey().part(0));
      weight = Math.max(weight, term.getKey().weight());
      BigInteger under = term.getValue().denominator();
      if (!under.equals(BigInteger.ONE)) {
        common = common.divide(common.gcd(under)).multiply(under);
      }
    }
    // No partition of the weight has more parts than the weight: more variables change nothing.
    int slots = Math.min(polynomial.variables(), weight);
    if (Packing.fits(slots, largest)) {
      try {
        return ElementaryForm.packed(
            polynomial.variables(),
            inWords(polynomial, Packing.of(slots), common),
            common.equals(BigInteger.ONE) ? Rational.ONE : new Rational(BigInteger.ONE, common));
      } catch (ArithmeticException tooWide) {
        return inBigNumbers(polynomial);
      }
    }
    return inBigNumbers(polynomial);
  }

  private static PackedPolynomial inWords(
      SymmetricPolynomial polynomial, Packing packing, BigInteger common) {
    PackedReduction reduction = new PackedReduction(packing);
    for (Map.Entry<Partition, Rational> term : polynomial.terms().entrySet()) {
      Partition partition = term.getKey();
      BigInteger coefficient = term.getValue().numerator();
      if (!common.equals(BigInteger.ONE)) {
        coefficient = coefficient.multiply(common.divide(term.getValue().denominator()));
      }
      if (partition.length() == 1) {
        reduction.addPowerSum(partition.part(0), coefficient.longValueExact());
      } else {
        reduction.add(
            packing.pack(partition.padded(partition.length())), coefficient.longValueExact());
      }
    }
    return reduction.reduce();
  }

  private static ElementaryForm inBigNumbers(SymmetricPolynomial polynomial) {
    int variables = polynomial.variables();
    NavigableMap<Partition, Rational> others = new TreeMap<>(polynomial.terms());
    MultivariatePolynomial powerSums = MultivariatePolynomial.ZERO;
    for (Map.Entry<Partition, Rational> term : polynomial.terms().entrySet()) {
      if (term.getKey().length() == 1) {
        others.remove(term.getKey());
        powerSums =
            powerSums.plus(
                GirardWaring.powerSum(term.getKey().part(0), variables)
                    .polynomial()
                    .times(term.getValue()));
      }
    }
    ElementaryForm rest = ClassroomReduction.of(SymmetricPolynomial.of(variables, others)).form();
    return ElementaryForm.of(variables, rest.polynomial().plus(powerSums));
  }
}
