package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.desk.figure.PairPicture.PairedRoot;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Given;

/** Pictures of the roots of two polynomials. */
final class Pairs {

  private static final int MOST = 16;
  private static final List<String> FIRST_AND_SECOND =
      List.of("the roots of the first", "the roots of the second");

  private Pairs() {}

  /** The two polynomials of a problem, at the first value of their letter if they have one. */
  static Optional<Picture> of(Given given, Answer answer) {
    if (!(given.polynomial() instanceof Formula.Listing two) || two.items().size() != 2) {
      return Optional.empty();
    }
    Formula one = two.items().get(0);
    Formula other = two.items().get(1);
    String remark = "";
    if (given.find() instanceof Formula.Name letter
        && !AnswerNumbers.values(answer).isEmpty()
        && !letter.spelling().equals(given.unknown())) {
      Formula value = AnswerNumbers.values(answer).get(0).toFormula();
      one = put(one, letter, value);
      other = put(other, letter, value);
      remark = PlainWriter.write(Formula.equation(letter, value));
    }
    try {
      return of(
          FormulaExpansion.polynomial(one, given.unknown()),
          FormulaExpansion.polynomial(other, given.unknown()),
          FIRST_AND_SECOND,
          remark);
    } catch (UnreadableException | IllegalArgumentException letters) {
      return Optional.empty();
    }
  }

  /** The roots of two polynomials, the common ones marked. */
  static Optional<Picture> of(Polynomial one, Polynomial other, List<String> names, String remark) {
    if (Math.min(one.degree(), other.degree()) < 1
        || Math.max(one.degree(), other.degree()) > MOST) {
      return Optional.empty();
    }
    Polynomial divisor = one.gcd(other);
    List<PicturedRoot> common = divisor.degree() < 1 ? List.of() : RootPicture.of(divisor).roots();
    return Optional.of(
        new PairPicture(
            marked(RootPicture.of(one).roots(), common),
            marked(RootPicture.of(other).roots(), common),
            names,
            remark));
  }

  private static List<PairedRoot> marked(List<PicturedRoot> roots, List<PicturedRoot> common) {
    List<Integer> nearest = common.stream().map(root -> nearest(root, roots)).toList();
    List<PairedRoot> marked = new ArrayList<>();
    for (int k = 0; k < roots.size(); k++) {
      marked.add(new PairedRoot(roots.get(k), nearest.contains(k)));
    }
    return marked;
  }

  private static int nearest(PicturedRoot root, List<PicturedRoot> roots) {
    int nearest = 0;
    for (int k = 1; k < roots.size(); k++) {
      if (distance(root, roots.get(k)) < distance(root, roots.get(nearest))) {
        nearest = k;
      }
    }
    return nearest;
  }

  private static double distance(PicturedRoot one, PicturedRoot other) {
    return Math.hypot(
        Double.parseDouble(one.real()) - Double.parseDouble(other.real()),
        Double.parseDouble(one.imaginary()) - Double.parseDouble(other.imaginary()));
  }

  private static Formula put(Formula formula, Formula letter, Formula value) {
    return formula.rewrite(part -> part.equals(letter) ? value : part);
  }
}
