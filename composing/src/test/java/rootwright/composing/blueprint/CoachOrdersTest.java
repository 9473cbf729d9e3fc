package rootwright.composing.blueprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.value.RationalValue;
import rootwright.composing.family.AskFamily;
import rootwright.composing.family.Families;
import rootwright.composing.level.Level;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.answer.Answer;
import rootwright.working.kind.Kinds;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/** Orders as a coach gives them, and what must come of each. */
class CoachOrdersTest {

  private final Composer composer = new Composer(new Kinds());

  private Composition compose(Blueprint order) throws Exception {
    return composer.compose(order, Set.of(), ScanControl.alone());
  }

  private static Rational key(Composed composed) {
    return ((RationalValue) ((Answer.Exact) composed.solution().answer()).value()).number();
  }

  @Test
  void twentyCubicsOfLevelThreeWithoutRationalRootsHaveWholeKeysConfirmedByTwoRoutes()
      throws Exception {
    Blueprint order =
        Blueprint.of("Σ 1/r^2", 3, 20, 41)
            .withWorking(WorkingWish.USUAL.withLevel(OptionalInt.of(3)));
    Composition composition = compose(order);
    assertThat(composition.ending()).isEqualTo(Composition.Ending.FILLED);
    assertThat(composition.problems()).hasSize(20);
    Set<String> fingerprints = new HashSet<>();
    for (Composed composed : composition.problems()) {
      assertThat(composed.solution().routes()).hasSizeGreaterThanOrEqualTo(2);
      assertThat(composed.solution().second().agrees()).isTrue();
      assertThat(key(composed).isInteger()).isTrue();
      assertThat(RationalRoots.of(polynomial(composed))).isEmpty();
      assertThat(polynomial(composed).isSquarefree()).isTrue();
      assertThat(Level.of(composed.solution()).orElseThrow().number()).isEqualTo(3);
      assertThat(fingerprints.add(Fingerprint.of(composed.solution().given()).text())).isTrue();
    }
    assertThat(composition.counts()).isNotEmpty().allMatch(count -> count.seen() > 0);
    assertThat(composition.rejected().keySet()).anyMatch(why -> why.matches("level [1245], not 3"));
  }

  @Test
  void aKeyOfZeroWithFiveChoicesHasWrongOptionsOnBothSides() throws Exception {
    Blueprint order =
        Blueprint.of("Σ r^2", 3, 3, 5)
            .withAnswer(new AnswerWish.Wanted(Rational.ZERO))
            .withChoices(5);
    for (Composed composed : compose(order).problems()) {
      assertThat(key(composed)).isEqualTo(Rational.ZERO);
      int size = composed.choices().options().size();
      if (size == 5) {
        assertThat(composed.choices().keyIndex()).isBetween(1, 3);
      } else {
        assertThat(composed.choices().fewer()).isPresent();
      }
    }
  }

  @Test
  void theYearCanBeWanted() throws Exception {
    Composition composition =
        compose(
            Blueprint.of("Σ r^2", 3, 3, 1)
                .withPolynomial(PolynomialWish.USUAL.withSize(60))
                .withAnswer(new AnswerWish.Wanted(Rational.of(2026))));
    assertThat(composition.problems()).hasSize(3);
    assertThat(composition.problems()).allMatch(each -> key(each).equals(Rational.of(2026)));
  }

  @Test
  void answersForAGridLieFromZeroTo999AndFractionsHaveSmallDenominators() throws Exception {
    Blueprint order = Blueprint.of("Π (2 - r)", 3, 6, 3);
    assertThat(compose(order.withAnswer(new AnswerWish.Between(0, 999))).problems())
        .hasSize(6)
        .allMatch(each -> key(each).isInteger() && key(each).signum() >= 0);
    assertThat(compose(order.withAnswer(new AnswerWish.Fraction(3))).problems())
        .hasSize(6)
        .allMatch(each -> key(each).denominator().intValue() <= 3);
  }

  @Test
  void allRootsRealOrNotAllIsKept() throws Exception {
    Blueprint order = Blueprint.of("Σ r^2", 4, 4, 2);
    assertThat(
            compose(order.withPolynomial(order.polynomial().withReal(new RealWish.All())))
                .problems())
        .hasSize(4)
        .allMatch(each -> SturmSequence.of(polynomial(each)).count() == 4);
    assertThat(
            compose(order.withPolynomial(order.polynomial().withReal(new RealWish.NotAll())))
                .problems())
        .hasSize(4)
        .allMatch(each -> SturmSequence.of(polynomial(each)).count() < 4);
  }

  @Test
  void leadsFromARangeAreNeverOneWhenTheRangeSaysSo() throws Exception {
    Blueprint order = Blueprint.of("Π (1 + r)", 3, 5, 9);
    assertThat(compose(order.withPolynomial(order.polynomial().withLead(2, 5))).problems())
        .hasSize(5)
        .noneMatch(each -> polynomial(each).lead().isOne());
  }

