package rootwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.check.second.Enclosed;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;

/** Answers that books print, worked as a coach would ask for them. */
class PublishedAnswersTest {

  private static final Desk DESK = new Desk();
  private static final int DIGITS = 40;

  private static Answer answer(String polynomial, String ask) throws UnreadableException {
    String given = polynomial == null ? "" : polynomial;
    return DESK.work(Statement.of(given, ask), ClassProfile.EVERYTHING).answer();
  }

  private static List<ExactValue> values(Answer answer) {
    if (answer instanceof Answer.Exact exact) {
      return List.of(exact.value());
    }
    return answer instanceof Answer.Values values
        ? values.values()
        : ((Answer.Solutions) answer).values();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "published-roots.csv", delimiter = ';')
  void theRootsAreThePrintedOnes(String source, String polynomial, String printed)
      throws UnreadableException {
    List<ExactValue> found = values(answer(polynomial, "roots"));
    List<ComplexBall> expected = new ArrayList<>();
    for (String root : printed.split(",")) {
      expected.add(Enclosed.of(FormulaReader.formula(root.strip()), DIGITS));
    }
    assertThat(found).as(source).hasSameSizeAs(expected);
    for (ComplexBall root : expected) {
      assertThat(found.stream().filter(value -> value.enclosure(DIGITS).overlaps(root)))
          .as("%s: %s", source, found)
          .hasSize(1);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "published-real-roots.csv", delimiter = ';')
  void theRealRootsAreThePrintedOnesToTheLastPrintedPlace(
      String source, String polynomial, String printed) throws UnreadableException {
    List<ExactValue> found =
        values(answer(polynomial, "roots")).stream().filter(ExactValue::isReal).toList();
    String[] expected = printed.split(",");
    assertThat(found).as(source).hasSize(expected.length);
    for (String decimal : expected) {
      String text = decimal.strip();
      int places = text.length() - text.indexOf('.') - 1;
      Rational half = Rational.of(10).power(-places).over(Rational.TWO);
      Rational value =
          Rational.of(new BigDecimal(text).unscaledValue()).over(Rational.of(10).power(places));
      assertThat(
              found.stream()
                  .map(root -> root.enclosure(DIGITS).real().centre().toRational())
                  .filter(root -> root.minus(value).absolute().compareTo(half) <= 0))
          .as("%s: %s", source, text)
          .hasSize(1);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "published-asks.csv", delimiter = ';')
  void theAnswerIsThePrintedOne(String source, String polynomial, String ask, String printed)
      throws UnreadableException {
    Answer answer = answer(polynomial, ask);
    if (answer instanceof Answer.PolynomialIn in) {
      assertThat(in.polynomial().primitive())
          .as(source)
          .isEqualTo(PolynomialReader.read(printed, "x").polynomial().primitive());
    } else {
      List<String> written = answer.alternatives().stream().map(PlainWriter::write).toList();
      assertThat(String.join(" or ", written)).as(source).isEqualTo(printed);
    }
  }
}
