package rootwright.working.clothing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * A triangle whose sides are the roots of a cubic: Heron's formula is s·P(s) under the root sign,
 * with s half the sum of the roots and lead 1.
 */
public final class TriangleSides implements Subject {

  private static final String ROUTE = "heron";

  private static final Pattern ASK =
      Pattern.compile(
          "(?:find |what is )?(?:the )?(?<what>area|inradius|circumradius|radius of the"
              + " circumcircle|radius of the incircle)(?: of (?:the|a) triangle.*)?\\.?");

  @Override
  public boolean recognises(Inquiry inquiry) {
    return !inquiry.polynomial().isEmpty()
        && inquiry.ask().length() < 200
        && ASK.matcher(simple(inquiry)).matches();
  }

  private static String simple(Inquiry inquiry) {
    return inquiry.statement().find().strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  private static String what(Inquiry inquiry) {
    Matcher matcher = ASK.matcher(simple(inquiry));
    String what = matcher.matches() ? String.valueOf(matcher.group("what")) : "area";
    return what.endsWith("circumcircle")
        ? "circumradius"
        : what.endsWith("incircle") ? "inradius" : what;
  }

  private static Problem problem(Inquiry inquiry) throws UnreadableException {
    Statement statement = inquiry.statement();
    return ProblemReader.read(
        new Statement(statement.polynomial(), "S_1", statement.roots(), statement.unknown()));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return Given.of(problem(inquiry))
        .withFind(new Formula.Words(what(inquiry) + " of the triangle with these sides"));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Problem problem = problem(inquiry);
    String what = what(inquiry);
    Given given = read(inquiry);
    String statement =
        "The sides of a triangle are the roots of %s. Find its %s."
            .formatted(
                UnicodeWriter.write(
                    Formula.equation(
                        PolynomialFormula.of(problem.polynomial(), problem.unknown()),
                        Formula.number(0))),
                what);
    Optional<String> against = noTriangle(problem.polynomial());
    if (against.isPresent()) {
      return Solution.none("triangle", given, statement, against.get())
          .withWarnings(
              List.of(
                  new Warning(
                      WarningCode.CONTRADICTORY,
                      "There is no such triangle: " + against.get() + ".")));
    }
    Polynomial p = problem.polynomial().monic();
    Rational half = p.coefficient(2).negate().over(Rational.TWO);
    Rational square = half.times(p.at(half));
    Rational product = p.coefficient(0).negate();
    ExactValue area = root(square);
    ExactValue value =
        switch (what) {
          case "inradius" -> root(square.over(half.times(half)));
          case "circumradius" -> root(product.times(product).over(square.times(16)));
          default -> area;
        };
    Answer answer = new Answer.Exact(value);
    List<Step> steps = steps(problem, what, half, product, area, value);
    Derivation.confirmed("route " + ROUTE, steps, new TwoChecks());
    Working working =
        Working.of(
                ROUTE,
                "Heron's formula is s·P(s)",
                "s − a, s − b, s − c multiply to P(s) when the lead is 1.",
                steps,
                answer)
            .withConditions(List.of("the roots are real and each is less than half their sum"));
    return Solution.of(
            "triangle",
            given,
            statement,
            answer,
            SecondOpinion.by("Sturm’s chain for the roots, and s·P(s) above 0"))
        .withConditions(
            List.of("the roots are real, positive, and each is less than the sum of the other two"))
        .withRoutes(profile.has(ROUTE) ? List.of(working) : List.of())
        .withSlips(slips(what, p, half, answer));
  }

  private static ExactValue root(Rational square) {
    return QuadraticSurd.of(Rational.ZERO, Rational.ONE, square);
  }

  /** Why the roots are no sides, decided exactly; enclosures of the roots are asked as well. */
  private static Optional<String> noTriangle(Polynomial polynomial) {
    if (polynomial.degree() != 3) {
      return Optional.of("a triangle has three sides, and the degree is " + polynomial.degree());
    }
    List<ExactRoot> roots = ExactValues.rootsOf(polynomial);
    Polynomial p = polynomial.monic();
    Rational half = p.coefficient(2).negate().over(Rational.TWO);
    for (ExactRoot root : roots) {
      if (!root.value().isReal()) {
        return Optional.of("not all roots are real");
      } else if (ExactValues.compareReal(root.value(), RationalValue.of(0)) <= 0) {
        return Optional.of("a root is not positive");
      } else if (ExactValues.compareReal(root.value(), new RationalValue(half)) >= 0) {
        return Optional.of("one root is not less than the sum of the other two");
      }
    }
    // The same by an unlike method: all distinct roots are real by Sturm, and s·P(s) > 0.
    Polynomial distinct = polynomial.squarefreePart();
    return SturmSequence.of(distinct).count() == distinct.degree()
            && half.times(p.at(half)).signum() > 0
        ? Optional.empty()
        : Optional.of("the triangle would be flat");
  }

  private static List<Step> steps(
      Problem problem,
      String what,
      Rational half,
      Rational product,
      ExactValue area,
      ExactValue value) {
    Polynomial p = problem.polynomial().monic();
    List<String> names = problem.roots();
    Setting setting = Setting.of(p, names);
    Formula sum = Formula.sum(names.stream().map(Formula::name).toList());
    Formula s = Formula.number(half);
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.equation(
            setting,
            Idea.READ_COEFFICIENTS,
            "half the perimeter",
            NormalForm.of(sum.over(Formula.number(2))),
            s));
    List<Formula> differences =
        names.stream().<Formula>map(name -> s.minus(Formula.name(name))).toList();
    steps.add(
        Step.equation(
            setting,
            Idea.EVALUATE,
            "the product of the differences is P with lead 1",
            NormalForm.of(Formula.product(differences)),
            new Formula.Application("P", List.of(s)),
            Formula.number(p.at(half))));
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.STATE,
            "Heron: the area is the square root of s·P(s)",
            new Formula.Radical(NormalForm.of(s.times(Formula.number(p.at(half)))), 2),
            area.toFormula()));
    if (what.equals("circumradius")) {
      steps.add(
          Step.equation(
              Setting.ofLetters(List.of()),
              Idea.STATE,
              "R is the product of the sides over four times the area",
              Formula.number(product).over(Formula.number(4).times(area.toFormula())),
              value.toFormula()));
    } else if (what.equals("inradius")) {
      steps.add(
          Step.equation(
              Setting.ofLetters(List.of()),
              Idea.STATE,
              "the inradius is the area over half the perimeter",
              area.toFormula().over(s),
              value.toFormula()));
    }
    return steps.stream().filter(step -> !isTrivial(step)).toList();
  }

  /** Whether both sides look the same. */
  private static boolean isTrivial(Step step) {
    return step.claim() instanceof Claim.Equal equal
        && equal.sides().stream().distinct().count() == 1;
  }

  /** The whole perimeter taken for half of it. */
  private static List<Solution.WrongTurning> slips(
      String what, Polynomial p, Rational half, Answer answer) {
    Rational whole = half.times(2);
    Rational wrong = whole.times(p.at(whole));
    if (!what.equals("area") || wrong.signum() <= 0) {
      return List.of();
    }
    Answer value = new Answer.Exact(root(wrong));
    return value.equals(answer)
        ? List.of()
        : List.of(
            new Solution.WrongTurning(
                "perimeter-not-halved",
                "s in Heron's formula is half the perimeter.",
                value,
                Idea.EVALUATE,
                20));
  }
}
