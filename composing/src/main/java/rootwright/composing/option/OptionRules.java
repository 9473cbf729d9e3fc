package rootwright.composing.option;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;

/**
 * Which wrong answers may stand together beside a key so that none of them, and not the key, gives
 * itself away by form, size or sign.
 */
final class OptionRules {

  private static final Rational SMALLEST_RATIO = Rational.of(1, 8);
  private static final Rational LARGEST_RATIO = Rational.of(8);

  /** Most characters by which a wrong answer may be longer than the key. */
  private static final int LONGER = 3;

  private final Answer key;
  private final Form keyForm;
  private final Optional<Rational> keyNumber;
  private final int keyLength;

  OptionRules(Answer key) {
    this.key = key;
    this.keyForm = Form.of(key);
    this.keyNumber = Numbers.rational(key);
    this.keyLength = Numbers.text(key).length();
  }

  /** Whether the size of a wrong answer is near enough to the key's, or so many land there. */
  boolean nearInSize(WrongValue wrong) {
    Optional<Rational> number = Numbers.rational(wrong.value());
    if (wrong.isCommon() || keyNumber.isEmpty() || number.isEmpty()) {
      return true;
    }
    if (Numbers.text(wrong.value()).length() > keyLength + LONGER) {
      return false;
    }
    if (keyNumber.get().isZero()) {
      return true;
    }
    Rational ratio = number.get().over(keyNumber.get()).absolute();
    return ratio.compareTo(SMALLEST_RATIO) >= 0 && ratio.compareTo(LARGEST_RATIO) <= 0;
  }

  /** Whether these wrong answers may stand together beside the key. */
  boolean allow(List<WrongValue> wrong) {
    Map<Form, Integer> forms = forms(wrong);
    int alike = forms.getOrDefault(keyForm, 0);
    return alike >= Math.min(2, wrong.size()) && noLoneSurd(forms) && signsHideTheKey(wrong);
  }

  /** As {@link #allow}, for when so few wrong answers are known that signs cannot be chosen. */
  boolean tolerate(List<WrongValue> wrong) {
    Map<Form, Integer> forms = forms(wrong);
    return (wrong.isEmpty() || forms.getOrDefault(keyForm, 0) >= 1) && noLoneSurd(forms);
  }

  /** How many of these are better avoided: what is not whole beside a whole key. */
  int unlike(List<WrongValue> wrong) {
    return keyForm == Form.INTEGER ? wrong.size() - forms(wrong).getOrDefault(Form.INTEGER, 0) : 0;
  }

  /** Whether the key would be longer than every other choice. */
  boolean keyIsLongest(List<WrongValue> wrong) {
    return wrong.stream().allMatch(other -> Numbers.text(other.value()).length() < keyLength);
  }

  private static boolean noLoneSurd(Map<Form, Integer> forms) {
    return forms.getOrDefault(Form.SURD, 0) != 1 || forms.size() == 1;
  }

  /** At most two of the other sign; round the key 0, some of each sign. */
  private boolean signsHideTheKey(List<WrongValue> wrong) {
    if (keyNumber.isEmpty()) {
      return true;
    }
    long above = wrong.stream().filter(other -> sign(other) > 0).count();
    long below = wrong.stream().filter(other -> sign(other) < 0).count();
    return switch (keyNumber.get().signum()) {
      case 0 -> above > 0 && below > 0;
      case 1 -> below <= 2;
      default -> above <= 2;
    };
  }

  private static int sign(WrongValue wrong) {
    return Numbers.rational(wrong.value()).map(Rational::signum).orElse(0);
  }

  private static Map<Form, Integer> forms(List<WrongValue> wrong) {
    Map<Form, Integer> forms = new EnumMap<>(Form.class);
    wrong.forEach(other -> forms.merge(Form.of(other.value()), 1, Integer::sum));
    return forms;
  }

  /** How many of these lie below the key, which is the place of the key among them. */
  int below(List<WrongValue> wrong) {
    return (int)
        wrong.stream().filter(other -> Numbers.ASCENDING.compare(other.value(), key) < 0).count();
  }
}
