package rootwright.press.deliverable;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;

/**
 * Spellings of an answer that a key lists: the usual one first, then decimals that end, mixed
 * numbers, the other order of several values, other words for "no such value".
 *
 * <p>A list can never hold every equal spelling; who marks by machine compares values instead.
 */
final class AcceptedForms {

  private AcceptedForms() {}

  /** At least one spelling. */
  static List<String> of(Answer answer) {
    if (answer instanceof Answer.Exact exact && exact.value() instanceof RationalValue rational) {
      return List.copyOf(number(rational.number()));
    } else if (answer instanceof Answer.Values values && values.values().size() > 1) {
      return several(values.values());
    } else if (answer instanceof Answer.Solutions solutions) {
      return solutions.values().isEmpty()
          ? List.of("no such value", "none", "does not exist", "impossible", "∅")
          : several(solutions.values());
    }
    return List.of(PlainWriter.write(answer.formula()));
  }

  private static Set<String> number(Rational value) {
    Set<String> forms = new LinkedHashSet<>();
    forms.add(value.toString());
    if (!value.isInteger()) {
      ending(value).map(BigDecimal::toPlainString).ifPresent(forms::add);
      mixed(value).ifPresent(forms::add);
    }
    return forms;
  }

  private static Optional<BigDecimal> ending(Rational value) {
    try {
      return Optional.of(
          new BigDecimal(value.numerator()).divide(new BigDecimal(value.denominator())));
    } catch (ArithmeticException endless) {
      return Optional.empty();
    }
  }

  /** {@code 6 3/4}; only for numbers beyond 1. */
  private static Optional<String> mixed(Rational value) {
    BigInteger[] whole = value.numerator().abs().divideAndRemainder(value.denominator());
    if (whole[0].signum() == 0) {
      return Optional.empty();
    }
    String sign = value.signum() < 0 ? "-" : "";
    return Optional.of("%s%s %s/%s".formatted(sign, whole[0], whole[1], value.denominator()));
  }

  private static List<String> several(List<ExactValue> values) {
    List<String> written =
        values.stream().map(value -> PlainWriter.write(value.toFormula())).toList();
    List<String> backwards = new ArrayList<>(written);
    Collections.reverse(backwards);
    Set<String> forms = new LinkedHashSet<>();
    for (String joint : List.of(" or ", ", ")) {
      forms.add(written.stream().collect(Collectors.joining(joint)));
      forms.add(backwards.stream().collect(Collectors.joining(joint)));
    }
    return List.copyOf(forms);
  }
}
