package rootwright.composing.scan.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.fail;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.BruteForce;
import rootwright.composing.scan.Expressions;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CoefficientRange;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.candidate.Workspace;

/** Every filter, in both its forms, against a slow test of each candidate. */
class FilterTruthTest {

  private static final long SEED = Long.getLong("rootwright.seed", 77L);

  /** Whole boxes of each degree, small enough to factor every candidate. */
  private static final List<CoefficientBox> WHOLE =
      List.of(
          CoefficientBox.upTo(1, 6),
          CoefficientBox.upTo(2, 6),
          CoefficientBox.upTo(3, 3),
          CoefficientBox.upTo(4, 1).with(0, CoefficientRange.upTo(6)),
          CoefficientBox.monicUpTo(5, 1),
          CoefficientBox.upTo(3, 2).with(3, CoefficientRange.only(12)));

  /** Boxes of which some rows are drawn; the last ones leave 64 bits. */
  private static final List<CoefficientBox> SAMPLED =
      List.of(
          CoefficientBox.upTo(3, 150),
          CoefficientBox.upTo(4, 40),
          CoefficientBox.upTo(5, 5),
          CoefficientBox.upTo(6, 3),
          sizes(100_000_000L, 100_000_000L, 20),
          sizes(100_000L, 100_000L, 100_000L, 20),
          sizes(60_000L, 60_000L, 60_000L, 20, 20));

  private static CoefficientBox sizes(long... descending) {
    return CoefficientBox.descending(
        Arrays.stream(descending)
            .mapToObj(CoefficientRange::upTo)
            .toArray(CoefficientRange[]::new));
  }

  @Test
  void distinctRootsAgreesWithSquarefree() {
    agrees(new DistinctRoots(BruteForce.EXACT), BruteForce::isSquarefree);
  }

  @Test
  void noRationalRootAgreesWithTheFactors() {
    agrees(
        new NoRationalRoot(BruteForce.EXACT),
        polynomial -> !BruteForce.hasRationalRoot(polynomial));
  }

  @Test
  void irreducibleAgreesWithTheFactors() {
    agrees(new Irreducible(BruteForce.EXACT), BruteForce::isIrreducible);
  }

  @Test
  void realRootCountsAgreeWithHermitesForm() {
    Map<Polynomial, Integer> counts = new HashMap<>();
    for (int count = 0; count <= 5; count++) {
      int wanted = count;
      agrees(
          new RealRootCount(wanted, BruteForce.EXACT),
          polynomial -> counts.computeIfAbsent(polynomial, BruteForce::realRoots) == wanted);
    }
  }

  @Test
  void primitiveAgreesWithTheContent() {
    agrees(
        new Primitive(),
        polynomial ->
            polynomial.primitive().lead().absolute().equals(polynomial.lead().absolute()));
  }

  @Test
  void positiveLeadLooksAtTheLead() {
    agrees(new PositiveLead(), polynomial -> polynomial.lead().signum() > 0);
  }

  @Test
  void answerShapesAgreeWithTheExactValue() {
    List<AnswerShape> shapes =
        List.of(
            new WholeNumber(),
            new IntegerBetween(0, 9),
            new SmallDenominator(3),
            new WantedNumber(Rational.of(-5, 4)),
            new NonZero(),
            new NoCoefficient());
    for (CompiledExpression expression :
        List.of(
            Expressions.sumOfSquareTimesOther(3),
            Expressions.sumOfReciprocalSquares(),
            Expressions.sumOfCubes(3))) {
      for (AnswerShape shape : shapes) {
        CandidateFilter filter = new AnswerFilter(expression, shape);
        for (CoefficientBox box :
            List.of(
                CoefficientBox.upTo(3, 4),
                CoefficientBox.upTo(3, 2).with(0, CoefficientRange.upTo(60)),
                CoefficientBox.upTo(3, 2).with(0, CoefficientRange.upTo(3_000_000_000L)),
                sizes(3_000_000L, 3_000_000L, 1_000L, 9))) {
          rowsAgree(
              filter,
              box,
              box.rows() < 1_000 ? box.rows() : 40,
              ascending -> {
                var value = expression.valueAt(ascending);
                return value.isPresent() && looksLike(shape, value.get(), ascending);
              });
        }
      }
    }
  }

