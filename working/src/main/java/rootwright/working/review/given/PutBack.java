package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;

/** Puts a formula back in the places of another one: everywhere, or in one place at a time. */
final class PutBack {

  private final Formula from;
  private final Formula to;
  private final int only;
  private int met;

  private PutBack(Formula from, Formula to, int only) {
    this.from = from;
    this.to = to;
    this.only = only;
  }

  /** What comes of it, in every place together first; empty if it does not occur. */
  static List<Formula> everyWay(Formula formula, Formula from, Formula to) {
    List<Formula> all = new ArrayList<>();
    PutBack everywhere = new PutBack(from, to, -1);
    Formula whole = formula.rewrite(everywhere::replaced);
    if (everywhere.met > 0) {
      all.add(whole);
    }
    for (int k = 0; everywhere.met > 1 && k < everywhere.met; k++) {
      all.add(formula.rewrite(new PutBack(from, to, k)::replaced));
    }
    return all;
  }

  private Formula replaced(Formula part) {
    boolean same = part.equals(from);
    boolean opposite =
        part instanceof Formula.Numeral one
            && from instanceof Formula.Numeral other
            && one.value().equals(other.value().negate());
    if (!same && !opposite) {
      return part;
    }
    boolean here = only < 0 || met == only;
    met++;
    return !here ? part : same ? to : new Formula.Negative(to);
  }
}
