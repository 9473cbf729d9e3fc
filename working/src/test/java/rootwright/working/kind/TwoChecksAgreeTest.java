package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import cc.redberry.rings.Rings;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariateResultants;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.check.ClaimCheck;
import rootwright.working.check.Verdict;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.exact.Valuation;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Routes;
import rootwright.working.slip.Slips;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/** The two checks against each other, and an unlike library against the answers. */
class TwoChecksAgreeTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20260102L);
  private static final List<String> ROOTS = List.of("r", "s", "t", "u", "v");
  private static final List<String> SYMMETRIC =
      List.of(
          "sum r^2",
          "sum r^5",
          "sum r^3 s",
          "sum r^2 s^2",
          "product (r^2 + r + 3)",
          "sum (r+s)^3",
          "sum 1/(r^2+1)",
          "sum r/s",
          "S_7 - 3 e_2 h_2");

  private final ClaimCheck exact = new ExactCheck();
  private final ClaimCheck second = new EnclosureCheck();

  private static Polynomial random(SplittableRandom random, int degree) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k < degree; k++) {
      ascending.add(Rational.of(random.nextInt(-6, 7)));
    }
    ascending.add(Rational.of(random.nextInt(1, 4)));
    return Polynomial.ofAscending(ascending);
  }

  private static Problem problem(Polynomial polynomial, List<String> names, Formula ask) {
    return new Problem(
        polynomial, PolynomialFormula.of(polynomial, "x"), "x", names, ask, List.of());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sum r^2",
        "sum r^5",
        "sum r^3 s",
        "sum r^2 s^2",
        "product (r^2 + r + 3)",
        "sum (r+s)^3",
        "sum 1/(r^2+1)",
        "sum r/s",
        "S_7 - 3 e_2 h_2",
      })
  void bothConfirmWhatIsTrueAndBothRefuteWhatIsNearlyTrue(String ask) throws Exception {
    SplittableRandom random = new SplittableRandom(SEED);
    Formula formula = FormulaReader.formula(ask);
    for (int round = 0; round < 12; round++) {
      Polynomial p = random(random, random.nextInt(2, 6));
      Setting setting = Setting.of(p, ROOTS.subList(0, p.degree()));
      if (!(Valuation.of(formula, setting) instanceof Valuation.Determined determined)) {
        continue;
      }
      String place = "seed %d: %s of %s".formatted(SEED, ask, p);
      Claim right = Claim.equal(setting, formula, Formula.number(determined.value()));
      assertThat(exact.of(right).isConfirmed()).as(place).isTrue();
      assertThat(second.of(right).isConfirmed()).as(place).isTrue();
      Rational near = determined.value().plus(Rational.of(1, 1_000_000_007));
      Claim wrong = Claim.equal(setting, formula, Formula.number(near));
      assertThat(exact.of(wrong)).as(place).isInstanceOf(Verdict.Refuted.class);
      assertThat(second.of(wrong)).as(place).isInstanceOf(Verdict.Refuted.class);
    }
  }

  @Test
  void scalingThePolynomialChangesNoAnswer() throws Exception {
    SplittableRandom random = new SplittableRandom(SEED);
    for (String ask : SYMMETRIC) {
      Polynomial p = random(random, 3);
      Rational factor = Rational.of(random.nextInt(2, 9), random.nextInt(-7, 0));
      Formula formula = FormulaReader.formula(ask);
      List<String> names = ROOTS.subList(0, 3);
      assertThat(Valuation.of(formula, Setting.of(p.times(factor), names)))
          .as("seed %d: %s of %s times %s", SEED, ask, p, factor)
          .isEqualTo(Valuation.of(formula, Setting.of(p, names)));
    }
  }

  @Test
  void renamingTheRootsChangesNoSymmetricAnswer() throws Exception {
    SplittableRandom random = new SplittableRandom(SEED);
    List<String> turned = List.of("t", "r", "s");
    List<String> exchanged = List.of("s", "r", "t");
    for (String ask :
        List.of(
            "r^2 + s^2 + t^2",
            "(r+s)(s+t)(t+r)",
            "r/s+s/r+s/t+t/s+t/r+r/t",
            "r^2 s + s^2 t + t^2 r + r s^2 + s t^2 + t r^2",
            "1/(r-9) + 1/(s-9) + 1/(t-9)")) {
      Polynomial p = random(random, 3);
      Formula formula = FormulaReader.formula(ask);
      Valuation usual = Valuation.of(formula, Setting.of(p, ROOTS.subList(0, 3)));
      assertThat(Valuation.of(formula, Setting.of(p, turned))).isEqualTo(usual);
      assertThat(Valuation.of(formula, Setting.of(p, exchanged))).isEqualTo(usual);
    }
  }

  /** Π g(r) is Res(P, g)/a^m: the resultant is computed by an independent library. */
  @Test
  void productsOverTheRootsAreTheResultantsOfAnIndependentLibrary() throws Exception {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 40; round++) {
      Polynomial p = random(random, random.nextInt(1, 6));
      Polynomial g = random(random, random.nextInt(1, 4));
      Formula ask =
          new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, PolynomialFormula.of(g, "r"));
      Problem problem = problem(p, ROOTS.subList(0, p.degree()), ask);
      Answer answer = new Kinds().solve(problem, ClassProfile.EVERYTHING).answer();
      Rational resultant =
          new Rational(
              new BigInteger(UnivariateResultants.Resultant(rings(p), rings(g)).toString()),
              BigInteger.ONE);
      assertThat(answer)
          .as("seed %d, round %d: %s of %s", SEED, round, g, p)
          .isEqualTo(Answer.exact(resultant.over(p.lead().power(g.degree()))));
    }
  }

  private static UnivariatePolynomial<cc.redberry.rings.bigint.BigInteger> rings(Polynomial p) {
    cc.redberry.rings.bigint.BigInteger[] ascending =
        new cc.redberry.rings.bigint.BigInteger[p.degree() + 1];
    for (int k = 0; k <= p.degree(); k++) {
      ascending[k] =
          new cc.redberry.rings.bigint.BigInteger(p.coefficient(k).numerator().toString());
    }
    return UnivariatePolynomial.create(Rings.Z, ascending);
  }

  @Test
  void anAnswerThatACheckRefutesIsNotGivenOut() throws Exception {
    Problem problem = ProblemReader.read(Statement.of("x^3-4x+1", "S_4"));
    ClaimCheck refuting = claim -> new Verdict.Refuted("made wrong on purpose");
    assertThatExceptionOfType(CheckFailedException.class)
        .isThrownBy(
            () ->
                new Kinds(Routes.ALL, Slips.ALL, new TwoChecks(exact, refuting))
                    .solve(problem, ClassProfile.EVERYTHING))
        .withMessageContaining("made wrong on purpose");
    assertThatExceptionOfType(CheckFailedException.class)
        .isThrownBy(
            () ->
                new Kinds(Routes.ALL, Slips.ALL, new TwoChecks(refuting, second))
                    .solve(problem, ClassProfile.EVERYTHING));
  }

  @Test
  void anAnswerThatACheckCannotConfirmIsNotGivenOut() throws Exception {
    Problem problem = ProblemReader.read(Statement.of("x^3-4x+1", "S_4"));
    ClaimCheck silent = claim -> new Verdict.Undecided("it cannot be said");
    Answer answer =
        new Kinds(Routes.ALL, Slips.ALL, new TwoChecks(exact, silent))
            .solve(problem, ClassProfile.EVERYTHING)
            .answer();
    assertThat(answer).isInstanceOf(Answer.Refused.class);
  }

  @Test
  void anExpressionThatRepeatedRootsMakeSingleValuedIsConfirmedByBoth() {
    assertThat(Worked.text("x^2-2x+1", "r - s")).isEqualTo("0");
    assertThat(Worked.text("x^2-2x+1", "r^3 + 2 s")).isEqualTo("3");
    assertThat(Worked.text("(x+2)^3", "r^2 s")).isEqualTo("-8");
    assertThat(Worked.text("(x-1)^2 (x+1)^2", "r^2")).isEqualTo("1");
  }
}