  /** The shapes once more, written from their sentences. */
  private static boolean looksLike(AnswerShape shape, Rational value, long[] ascending) {
    return switch (shape.name()) {
      case "answer-integer" -> value.isInteger();
      case "answer-between-0-and-9" ->
          value.isInteger() && value.signum() >= 0 && value.compareTo(Rational.of(9)) <= 0;
      case "answer-denominator-up-to-3" -> value.times(2).isInteger() || value.times(3).isInteger();
      case "answer-equal-to--5/4" -> value.equals(Rational.of(-5, 4));
      case "answer-not-zero" -> value.signum() != 0;
      default -> {
        boolean fresh = true;
        for (long coefficient : ascending) {
          Rational number = Rational.of(coefficient);
          fresh &= !value.equals(number) && !value.equals(number.negate());
        }
        yield fresh;
      }
    };
  }

  @Test
  void answerDefinedLooksAtTheDenominator() {
    CompiledExpression expression = Expressions.sumOfReciprocalSquares();
    rowsAgree(
        new AnswerDefined(expression),
        CoefficientBox.upTo(3, 3),
        CoefficientBox.upTo(3, 3).rows(),
        ascending -> ascending[0] != 0);
  }

  @Test
  void ofMirrorImagesExactlyOneStays() {
    CoefficientBox box = CoefficientBox.upTo(4, 2).with(3, new CoefficientRange(-2, 1));
    CandidateFilter filter = new MirrorNormalForm(box, Expressions.sumOfSquares(4));
    for (long index = 0; index < box.candidates(); index++) {
      long[] own = box.coefficientsAt(index);
      long[] image = {own[0], -own[1], own[2], -own[3], own[4]};
      if (own[1] == 0 && own[3] == 0 || !box.contains(image)) {
        assertThat(filter.passes(own)).isTrue();
      } else {
        assertThat(filter.passes(own)).isNotEqualTo(filter.passes(image));
      }
    }
  }

  @Test
  void mirrorNormalFormOfRowsAgreesWithTheSingleForm() {
    for (CoefficientBox box :
        List.of(
            CoefficientBox.upTo(3, 2),
            CoefficientBox.upTo(4, 2),
            CoefficientBox.upTo(3, 2).with(0, new CoefficientRange(-1, 2)))) {
      CandidateFilter filter = new MirrorNormalForm(box, Expressions.sumOfSquares(box.degree()));
      rowsAgree(filter, box, box.rows(), filter::passes);
    }
  }

  @Test
  void mirrorNormalFormRefusesAnExpressionThatTheMirrorChanges() {
    CompiledExpression mixed =
        CompiledExpression.of(2, Expressions.elementary(1).plus(Expressions.elementary(2)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MirrorNormalForm(CoefficientBox.upTo(2, 3), mixed))
        .withMessageContaining("mirror");
  }

  private static void agrees(CandidateFilter filter, Predicate<Polynomial> truth) {
    for (CoefficientBox box : WHOLE) {
      rowsAgree(
          filter, box, box.rows(), ascending -> truth.test(CoefficientBox.polynomial(ascending)));
    }
    for (CoefficientBox box : SAMPLED) {
      rowsAgree(filter, box, 4, ascending -> truth.test(CoefficientBox.polynomial(ascending)));
    }
  }

  /** Compares the row form and the single form with the truth, on all rows or on drawn ones. */
  private static void rowsAgree(
      CandidateFilter filter, CoefficientBox box, long rows, Predicate<long[]> truth) {
    SplittableRandom random = new SplittableRandom(SEED);
    RowTest test = filter.rowTest(new Workspace(box));
    Row row = new Row(box);
    Survivors alive = new Survivors(box.rowLength());
    long[] ascending = new long[box.degree() + 1];
    for (long k = 0; k < rows; k++) {
      row.moveTo(rows == box.rows() ? k : random.nextLong(box.rows()));
      alive.fill(row.length());
      // Places that are already out must stay out.
      int out = random.nextInt(row.length());
      alive.remove(out);
      test.screen(row, alive);
      int step = Math.max(1, row.length() / 100);
      for (int place = 0; place < row.length(); place += step) {
        row.copyTo(place, ascending);
        boolean expected = truth.test(ascending);
        // Hundreds of thousands of comparisons: words are made for a failing one only.
        if (filter.passes(ascending) != expected) {
          fail(
              filter.name() + " alone, seed " + SEED + ": " + CoefficientBox.polynomial(ascending));
        }
        if (alive.contains(place) != (expected && place != out)) {
          fail(filter.name() + " row, seed " + SEED + ": " + CoefficientBox.polynomial(ascending));
        }
      }
    }
  }
}
