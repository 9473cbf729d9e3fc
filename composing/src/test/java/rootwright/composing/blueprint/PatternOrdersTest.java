package rootwright.composing.blueprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.composing.hint.HintLadder;
import rootwright.composing.level.Level;
import rootwright.composing.pattern.Pattern;
import rootwright.composing.pattern.Patterns;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.Subjects;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** Orders for statements that are not about the roots of one polynomial with numbers alone. */
class PatternOrdersTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261);

  private final Kinds kinds = new Kinds();
  private final Composer composer = new Composer(kinds);
  private final Subjects subjects = new Subjects(kinds);

  static Stream<Pattern> patterns() {
    return Patterns.ALL.stream();
  }

  private static Blueprint order(Pattern pattern, int many) {
    return Blueprint.USUAL
        .withAsk(new AskWish.OfFamily(pattern.name()))
        .withMany(many)
        .withSeed(SEED);
  }

  private Composition composed(Blueprint order) throws Exception {
    return composer.compose(order, Set.of(), ScanControl.alone());
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void everyProblemOfAPatternIsSoundNewAndTheSameWhenItIsReadAndWorkedAgain(Pattern pattern)
      throws Exception {
    Composition composition = composed(order(pattern, 2));
    assertThat(composition.problems()).as("%s, seed %d", pattern.name(), SEED).hasSize(2);
    Set<String> fingerprints = new HashSet<>();
    for (Composed each : composition.problems()) {
      Solution again = subjects.work(each.statement(), ClassProfile.EVERYTHING);
      assertThat(again.kind()).isEqualTo(pattern.kind());
      assertThat(again.answer()).isEqualTo(each.solution().answer());
      assertThat(again.second().agrees()).isTrue();
      assertThat(again.routes()).isNotEmpty();
      assertThat(fingerprints.add(Fingerprint.of(again.given()).text())).isTrue();
      assertThat(each.choices().key().value()).isEqualTo(again.answer());
      assertThat(Level.of(again)).isPresent();
      assertThat(HintLadder.of(again).orElseThrow().rungs()).hasSize(HintLadder.RUNGS);
      assertThat(KnownNames.ROUTES)
          .containsAll(again.routes().stream().map(working -> working.route()).toList());
      assertThat(KnownNames.SLIPS)
          .containsAll(again.slips().stream().map(slip -> slip.name()).toList());
    }
  }

  @Test
  void theResultDoesNotDependOnTheNumberOfThreads() throws Exception {
    Blueprint order = order(Patterns.named("greatest-of-reals").orElseThrow(), 4);
    ExecutorService executor = Executors.newFixedThreadPool(3);
    try {
      Composition shared = composer.compose(order, Set.of(), ScanControl.shared(executor, 3));
      Composition alone = composed(order);
      assertThat(statements(shared)).isEqualTo(statements(alone));
      assertThat(shared.rejected()).isEqualTo(alone.rejected());
      assertThat(shared.counts()).isEqualTo(alone.counts());
    } finally {
      executor.shutdownNow();
    }
  }

  private static List<Statement> statements(Composition composition) {
    return composition.problems().stream().map(Composed::statement).toList();
  }

  @Test
  void whatIsOnTheShelfIsNotComposedAgainNorItsTwins() throws Exception {
    Blueprint order = order(Patterns.named("letter-opposite-roots").orElseThrow(), 4);
    Set<String> known = new HashSet<>();
    for (Statement statement : statements(composed(order))) {
      known.add(Fingerprint.of(subjects.read(statement)).text());
    }
    Composition other = composer.compose(order, known, ScanControl.alone());
    assertThat(other.problems())
        .hasSize(4)
        .noneMatch(each -> known.contains(Fingerprint.of(each.solution().given()).text()));
    assertThat(other.rejected()).containsKey("a twin of a problem to stay away from");
  }

  /** Every kind of ask that a statement can be worked as can be ordered under its name. */
  @Test
  void theKindsThatCanBeOrderedAreThoseOfTheFamiliesAndThePatterns() {
    Set<String> kinds = new TreeSet<>(KnownNames.kinds());
    assertThat(kinds)
        .containsAll(this.kinds.names())
        .contains(
            "letters",
            "relation",
            "letter-region",
            "extreme",
            "function",
            "pairs",
            "resultant",
            "common-roots",
            "common-root",
            "integer-roots",
            "integer-numbers",
            "vieta-jumping",
            "polynomial-of-numbers",
            "bound",
            "identity",
            "period",
            "recurrence",
            "generating-function",
            "divisibility",
            "floor",
            "roots-of-composition",
            "value-of-polynomial",
            "roots-of-roots",
            "disguised-equation",
            "triangle");
  }

  @Test
  void aSurpriseMixesTheKindsThatItNames() throws Exception {
    Composition composition =
        composed(
            Blueprint.USUAL
                .withAsk(new AskWish.Surprise(Set.of("bound", "floor", "triangle")))
                .withMany(5)
                .withSeed(SEED));
    assertThat(composition.problems()).hasSize(5);
    assertThat(composition.problems().stream().map(each -> each.solution().kind()).distinct())
        .containsExactlyInAnyOrder("bound", "floor", "triangle");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "k if roots in arithmetic progression | k if the roots are in arithmetic progression",
        "k if r = 3s | k if r = 3s",
        "k if s t = 1 | k if s t = 1",
        "m if 2 is a root | m if 2 is a root",
        "sum of the roots of P(P(x)) = 1 | sum of the roots of P(P(x)) = 1",
      })
  void anAskThatIsTypedIsAskedOfFreshPolynomials(String ask, String same) throws Exception {
    Composition composition =
        composed(Blueprint.USUAL.withAsk(new AskWish.Given(ask)).withMany(2).withSeed(SEED));
    assertThat(composition.problems()).as(ask).hasSize(2);
    for (Composed each : composition.problems()) {
      assertThat(subjects.read(Statement.of(each.statement().polynomial(), same)).conditions())
          .isEqualTo(each.solution().given().conditions());
    }
  }

  @Test
  void anAskThatBringsItsOwnDataIsVariedInItsNumbers() throws Exception {
    Composition composition =
        composed(
            Blueprint.USUAL
                .withAsk(new AskWish.Given("x^5 + y^5 if x + y = 3, x y = 7"))
                .withMany(3)
                .withSeed(SEED));
    assertThat(statements(composition))
        .hasSize(3)
        .allMatch(each -> each.find().matches("x\\^5 \\+ y\\^5 if x \\+ y = \\d+, x y = \\d+"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "letter-double-root | 5 | whole | no-rational | have degree 3, not 5",
        "descent | 4 | whole | no-rational | has no degree to choose",
        "letter-real-roots | 3 | 0..999 | no-rational | are ranges, so none is as wished, “0..999”",
        "identity-under-condition | 3 | =7 | no-rational | are yes or no",
        "two-numbers | 3 | =1/2 | no-rational | are whole numbers, so none is 1/2",
        "triangle | 3 | whole | irreducible | the roots cannot be chosen for the family triangle",
      })
  void wishesThatMakeNoSenseForAPatternAreNamed(
      String name, int degree, String answer, String roots, String said) {
    Blueprint order =
        order(Patterns.named(name).orElseThrow(), 2)
            .withPolynomial(
                PolynomialWish.USUAL.withDegree(degree).withRoots(RootsWish.parse(roots)))
            .withAnswer(AnswerWish.parse(answer));
    assertThatThrownBy(() -> composed(order))
        .isInstanceOf(ContradictoryBlueprintException.class)
        .hasMessageContaining(said);
  }

  @Test
  void aPatternWithFewMembersEndsBeforeTheOrderIsFilled() throws Exception {
    Composition composition =
        composed(order(Patterns.named("letters-relation").orElseThrow(), Blueprint.MOST));
    assertThat(composition.problems()).hasSizeBetween(5, 20);
    assertThat(composition.ending()).isEqualTo(Composition.Ending.GIVEN_UP);
    assertThat(composition.rejected())
        .containsKey("a twin of one that was looked at before: same problem");
  }

  @Test
  void theAnswerOfAPatternIsAsWished() throws Exception {
    Composition composition =
        composed(
            order(Patterns.named("two-numbers").orElseThrow(), 3)
                .withAnswer(new AnswerWish.Between(0, 999)));
    assertThat(composition.problems()).hasSize(3);
    assertThat(composition.problems())
        .allMatch(
            each -> Judgement.answer(each.solution(), new AnswerWish.Between(0, 999)).isEmpty());
  }
}
