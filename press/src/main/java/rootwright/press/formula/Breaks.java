package rootwright.press.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;

/**
 * Where a formula may be broken over lines: before a relation sign, before the sign of a term,
 * after a comma of a listing, between factors and words, inside a very long number. A sign always
 * begins the line whose term it belongs to, and a short right side ({@code = 0}) stays with the
 * last term.
 */
public final class Breaks {

  private static final Formula NOTHING = new Formula.Words("");
  private static final int DIGITS_A_PIECE = 24;

  private Breaks() {}

  /**
   * The formula in pieces, in reading order; a line may end after each. A formula that fits is one
   * piece; otherwise relations are broken first, then what still does not fit is broken at its
   * terms, and so on. A piece that cannot be broken may be left too wide.
   *
   * <p>A piece that begins with a sign is written as a formula with nothing before the sign, so
   * that the sign gets the room of a sign between two terms.
   */
  public static List<Formula> pieces(Formula formula, Predicate<Formula> fits) {
    if (fits.test(formula)) {
      return List.of(formula);
    }
    List<Formula> parts = split(formula);
    if (parts.size() < 2) {
      return List.of(formula);
    }
    return parts.stream().flatMap(part -> pieces(part, fits).stream()).toList();
  }

  /**
   * The room before the sign with which a piece begins, in eighteenths of an em as in TeX: 5 before
   * a relation, 4 before a plus or minus, 0 for any other piece. It is not wanted at the beginning
   * of a line.
   */
  public static int leadingRoom(Formula piece) {
    if (piece instanceof Formula.Relation relation) {
      return relation.sides().get(0).equals(NOTHING) ? 5 : leadingRoom(relation.sides().get(0));
    }
    return piece instanceof Formula.Sum sum && sum.terms().get(0).equals(NOTHING) ? 4 : 0;
  }

  private static List<Formula> split(Formula formula) {
    if (formula instanceof Formula.Relation relation) {
      return relation(relation);
    }
    if (formula instanceof Formula.Sum sum) {
      return sum(sum.terms());
    }
    if (formula instanceof Formula.Negative negative) {
      return negative(negative);
    }
    if (formula instanceof Formula.Listing listing) {
      return listing(listing.items());
    }
    if (formula instanceof Formula.Product product) {
      return product(product.factors());
    }
    if (formula instanceof Formula.Numeral number && number.value().isInteger()) {
      return digits(number.value().toString().replace('-', '−'));
    }
    if (formula instanceof Formula.Words words) {
      return words(words.text());
    }
    return List.of(formula);
  }

  /** After each blank, which stays with the word before it. */
  private static List<Formula> words(String text) {
    return Stream.of(text.strip().split("(?<= )(?! )"))
        .map(word -> (Formula) new Formula.Words(word))
        .toList();
  }

  private static List<Formula> relation(Formula.Relation relation) {
    List<Formula> sides = relation.sides();
    if (sides.get(0).equals(NOTHING)) {
      return afterSign(relation);
    }
    if (sides.size() == 2 && isShort(sides.get(1)) && sides.get(0) instanceof Formula.Sum sum) {
      List<Formula> parts = new ArrayList<>(sum(sum.terms()));
      Formula last = parts.remove(parts.size() - 1);
      parts.add(new Formula.Relation(List.of(last, sides.get(1)), relation.comparisons()));
      return parts;
    }
    List<Formula> parts = new ArrayList<>();
    parts.add(sides.get(0));
    for (int k = 1; k < sides.size(); k++) {
      parts.add(
          new Formula.Relation(
              List.of(NOTHING, sides.get(k)), List.of(relation.comparisons().get(k - 1))));
    }
    return parts;
  }

  /** A piece that begins with a relation sign: the sign stays with the first part of its side. */
  private static List<Formula> afterSign(Formula.Relation piece) {
    if (piece.sides().size() > 2) {
      return List.of(piece);
    }
    List<Formula> inner = split(piece.sides().get(1));
    if (inner.size() < 2) {
      return List.of(piece);
    }
    List<Formula> parts = new ArrayList<>(inner);
    parts.set(0, new Formula.Relation(List.of(NOTHING, inner.get(0)), piece.comparisons()));
    return parts;
  }

  private static List<Formula> sum(List<Formula> terms) {
    if (terms.get(0).equals(NOTHING)) {
      return terms.size() == 2 ? afterSign(terms.get(1)) : sum(terms.subList(1, terms.size()));
    }
    List<Formula> parts = new ArrayList<>();
    parts.add(terms.get(0));
    for (Formula term : terms.subList(1, terms.size())) {
      parts.add(new Formula.Sum(List.of(NOTHING, term)));
    }
    return parts;
  }

  /** A term with its sign: the sign stays with the first part of the term. */
  private static List<Formula> afterSign(Formula term) {
    List<Formula> inner =
        term instanceof Formula.Negative negative ? split(negative.of()) : split(term);
    if (inner.size() < 2 || term instanceof Formula.Sum) {
      return List.of(new Formula.Sum(List.of(NOTHING, term)));
    }
    List<Formula> parts = new ArrayList<>(inner);
    Formula first =
        term instanceof Formula.Negative ? new Formula.Negative(inner.get(0)) : inner.get(0);
    parts.set(0, new Formula.Sum(List.of(NOTHING, first)));
    return parts;
  }

  private static List<Formula> negative(Formula.Negative negative) {
    if (negative.of() instanceof Formula.Sum) {
      return List.of(negative);
    }
    List<Formula> inner = split(negative.of());
    if (inner.size() < 2) {
      return List.of(negative);
    }
    List<Formula> parts = new ArrayList<>(inner);
    parts.set(0, new Formula.Negative(inner.get(0)));
    return parts;
  }

  private static List<Formula> product(List<Formula> factors) {
    if (factors.contains(NOTHING)) {
      return List.of(new Formula.Product(factors));
    }
    List<Formula> parts = new ArrayList<>();
    parts.add(new Formula.Product(List.of(factors.get(0), NOTHING)));
    for (int k = 1; k < factors.size(); k++) {
      parts.add(new Formula.Product(List.of(NOTHING, factors.get(k))));
    }
    return parts;
  }

  private static List<Formula> listing(List<Formula> items) {
    if (items.size() < 2 || items.get(items.size() - 1).equals(NOTHING)) {
      return List.of(new Formula.Listing(items));
    }
    List<Formula> parts = new ArrayList<>();
    for (Formula item : items.subList(0, items.size() - 1)) {
      parts.add(new Formula.Listing(List.of(item, NOTHING)));
    }
    parts.add(items.get(items.size() - 1));
    return parts;
  }

  private static List<Formula> digits(String number) {
    List<Formula> parts = new ArrayList<>();
    for (int from = 0; from < number.length(); from += DIGITS_A_PIECE) {
      int to = Math.min(number.length(), from + DIGITS_A_PIECE);
      parts.add(new Formula.Words(number.substring(from, to)));
    }
    return parts;
  }

  private static boolean isShort(Formula side) {
    return side instanceof Formula.Numeral number && number.value().toString().length() < 6;
  }
}
