package rootwright.algebra.symmetric;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.internal.ElementaryProducts;
import rootwright.algebra.symmetric.internal.PackedPolynomial;
import rootwright.algebra.symmetric.internal.Packing;

/**
 * Products of elementary symmetric polynomials, multiplied out and remembered. A product is named
 * by its leading partition. Works in machine words while they are wide enough.
 */
final class ElementaryExpansions {

  private final int variables;
  private final Map<Integer, ElementaryProducts> packed = new HashMap<>();
  private final Map<Partition, SymmetricPolynomial> remembered = new HashMap<>();

  ElementaryExpansions(int variables) {
    this.variables = variables;
  }

  SymmetricPolynomial of(Partition leading) {
    SymmetricPolynomial known = remembered.get(leading);
    if (known == null) {
      known = expand(leading);
      remembered.put(leading, known);
    }
    return known;
  }

  private SymmetricPolynomial expand(Partition leading) {
    // No partition of the weight has more parts than the weight: more variables change nothing.
    int slots = Math.max(1, Math.min(variables, leading.weight()));
    if (Packing.fits(slots, leading.part(0))) {
      try {
        return inWords(leading, Packing.of(slots));
      } catch (ArithmeticException tooWide) {
        return inBigNumbers(leading);
      }
    }
    return inBigNumbers(leading);
  }

  private SymmetricPolynomial inWords(Partition leading, Packing packing) {
    PackedPolynomial expansion =
        packed
            .computeIfAbsent(packing.slots(), slots -> new ElementaryProducts(packing))
            .expansion(packing.pack(leading.padded(leading.length())));
    NavigableMap<Partition, Rational> terms = new TreeMap<>();
    for (int index = 0; index < expansion.size(); index++) {
      terms.put(
          Partition.of(packing.unpack(expansion.key(index))),
          Rational.of(expansion.coefficient(index)));
    }
    return SymmetricPolynomial.of(variables, terms);
  }

  private SymmetricPolynomial inBigNumbers(Partition leading) {
    Partition columns = leading.conjugate();
    if (columns.length() <= 1) {
      return SymmetricPolynomial.monomial(variables, leading);
    }
    int last = columns.part(columns.length() - 1);
    int[] rest = leading.padded(leading.length());
    for (int k = 0; k < last; k++) {
      rest[k]--;
    }
    return of(Partition.of(rest)).times(SymmetricPolynomial.elementary(variables, last));
  }
}
