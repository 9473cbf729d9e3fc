package rootwright.algebra.symmetric.internal;

import java.util.HashMap;
import java.util.Map;

/**
 * Products of elementary symmetric functions expanded in monomial ones. A product is named by its
 * leading partition λ (its factors are the columns of λ); every product met on the way is
 * remembered for the life of this object. Not safe for use by several threads.
 */
public final class ElementaryProducts {

  private final Packing packing;
  private final VerticalStrips strips;
  private final Map<Long, PackedPolynomial> remembered = new HashMap<>();

  /** For as many variables as the packing has slots. */
  public ElementaryProducts(Packing packing) {
    this.packing = packing;
    strips = new VerticalStrips(packing);
  }

  /**
   * The expansion of the product whose leading partition has no column of full height.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  private PackedPolynomial reduced(long leading) {
    if (leading == 0) {
      return PackedPolynomial.term(packing, 0, 1);
    }
    PackedPolynomial known = remembered.get(leading);
    if (known != null) {
      return known;
    }
    // The last column stands under the parts equal to the largest.
    int height = 1;
    int largest = packing.at(leading, 0);
    while (height < packing.slots() && packing.at(leading, height) == largest) {
      height++;
    }
    PackedPolynomial expansion;
    if (largest == 1) {
      expansion = PackedPolynomial.term(packing, leading, 1);
    } else {
      PackedPolynomial rest = reduced(leading - packing.ones(height));
      Accumulator sum = new Accumulator();
      for (int index = 0; index < rest.size(); index++) {
        strips.addProduct(sum, rest.key(index), height, rest.coefficient(index));
      }
      expansion = sum.toPolynomial(packing);
    }
    remembered.put(leading, expansion);
    return expansion;
  }

  /**
   * Adds {@code factor} times the product with this leading partition to a sum of partitions, and
   * enters words that are new there into a queue.
   */
  void addTo(Accumulator sum, Descending queue, long leading, long factor) {
    long columns = fullColumns(leading);
    PackedPolynomial expansion = reduced(leading - columns);
    for (int index = 0; index < expansion.size(); index++) {
      long key = expansion.key(index) + columns;
      if (sum.add(key, Math.multiplyExact(expansion.coefficient(index), factor))) {
        queue.enter(key);
      }
    }
  }

  /**
   * The expansion of the product with this leading partition.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public PackedPolynomial expansion(long leading) {
    long columns = fullColumns(leading);
    PackedPolynomial reduced = reduced(leading - columns);
    return columns == 0 ? reduced : reduced.times(PackedPolynomial.term(packing, columns, 1));
  }

  /** The part of a partition that lies in columns of full height: e_n moves everything along. */
  private long fullColumns(long leading) {
    return packing.ones(packing.slots()) * packing.at(leading, packing.slots() - 1);
  }
}
