package rootwright.press.paper;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.RationalValue;
import rootwright.composing.option.Option;
import rootwright.working.answer.Answer;

/** The order in which options are printed: numbers by size. Only rational options are compared. */
final class OptionOrder {

  private OptionOrder() {}

  /** Whether every rational option is larger than the rational ones before it. */
  static boolean isAscending(List<Option> options) {
    Optional<Rational> last = Optional.empty();
    for (Option option : options) {
      Optional<Rational> value = rational(option.value());
      if (value.isPresent()) {
        if (last.isPresent() && last.get().compareTo(value.get()) >= 0) {
          return false;
        }
        last = value;
      }
    }
    return true;
  }

  private static Optional<Rational> rational(Answer answer) {
    if (answer instanceof Answer.Exact exact && exact.value() instanceof RationalValue number) {
      return Optional.of(number.number());
    }
    return answer instanceof Answer.Count count
        ? Optional.of(Rational.of(count.number()))
        : Optional.empty();
  }
}