  @Test
  void oneRouteIsSoManyTimesShorterThanAnother() throws Exception {
    ShorterRoute wish = new ShorterRoute("evaluate", "build-from-e", Rational.of(2));
    Composition composition =
        compose(
            Blueprint.of("Π (r^2 + 1)", 3, 3, 6)
                .withWorking(WorkingWish.USUAL.withShorter(List.of(wish))));
    assertThat(composition.problems()).hasSize(3);
    for (Composed composed : composition.problems()) {
      assertThat(cost(composed, "build-from-e"))
          .isGreaterThanOrEqualTo(2 * cost(composed, "evaluate"));
    }
  }

  /** In tenths. */
  private static long cost(Composed composed, String route) {
    return composed.solution().routes().stream()
        .filter(working -> working.route().equals(route))
        .map(Working::cost)
        .findFirst()
        .orElseThrow()
        .total()
        .unscaledValue()
        .longValueExact();
  }

  @Test
  void namedSlipsEachGiveAWrongAnswerOfTheirOwn() throws Exception {
    Set<String> traps = Set.of("lead-forgotten", "cross-sign", "newton-count");
    Composition composition =
        compose(Blueprint.of("Σ r^2", 3, 5, 8).withWorking(WorkingWish.USUAL.withTraps(traps)));
    assertThat(composition.problems()).hasSize(5);
    for (Composed composed : composition.problems()) {
      Set<Answer> wrong = new HashSet<>();
      for (String trap : traps) {
        wrong.add(
            composed.solution().slips().stream()
                .filter(slip -> slip.name().equals(trap))
                .map(Solution.WrongTurning::value)
                .findFirst()
                .orElseThrow());
      }
      assertThat(wrong).hasSize(3).doesNotContain(composed.solution().answer());
    }
  }

  @Test
  void requiredAndForbiddenRoutesAreKept() throws Exception {
    Composition composition =
        compose(
            Blueprint.of("Π (r^2 + 1)", 3, 3, 4)
                .withWorking(
                    WorkingWish.USUAL
                        .withRoutes(Set.of("evaluate"))
                        .withoutRoutes(Set.of("rational-root"))));
    assertThat(composition.problems())
        .hasSize(3)
        .allMatch(each -> routes(each).contains("evaluate"))
        .noneMatch(each -> routes(each).contains("rational-root"));
  }

  private static List<String> routes(Composed composed) {
    return composed.solution().routes().stream().map(Working::route).toList();
  }

