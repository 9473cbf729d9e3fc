package rootwright.working.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.StatedWithLetters;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.step.Claim;
import rootwright.working.step.LetteredSetting;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;

/** What both checks say of claims with letters, true ones and false ones. */
class ClaimsWithLettersTest {

  private final List<ClaimCheck> checks = List.of(new ExactCheck(), new EnclosureCheck());

  @Test
  void identitiesInSeveralLettersAreConfirmedAndNearIdentitiesRefuted() throws Exception {
    Setting abc = Setting.ofLetters(List.of("a", "b", "c"));
    confirmed(abc, "a^3 + b^3 + c^3 - 3abc", "(a+b+c)(a^2+b^2+c^2-ab-bc-ca)");
    refuted(abc, "a^3 + b^3 + c^3 - 2abc", "(a+b+c)(a^2+b^2+c^2-ab-bc-ca)");
    confirmed(abc, "1/(a-b) + 1/(b-a)", "0");
    confirmed(abc, "(a^2-b^2)/(a-b)", "a+b");
    refuted(abc, "(a^2-b^2)/(a-b)", "a-b");
    confirmed(abc, "(a+b)^9 - (a+b)^8 (a+b)", "0");
  }

  @Test
  void symmetricExpressionsAreFunctionsOfTheLettersInTheCoefficients() throws Exception {
    LetteredSetting cubic = lettered("x^3 - 9x^2 + kx - 24", List.of("r", "s", "t"));
    confirmed(cubic, "Σ r^2", "81 - 2k");
    refuted(cubic, "Σ r^2", "81 + 2k");
    confirmed(cubic, "Σ 1/r", "k/24");
    confirmed(cubic, "S_3", "729 - 27k + 72");
    confirmed(cubic, "Σ 1/(r-1)", "-P'(1)/P(1)");
    confirmed(cubic, "Π (r - 2s)", "36(k-26)^2 (k+34)");
    confirmed(cubic, "S_(-2)", "(k/24)^2 - 18/24");
    confirmed(cubic, "r + s", "9 - t");
    confirmed(cubic, "r^4", "9r^3 - k r^2 + 24r");
    refuted(cubic, "r + s", "9 + t");
  }

  @Test
  void severalLettersAndALeadWithALetterAreCompared() throws Exception {
    LetteredSetting quadratic = lettered("a x^2 + b x + c", List.of("r", "s"));
    confirmed(quadratic, "(r - s)^2", "(b^2 - 4a c)/a^2");
    confirmed(quadratic, "r^3 + s^3", "(3a b c - b^3)/a^3");
    refuted(quadratic, "r^3 + s^3", "(3a b c + b^3)/a^3");
    confirmed(lettered("x^3 + p x + q", List.of("r", "s", "t")), "Π (r-s)^2", "-4p^3 - 27q^2");
  }

  @Test
  void solutionSetsHoldEverySolutionInTheDomainAndNothingElse() {
    Polynomial equation =
        Polynomial.ofDescending(1, 0, -3, 2).times(Polynomial.ofDescending(1, 0, 1));
    ExactValue one = new RationalValue(Rational.ONE);
    ExactValue minusTwo = new RationalValue(Rational.of(-2));
    List<ExactValue> all = ExactValues.rootsOf(equation).stream().map(ExactRoot::value).toList();
    solutions(equation, NumberDomain.COMPLEX, all, true);
    solutions(equation, NumberDomain.COMPLEX, List.of(minusTwo, one), false);
    solutions(equation, NumberDomain.REAL, List.of(minusTwo, one), true);
    solutions(equation, NumberDomain.REAL, List.of(one), false);
    solutions(equation, NumberDomain.POSITIVE, List.of(one), true);
    solutions(equation, NumberDomain.NEGATIVE, List.of(minusTwo), true);
    solutions(equation, NumberDomain.INTEGER, List.of(minusTwo, one), true);
    solutions(equation, NumberDomain.POSITIVE_INTEGER, List.of(one), true);
    solutions(Polynomial.ofDescending(2, -3, 1), NumberDomain.INTEGER, List.of(one), true);
    solutions(Polynomial.ofDescending(1, 0, -2), NumberDomain.RATIONAL, List.of(), true);
    solutions(Polynomial.ONE, NumberDomain.REAL, List.of(), true);
    solutions(Polynomial.ONE, NumberDomain.REAL, List.of(one), false);
  }

  @Test
  void aSettingAtANumberWhereTheLeadVanishesIsNone() throws Exception {
    LetteredSetting quadratic = lettered("(m-3)x^2 - 2m x + m + 2", List.of("r", "s"));
    assertThat(quadratic.at(Map.of("m", Rational.of(3)))).isEmpty();
    assertThat(quadratic.at(Map.of("m", Rational.of(4))).orElseThrow().polynomial())
        .isEqualTo(Polynomial.ofDescending(1, -8, 6));
  }

  private void solutions(
      Polynomial equation, NumberDomain domain, List<ExactValue> values, boolean right) {
    for (ClaimCheck check : checks) {
      assertThat(check.of(new Claim.SolutionSet(equation, domain, values)))
          .as("%s of %s among %s", check, equation, domain)
          .isInstanceOf(right ? Verdict.Confirmed.class : Verdict.Refuted.class);
    }
  }

  private void confirmed(Setting setting, String left, String right) throws Exception {
    every(Claim.equal(setting, read(left), read(right)), Verdict.Confirmed.class);
  }

  private void refuted(Setting setting, String left, String right) throws Exception {
    every(Claim.equal(setting, read(left), read(right)), Verdict.Refuted.class);
  }

  private void confirmed(LetteredSetting setting, String left, String right) throws Exception {
    every(Claim.equal(setting, read(left), read(right)), Verdict.Confirmed.class);
  }

  private void refuted(LetteredSetting setting, String left, String right) throws Exception {
    every(Claim.equal(setting, read(left), read(right)), Verdict.Refuted.class);
  }

  private void every(Claim claim, Class<? extends Verdict> verdict) {
    for (ClaimCheck check : checks) {
      assertThat(check.of(claim))
          .as("%s of %s", check.getClass().getSimpleName(), claim)
          .isInstanceOf(verdict);
    }
  }

  private static Formula read(String text) throws UnreadableException {
    return FormulaReader.formula(text);
  }

  private static LetteredSetting lettered(String text, List<String> roots)
      throws UnreadableException {
    StatedWithLetters stated = PolynomialReader.readWithLetters(text);
    return LetteredSetting.of(stated.letters(), stated.polynomial(), roots);
  }
}
