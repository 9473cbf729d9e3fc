package rootwright.working.interpolation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/** Another value of a polynomial of which the degree and enough values are given. */
public final class PolynomialFromValues implements Subject {

  private static final String KIND = "value-of-polynomial";

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return ValueDataReader.isLike(inquiry);
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(ValueDataReader.read(inquiry).data());
  }

  private static Given given(ValueData data) {
    Formula nothing = new Formula.Words("");
    return new Given(
        nothing, nothing, "", List.of(), data.applied(data.at()), data.conditions(), List.of());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    ValueDataReader.Read read = ValueDataReader.read(inquiry);
    ValueData data = read.data();
    if (read.conflict().isPresent()) {
      return none(data, WarningCode.CONTRADICTORY, read.conflict().get());
    } else if (data.points().size() < data.needed()) {
      return none(
          data,
          WarningCode.SEVERAL_PARAMETERS,
          "%d values fix the polynomial and %d are given, so the value is open"
              .formatted(data.needed(), data.points().size()));
    }
    Polynomial p = data.polynomial();
    boolean fits = data.points().stream().allMatch(point -> p.at(point.at()).equals(point.value()));
    if (!fits || p.degree() != data.degree()) {
      return none(
          data,
          WarningCode.CONTRADICTORY,
          "no polynomial of degree exactly %d takes these values".formatted(data.degree()));
    }
    SecondOpinion second = checked(data, p);
    Answer answer = Answer.exact(p.at(data.at()));
    List<Working> routes = new ArrayList<>();
    Optional<AuxiliaryLines> auxiliary = AuxiliaryLines.of(data, p);
    auxiliary.ifPresent(
        lines ->
            routes.add(
                working(
                    "auxiliary",
                    "a polynomial that is zero at all the places",
                    "A polynomial is known from its zeros and one number more.",
                    lines.steps(),
                    answer)));
    routes.add(
        working(
            "lagrange",
            "interpolate",
            "The value is a sum of the given values with weights.",
            LagrangeLines.of(data, p),
            answer));
    routes.removeIf(working -> !profile.has(working.route()));
    routes.sort(Working.CHEAPEST_FIRST);
    List<Warning> warnings =
        data.points().size() > data.needed()
            ? List.of(
                new Warning(
                    WarningCode.REDUNDANT,
                    "%d values are enough; the others follow.".formatted(data.needed())))
            : List.of();
    return Solution.of(KIND, given(data), data.statement(), answer, second)
        .withWarnings(warnings)
        .withRoutes(routes)
        .withSlips(slips(data, auxiliary, answer));
  }

  /** Both checks see every given value, and the wanted one. */
  private SecondOpinion checked(ValueData data, Polynomial p) {
    for (ValueData.Point point : data.points()) {
      Formula value = Formula.number(point.value());
      checks.require(value, Claim.equal(data.setting(p), data.applied(point.at()), value));
    }
    Formula value = Formula.number(p.at(data.at()));
    return checks.require(value, Claim.equal(data.setting(p), data.applied(data.at()), value));
  }

  private Working working(
      String route, String title, String teaches, List<Step> steps, Answer answer) {
    Derivation.confirmed("route " + route, steps, checks);
    return Working.of(route, title, teaches, steps, answer);
  }

  private static List<Solution.WrongTurning> slips(
      ValueData data, Optional<AuxiliaryLines> auxiliary, Answer answer) {
    List<Solution.WrongTurning> slips = new ArrayList<>();
    data.lead()
        .ifPresent(
            a ->
                slips.add(
                    Solution.WrongTurning.number(
                        "lowest-degree",
                        "The polynomial of lowest degree through the values is not the one meant.",
                        data.lowest().at(data.at()),
                        Idea.INTERPOLATE,
                        25)));
    auxiliary.ifPresent(
        lines -> {
          slips.add(
              Solution.WrongTurning.number(
                  "pattern-continued",
                  "The rule holds at the given places only.",
                  lines.valueWith(Rational.ZERO),
                  Idea.SUBSTITUTE,
                  30));
          slips.add(
              Solution.WrongTurning.number(
                  "factor-forgotten",
                  "A polynomial with these zeros is c times the product.",
                  lines.valueWith(Rational.ONE),
                  Idea.VANISHING,
                  25));
          slips.add(
              Solution.WrongTurning.number(
                  "factor-sign",
                  "The sign of c is that of the equation it was found from.",
                  lines.valueWith(lines.factor().negate()),
                  Idea.EVALUATE,
                  20));
        });
    slips.removeIf(slip -> slip.value().equals(answer));
    return slips;
  }

  private static Solution none(ValueData data, WarningCode code, String why) {
    String sentence = Character.toUpperCase(why.charAt(0)) + why.substring(1) + ".";
    return Solution.none(KIND, given(data), data.statement(), why)
        .withWarnings(List.of(new Warning(code, sentence)));
  }
}