  @Test
  void aSurpriseMixesFamiliesAndAFamilyItsMembers() throws Exception {
    Blueprint order =
        Blueprint.USUAL.withMany(6).withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(1)));
    assertThat(asks(compose(order.withAsk(new AskWish.Surprise(Set.of()))))).hasSize(6);
    assertThat(asks(compose(order.withAsk(new AskWish.OfFamily("linear-product")))))
        .hasSizeGreaterThan(3);
  }

  private static Set<String> asks(Composition composition) {
    Set<String> asks = new HashSet<>();
    composition.problems().forEach(each -> asks.add(each.statement().find()));
    return asks;
  }

  @Test
  void everyKindOfAskThatIsWorkedHasAFamily() {
    assertThat(Families.kinds()).containsExactlyInAnyOrderElementsOf(new Kinds().names());
  }

  static Stream<Arguments> familiesAndDegrees() {
    return Families.ALL.stream()
        .flatMap(
            family ->
                Stream.of(3, family.asks(2).isEmpty() ? 4 : 2)
                    .filter(degree -> !family.asks(degree).isEmpty())
                    .map(degree -> Arguments.of(family.name(), degree)));
  }

  @ParameterizedTest
  @MethodSource("familiesAndDegrees")
  void everyFamilyGivesProblemsOfItsKind(String name, int degree) throws Exception {
    AskFamily family = Families.named(name).orElseThrow();
    Composition composition =
        compose(
            Blueprint.USUAL
                .withAsk(new AskWish.OfFamily(name))
                .withPolynomial(
                    PolynomialWish.USUAL.withDegree(degree).withSize(8).withRoots(RootsWish.ANY))
                .withAnswer(new AnswerWish.Any())
                .withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(0)))
                .withMany(1));
    assertThat(composition.problems()).as("%s", composition.rejected()).hasSize(1);
    Solution solution = composition.problems().get(0).solution();
    assertThat(solution.kind()).isEqualTo(family.kind());
    assertThat(solution.second().agrees()).isTrue();
    assertThat(solution.routes()).isNotEmpty();
  }

  @Test
  void conditionsStandInTheStatementOrAreShownToBeSuperfluous() throws Exception {
    Composed composed = compose(Blueprint.of("Σ 1/(2 - r)", 3, 1, 3)).problems().get(0);
    assertThat(composed.conditions())
        .extracting(Condition::words)
        .contains("distinct roots", "no denominator is zero");
    assertThat(composed.conditions())
        .filteredOn(condition -> condition.standing() == Condition.Standing.PUT_IN)
        .allSatisfy(
            condition -> assertThat(composed.solution().statement()).contains("complex roots"));
  }

  @Test
  void twinsAreTurnedAwayByNameAndShiftsAreReported() throws Exception {
    Blueprint all =
        Blueprint.of("Σ (r - s)^2", 2, 60, 1)
            .withPolynomial(new PolynomialWish(2, 5, 1, 1, RootsWish.DISTINCT, new RealWish.Open()))
            .withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(0)));
    Composition composition = compose(all);
    assertThat(composition.rejected())
        .containsKey("a twin of one that was looked at before: mirror image");
    // x² + 2x and x² − 1 have the differences of their roots in common, as have all shifts.
    assertThat(composition.problems())
        .filteredOn(each -> !each.remarks().isEmpty())
        .isNotEmpty()
        .allSatisfy(
            each -> assertThat(each.remarks().get(0)).contains("shifted: every root moved by"));
  }

  static Stream<Arguments> contradictions() {
    Blueprint usual = Blueprint.of("Σ r^2", 3, 5, 1);
    PolynomialWish cubics = usual.polynomial();
    PolynomialWish monic = cubics.withLead(1, 1);
    WorkingWish work = WorkingWish.USUAL;
    return Stream.of(
        Arguments.of(
            Blueprint.of("roots", 3, 1, 1).withPolynomial(cubics.withRoots(RootsWish.IRREDUCIBLE)),
            "an irreducible polynomial cannot have a rational root wanted here"),
        Arguments.of(
            usual
                .withPolynomial(cubics.withRoots(RootsWish.IRREDUCIBLE))
                .withWorking(work.withRoutes(Set.of("rational-root"))),
            "no rational root to split off"),
        Arguments.of(
            usual.withPolynomial(cubics.withReal(new RealWish.Exactly(2))), "2 real roots"),
        Arguments.of(
            usual.withPolynomial(monic).withAnswer(new AnswerWish.Wanted(Rational.of(1, 2))),
            "with lead 1 the answer is a whole number, so it cannot be 1/2"),
        Arguments.of(
            usual.withPolynomial(monic).withWorking(work.withTraps(Set.of("lead-forgotten"))),
            "with lead 1 the slip lead-forgotten gives the right answer"),
        Arguments.of(
            usual.withAnswer(new AnswerWish.Between(9, 5)), "no whole number lies between 9 and 5"),
        Arguments.of(
            usual.withPolynomial(cubics.withDegree(8).withSize(10_000)),
            "more than can be numbered"),
        Arguments.of(usual.withPolynomial(cubics.withLead(2, 40)), "larger than the size 12"),
        Arguments.of(
            usual.withWorking(work.withRoutes(Set.of("evaluat"))),
            "there is no route “evaluat”; the nearest is evaluate"),
        Arguments.of(
            usual.withWorking(work.withTraps(Set.of("lead-forgoten"))),
            "nearest is lead-forgotten"),
        Arguments.of(usual.withAsk(new AskWish.OfFamily("powersum")), "the nearest is power-sum"),
        Arguments.of(
            usual.withWorking(
                work.withoutRoutes(Set.of("newton"))
                    .withShorter(List.of(new ShorterRoute("newton", "evaluate", Rational.ONE)))),
            "the route newton is forbidden and must go through to be compared"),
        Arguments.of(
            Blueprint.of("Σ 1", 3, 1, 1).withAnswer(new AnswerWish.Wanted(Rational.of(5))),
            "for every polynomial"),
        Arguments.of(
            Blueprint.of("real roots", 3, 1, 1).withAnswer(new AnswerWish.Wanted(Rational.of(5))),
            "cannot have 5 real roots"),
        Arguments.of(
            Blueprint.of("polynomial with roots (2r - 1)", 3, 1, 1)
                .withAnswer(new AnswerWish.Wanted(Rational.of(5))),
            "an answer that is a polynomial cannot be the number wished"),
        Arguments.of(
            usual
                .withAsk(new AskWish.OfFamily("cover-up-sum"))
                .withPolynomial(cubics.withDegree(2)),
            "no ask of this family for degree 2"),
        Arguments.of(
            usual
                .withPolynomial(cubics.withReal(new RealWish.All()))
                .withAnswer(new AnswerWish.Wanted(Rational.of(-1))),
            "with all roots real a sum of even powers is not negative"),
        Arguments.of(usual.withMany(0), "the number must be from 1 to 500: 0"),
        Arguments.of(usual.withChoices(6), "choices must be three to five: 6"));
  }

  @ParameterizedTest
  @MethodSource("contradictions")
  void aContradictoryOrderIsToldItsContradiction(Blueprint order, String named) {
    assertThatThrownBy(() -> compose(order))
        .isInstanceOf(ContradictoryBlueprintException.class)
        .hasMessageContaining(named);
  }

  private static Polynomial polynomial(Composed composed) {
    return composed.solution().given().problem().orElseThrow().polynomial();
  }
}
