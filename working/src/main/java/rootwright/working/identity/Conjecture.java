package rootwright.working.identity;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;

/**
 * A claim that equations follow from others.
 *
 * @param letters the letters that occur, numbered in this order
 * @param claims what is to follow
 * @param conditions what is supposed
 * @param unequal polynomials that are supposed not to be zero, besides denominators
 * @param domain what kind of numbers the letters are, if it is said
 * @param shownConditions the conditions as they are shown
 */
record Conjecture(
    List<String> letters,
    List<Equation> claims,
    List<Equation> conditions,
    List<MultivariatePolynomial> unequal,
    Optional<NumberDomain> domain,
    List<Formula> shownConditions) {

  Conjecture {
    letters = List.copyOf(letters);
    claims = List.copyOf(claims);
    conditions = List.copyOf(conditions);
    unequal = List.copyOf(unequal);
    shownConditions = List.copyOf(shownConditions);
  }

  /** The product of all that must not be zero; 1 if nothing. */
  MultivariatePolynomial mustNotVanish() {
    MultivariatePolynomial product = MultivariatePolynomial.ONE;
    List<MultivariatePolynomial> factors =
        Stream.concat(
                Stream.concat(claims.stream(), conditions.stream())
                    .map(equation -> equation.difference().denominator()),
                unequal.stream())
            .filter(factor -> !factor.isConstant())
            .distinct()
            .toList();
    for (MultivariatePolynomial factor : factors) {
      product = product.times(factor);
    }
    return product;
  }

  /** The setting in which the letters are free. */
  Setting setting() {
    return Setting.ofLetters(letters);
  }

  /** “Let r, s, t be real numbers with r + s + t = 0.” */
  String inWords() {
    String names =
        letters.stream()
            .map(letter -> UnicodeWriter.write(Formula.name(letter)))
            .collect(Collectors.joining(", "));
    String conditionsInWords =
        shownConditions.stream().map(UnicodeWriter::write).collect(Collectors.joining(" and "));
    return "Let %s be %s%s."
        .formatted(
            names,
            domain.map(NumberDomain::words).orElse("complex numbers"),
            conditionsInWords.isEmpty() ? "" : " with " + conditionsInWords);
  }

  /** The claims as one line. */
  Formula claimed() {
    return claims.size() == 1
        ? claims.get(0).relation()
        : new Formula.Listing(claims.stream().map(Equation::relation).toList());
  }
}
