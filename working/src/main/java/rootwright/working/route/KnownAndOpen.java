package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;

/**
 * A sum or product taken apart into what is known and what is still open.
 *
 * @param product whether it is a product
 * @param known what has no open root in it; 0 or 1 if nothing
 * @param open the rest
 */
record KnownAndOpen(boolean product, Formula known, Formula open) {

  static KnownAndOpen of(Formula formula, List<String> openNames) {
    boolean product = formula instanceof Formula.Product;
    List<Formula> pieces =
        product || formula instanceof Formula.Sum ? formula.parts() : List.of(formula);
    List<Formula> known = new ArrayList<>();
    List<Formula> open = new ArrayList<>();
    for (Formula piece : pieces) {
      boolean isOpen =
          piece.contains(
              part -> part instanceof Formula.Name name && openNames.contains(name.spelling()));
      (isOpen ? open : known).add(piece);
    }
    return product
        ? new KnownAndOpen(true, Formula.product(known), Formula.product(open))
        : new KnownAndOpen(false, Formula.sum(known), Formula.sum(open));
  }

  Rational join(Rational settled, Rational left) {
    return product ? settled.times(left) : settled.plus(left);
  }

  Formula joined(Rational left) {
    Formula number = Formula.number(left);
    boolean nothingKnown = known.equals(Formula.number(product ? 1 : 0));
    return nothingKnown ? number : product ? known.times(number) : known.plus(number);
  }
}
