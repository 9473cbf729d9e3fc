package rootwright.desk.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** What there is to see of each kind of problem; numbers by hand, as said beside each. */
class PicturesTest {

  private static final Desk DESK = new Desk();

  private static Solution worked(Statement statement) throws Exception {
    return DESK.work(statement, ClassProfile.EVERYTHING);
  }

  private static List<Picture> pictures(String polynomial, String find) throws Exception {
    Statement statement = Statement.of(polynomial, find);
    return DESK.pictures().of(statement, worked(statement));
  }

  private static <P extends Picture> P picture(Class<P> kind, String polynomial, String find)
      throws Exception {
    return pictures(polynomial, find).stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLetterIsSeenByItsPolynomialAndTheValuesThatAreTheAnswer() throws Exception {
    LetterPicture picture = picture(LetterPicture.class, "x^3 - 9x^2 + kx - 24", "k if r = 2s");
    assertThat(picture.letter()).isEqualTo("k");
    assertThat(picture.values()).containsExactly(-34.0, 26.0);
    assertThat(picture.coefficients())
        .containsExactly(
            List.of(-24.0, 0.0), List.of(0.0, 1.0), List.of(-9.0, 0.0), List.of(1.0, 0.0));
  }

  /** x⁵ − 5x + k has its turning points at x = ±1 with heights k ∓ 4. */
  @Test
  void aRangeOfALetterKeepsItsEnds() throws Exception {
    LetterPicture picture = picture(LetterPicture.class, "x^5 - 5x + k", "k if three real roots");
    assertThat(picture.spans()).containsExactly(new LetterPicture.Span(-4, 4, false, false));
  }

  @Test
  void aRangeWithoutAnUpperEndIsSeenAsSuch() throws Exception {
    LetterPicture picture = picture(LetterPicture.class, "x^2 - 2(k+1)x + k^2", "k if roots real");
    assertThat(picture.spans())
        .containsExactly(new LetterPicture.Span(-0.5, Double.POSITIVE_INFINITY, true, false));
  }

  /** r² + s² = 4m² − 2m − 12, and the roots are real where m² ≥ m + 6, so for m ≤ −2 or m ≥ 3. */
  @Test
  void theLeastValueIsSeenOnItsGraphAndWhereItIsAllowed() throws Exception {
    GraphPicture picture =
        picture(GraphPicture.class, "x^2 - 2mx + m + 6", "least r^2+s^2 if roots real");
    assertThat(picture.levels()).containsExactly(8.0);
    assertThat(picture.allowed()).allMatch(place -> place.x() <= -2 || place.x() >= 3);
    assertThat(picture.barred()).allMatch(place -> place.x() > -2 && place.x() < 3);
    assertThat(picture.allowed())
        .allSatisfy(
            place ->
                assertThat(place.y())
                    .isCloseTo(4 * place.x() * place.x() - 2 * place.x() - 12, within(1e-9)));
  }

  /** x² − 4x + 3 = (x − 1)(x − 3) and x³ − 2x² − 5x + 6 = (x − 1)(x + 2)(x − 3). */
  @Test
  void twoPolynomialsAreSeenWithTheRootsTheyShare() throws Exception {
    PairPicture picture =
        picture(PairPicture.class, "x^3 - 2x^2 - 5x + 6 and x^2 - 4x + 3", "common roots");
    assertThat(picture.first())
        .extracting(PairPicture.PairedRoot::common)
        .containsExactly(false, true, true);
    assertThat(picture.second()).allMatch(PairPicture.PairedRoot::common);
  }

  @Test
  void theValueOfTheLetterIsPutIntoBothPolynomials() throws Exception {
    PairPicture picture =
        picture(
            PairPicture.class,
            "x^2 + kx + 10 and x^2 + 5x + 2k",
            "k if they share exactly one root");
    assertThat(picture.remark()).isEqualTo("k = -7");
    assertThat(picture.first()).filteredOn(PairPicture.PairedRoot::common).hasSize(1);
  }

  @Test
  void aBoundIsSeenBetweenTheLeastAndTheGreatest() throws Exception {
    RangePicture picture =
        picture(
            RangePicture.class, "", "greatest x if x+y+z+w=8, x^2+y^2+z^2+w^2=28, x, y, z, w real");
    assertThat(picture).isEqualTo(new RangePicture("x", -1, 5, "-1", "5", true));
  }

  /** S₀ = 2, S₁ = 1, S₂ = 3, then S_k = S_{k−1} + S_{k−2}; modulo 2 that is 0, 1, 1 for ever. */
  @Test
  void remaindersComeRoundAsARing() throws Exception {
    RingPicture picture = picture(RingPicture.class, "x^2 - x - 1", "period of S_k mod 2");
    assertThat(picture.members()).containsExactly(0, 1, 1);
  }

  /** With a = 4 + √11 the numbers aⁿ + bⁿ are 2, 8, 54, 392, 2866, …; the ring begins behind 2. */
  @Test
  void aRingMayBeginLaterThanTheSequence() throws Exception {
    RingPicture picture = picture(RingPicture.class, "", "last digit of floor((4+√11)^50)");
    assertThat(picture.first()).isEqualTo(1);
    assertThat(picture.members()).containsExactly(8, 4, 2, 6);
    assertThat(picture.members().get(picture.asked())).isEqualTo(4);
  }

  @Test
  void pointsOfAPolynomialStandWithTheOneAskedFor() throws Exception {
    PointsPicture picture =
        picture(PointsPicture.class, "", "P(6) if P is a monic quartic, P(k) = k^2+1 for k = 1..4");
    assertThat(picture.given()).hasSize(4).contains(new Place(3, 10));
    assertThat(picture.asked()).isEqualTo(new Place(6, 157));
  }

  @Test
  void theSidesOfAnEquationMeetAtItsSolutionsAndNotAtItsPoles() throws Exception {
    SidesPicture root = picture(SidesPicture.class, "sqrt(x+7) = x-5", "solutions");
    assertThat(root.meetings()).hasSize(1);
    assertThat(root.meetings().get(0).x()).isCloseTo(9, within(1e-6));
    SidesPicture fractions =
        picture(SidesPicture.class, "1/(x-1)+1/(x-2)+1/(x-4) = 1", "sum of the solutions");
    assertThat(fractions.meetings()).hasSize(3);
  }

  @Test
  void pairsOfIntegersStandOnTheLattice() throws Exception {
    LatticePicture picture =
        picture(
            LatticePicture.class,
            "",
            "(a^2+b^2+1)/(ab) if a, b positive integers, ab divides a^2+b^2+1");
    assertThat(picture.pairs())
        .contains(new Place(1, 1), new Place(1, 2), new Place(2, 5), new Place(5, 13))
        .allMatch(
            pair -> (pair.x() * pair.x() + pair.y() * pair.y() + 1) % (pair.x() * pair.y()) == 0);
  }

  @Test
  void describedAndGivenNumbersAreSeenAsRoots() throws Exception {
    for (String[] problem :
        new String[][] {
          {"9th roots of unity other than 1", "Π (3-r)", "8"},
          {"2cos(2π/7), 2cos(4π/7), 2cos(6π/7)", "Σ 1/r", "3"},
          {"", "xyz if x+y+z=3, x^2+y^2+z^2=5, x^3+y^3+z^3=12", "3"},
          {"", "polynomial with roots (√3+√7)", "4"}
        }) {
      Statement statement = Statement.of(problem[0], problem[1]);
      RootPicture picture = DESK.pictures().roots(statement, worked(statement)).orElseThrow();
      assertThat(picture.roots()).as(problem[1]).hasSize(Integer.parseInt(problem[2]));
    }
  }

  /** x³ − x − 1 reversed is −x³ − x² + 1, so the reciprocals have e₁ = −1, e₂ = 0, S₂ = 1. */
  @Test
  void sumsBelowNoughtStandBeforeTheOthers() throws Exception {
    Statement statement = Statement.of("x^3 - x - 1", "S_(-2)");
    SequencePicture picture = DESK.pictures().sums(statement, worked(statement)).orElseThrow();
    assertThat(picture.sums().get(0)).isEqualTo(new PicturedSum(-2, "1", true));
    assertThat(picture.sums().get(2)).isEqualTo(new PicturedSum(0, "3", false));
  }

  /** u₂ = 3·4 + 2·1 = 14, u₃ = 3·14 + 2·4 = 50. */
  @Test
  void aSequenceGivenByItsRecurrenceIsSeenFromItsFirstMember() throws Exception {
    Statement statement = Statement.of("", "u_9 if u_0 = 1, u_1 = 4, u_{k+2} = 3u_{k+1} + 2u_k");
    SequencePicture picture = DESK.pictures().sums(statement, worked(statement)).orElseThrow();
    assertThat(picture.sums().subList(0, 4))
        .extracting(PicturedSum::value)
        .containsExactly("1", "4", "14", "50");
  }

  @Test
  void whereThereIsNoAnswerThereIsNoPictureOfIt() throws Exception {
    assertThat(pictures("x^3 - 3x^2 + x + 2", "Σ 1/(r-2)")).isEmpty();
  }
}
