package rootwright.composing.twin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.ask.AskedReader;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Given;

/**
 * The relation found between two problems.
 *
 * @param relation how they are related
 * @param words the relation named for a coach: "mirror image, same key 8"
 */
public record Twin(Relation relation, String words) {

  /**
   * The relation of a problem to an earlier one; empty if there is none.
   *
   * @param earlier a problem already used or offered
   * @param later the new one
   */
  public static Optional<Twin> relation(Problem earlier, Problem later) {
    if (earlier.degree() != later.degree() || earlier.degree() < 1) {
      return Optional.empty();
    }
    return clothes(earlier, later).or(() -> shift(earlier, later));
  }

  /**
   * The relation of any statement to an earlier one; empty if there is none.
   *
   * @param earlier a statement already used or offered
   * @param later the new one
   */
  public static Optional<Twin> relation(Given earlier, Given later) {
    Optional<Problem> before = earlier.problem();
    Optional<Problem> after = later.problem();
    if (before.isPresent() && after.isPresent()) {
      return relation(before.get(), after.get());
    }
    if (before.isPresent() || after.isPresent()) {
      return Optional.empty();
    }
    StatementForm from = new StatementForm(earlier);
    String wanted = new StatementForm(later).text();
    Optional<Relation> relation =
        from.text().equals(wanted)
            ? Optional.of(clothesOf(earlier, later))
            : from.mirrored().filter(wanted::equals).map(mirrored -> Relation.MIRRORED);
    return relation.map(found -> new Twin(found, found.words()));
  }

  /** What two statements that are the same up to scaling and renaming differ in. */
  private static Relation clothesOf(Given earlier, Given later) {
    if (!earlier.polynomial().equals(later.polynomial())
        && earlier.find().equals(later.find())
        && earlier.unknown().equals(later.unknown())) {
      return Relation.SCALED;
    }
    return earlier.find().equals(later.find()) && earlier.conditions().equals(later.conditions())
        ? Relation.SAME
        : Relation.RENAMED;
  }

  private static Optional<Twin> clothes(Problem earlier, Problem later) {
    Pair from = Pair.of(earlier);
    String wanted = Pair.of(later).text();
    if (from.text().equals(wanted)) {
      Relation relation =
          !earlier.polynomial().equals(later.polynomial())
              ? Relation.SCALED
              : earlier.roots().equals(later.roots()) && earlier.unknown().equals(later.unknown())
                  ? Relation.SAME
                  : Relation.RENAMED;
      return Optional.of(new Twin(relation, relation.words()));
    }
    Optional<Pair> reversed = from.reversed();
    return as(Relation.MIRRORED, from.mirrored(), wanted, later)
        .or(() -> as(Relation.REVERSED, reversed, wanted, later))
        .or(
            () ->
                as(
                    Relation.REVERSED_AND_MIRRORED,
                    reversed.flatMap(Pair::mirrored),
                    wanted,
                    later));
  }

  private static Optional<Twin> as(
      Relation relation, Optional<Pair> turned, String wanted, Problem later) {
    return turned
        .filter(pair -> pair.text().equals(wanted))
        .map(
            pair ->
                new Twin(
                    relation,
                    AskedReader.read(later)
                        .value()
                        .map(key -> "%s, same key %s".formatted(relation.words(), text(key)))
                        .orElse(relation.words())));
  }

  /** Whether the later roots are the earlier ones moved, all by the same rational number. */
  private static Optional<Twin> shift(Problem earlier, Problem later) {
    Rational by = meanOfRoots(later.polynomial()).minus(meanOfRoots(earlier.polynomial()));
    Polynomial back = Polynomial.ofAscending(List.of(by.negate(), Rational.ONE));
    if (by.isZero()
        || !earlier.polynomial().compose(back).monic().equals(later.polynomial().monic())) {
      return Optional.empty();
    }
    Relation relation =
        askMovesAlong(earlier, later, by) ? Relation.SHIFTED : Relation.SHIFTED_ROOTS;
    return Optional.of(
        new Twin(relation, "%s: every root moved by %s".formatted(relation.words(), text(by))));
  }

  private static boolean askMovesAlong(Problem earlier, Problem later, Rational by) {
    Optional<RationalFunction> before = AskedReader.read(earlier).expression();
    Optional<RationalFunction> after = AskedReader.read(later).expression();
    List<MultivariatePolynomial> back = new ArrayList<>();
    for (int k = 0; k < earlier.degree(); k++) {
      back.add(MultivariatePolynomial.unknown(k).minus(MultivariatePolynomial.constant(by)));
    }
    return before.isPresent()
        && after.isPresent()
        && new RationalFunction(
                before.get().numerator().substitute(back),
                before.get().denominator().substitute(back))
            .isSameFunction(after.get());
  }

  private static Rational meanOfRoots(Polynomial polynomial) {
    int n = polynomial.degree();
    return polynomial.coefficient(n - 1).negate().over(polynomial.lead()).over(Rational.of(n));
  }

  private static String text(Rational number) {
    return UnicodeWriter.write(Formula.number(number));
  }
}
