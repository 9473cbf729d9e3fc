package rootwright.composing.hint;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.option.Choices;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

/** What a hint must not say: the answer or its negative in any form, and the wrong options. */
final class Secret {

  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?(?:/[0-9]+)?");

  private final Answer answer;
  private final List<Formula> forms;
  private final Set<Rational> keys = new HashSet<>();
  private final Set<Rational> wrong = new HashSet<>();

  private Secret(Answer answer) {
    this.answer = answer;
    this.forms =
        answer.alternatives().stream()
            .flatMap(form -> List.of(form, new Formula.Negative(form)).stream())
            .map(NormalForm::of)
            .toList();
    answer.alternatives().forEach(this::keep);
  }

  /** The numbers an answer is made of; of a = 1, b = 2 the right sides. */
  private void keep(Formula form) {
    if (form instanceof Formula.Relation || form instanceof Formula.Listing) {
      form.parts().forEach(this::keep);
    } else {
      ClosedValue.of(form).map(Rational::absolute).ifPresent(keys::add);
    }
  }

  /**
   * The secret of a solution; every wrong turning that shows, alone or in a pair, may become an
   * option.
   */
  static Secret of(Solution solution) {
    Secret secret = new Secret(solution.answer());
    Choices.everyWrong(solution).stream()
        .map(option -> ClosedValue.of(option.value().formula()))
        .flatMap(Optional::stream)
        .forEach(secret.wrong::add);
    return secret;
  }

  /** Whether a hint may show this line. */
  boolean allows(Formula line) {
    return !line.contains(this::reveals) && !endsWrong(line) && !hidesKey(line);
  }

  /**
   * Whether a hint may say these words. A number in them that happens to be a wrong option is not
   * held against them: it is a number of the statement, not a result.
   */
  boolean allows(String words) {
    if (hasRootSign() && words.indexOf('√') >= 0) {
      return false;
    }
    Matcher numbers = NUMBER.matcher(words);
    while (numbers.find()) {
      Rational number = Rational.parse(numbers.group());
      if (keys.contains(number)) {
        return false;
      }
    }
    return true;
  }

  /** The answer as it is written, or as a polynomial in other clothes. */
  private boolean reveals(Formula part) {
    return forms.contains(NormalForm.of(part))
        || isAnswerPolynomial(part)
        || (isRootSign(part) && hasRootSign());
  }

  /** An answer with a root sign is not compared in all its forms: no line with one is shown. */
  private boolean hasRootSign() {
    return forms.stream().anyMatch(form -> form.contains(Secret::isRootSign));
  }

  private static boolean isRootSign(Formula part) {
    return part instanceof Formula.Radical;
  }

  /** In whatever letter, and times whatever number. */
  private boolean isAnswerPolynomial(Formula part) {
    if (!(answer instanceof Answer.PolynomialIn in) || in.polynomial().degree() < 1) {
      return false;
    }
    Set<String> letters = FormulaNames.in(part);
    if (letters.size() != 1) {
      return false;
    }
    try {
      Polynomial value = FormulaExpansion.polynomial(part, letters.iterator().next());
      return value.degree() >= 1 && value.primitive().equals(in.polynomial().primitive());
    } catch (UnreadableException other) {
      return false;
    }
  }

  /** Whether a number with the size of the answer stands anywhere but in exponents and indices. */
  private boolean hidesKey(Formula formula) {
    if (ClosedValue.of(formula).map(Rational::absolute).filter(keys::contains).isPresent()) {
      return true;
    }
    if (formula instanceof Formula.Power power) {
      return hidesKey(power.base());
    }
    return !(formula instanceof Formula.Family)
        && formula.parts().stream().anyMatch(this::hidesKey);
  }

  private boolean endsWrong(Formula line) {
    return line instanceof Formula.Relation relation
        && relation.sides().stream()
            .anyMatch(side -> ClosedValue.of(side).filter(wrong::contains).isPresent());
  }
}
