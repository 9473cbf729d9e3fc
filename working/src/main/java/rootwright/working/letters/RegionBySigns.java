package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.LetterInterval;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.RootPlace;
import rootwright.working.step.Step;

/**
 * For a quadratic: the discriminant says whether the roots are real, sum and product (or the values
 * of P at the ends of a place, and the sum) on which side of a number they lie.
 */
final class RegionBySigns implements RouteOn<RegionAsked> {

  /** What may be said of the letter: nothing, or that it is whole or positive. */
  private static final Set<NumberDomain> PLAIN =
      Set.of(
          NumberDomain.REAL,
          NumberDomain.POSITIVE,
          NumberDomain.INTEGER,
          NumberDomain.POSITIVE_INTEGER);

  @Override
  public String name() {
    return "signs";
  }

  @Override
  public String title() {
    return "discriminant, sum and product have the right signs";
  }

  @Override
  public String teaches() {
    return "Where the roots of a quadratic lie is told by a few signs, without the roots.";
  }

  /** An inequality for the letter. */
  private record Demand(
      Formula meaning, Polynomial function, Formula.Comparison sign, String reason) {}

  /** What is demanded, or why it is no matter of a few signs. */
  private record Demands(List<Demand> list, String obstacle) {}

  private static Demands demands(RegionAsked asked) {
    LetteredPolynomial polynomial = asked.problem().polynomial();
    if (polynomial.degree() != 2) {
      return new Demands(List.of(), "it is told by these signs for a quadratic only");
    } else if (!polynomial.lead().isConstant()) {
      return new Demands(List.of(), "the lead coefficient may vanish or change its sign");
    } else if (!asked.problem().conditions(Condition.LetterBound.class).isEmpty()
        || asked
            .problem()
            .domain(asked.letter())
            .filter(domain -> !PLAIN.contains(domain))
            .isPresent()) {
      return new Demands(List.of(), "the letter itself is restricted");
    }
    List<Demand> demands = new ArrayList<>();
    for (Condition condition : asked.problem().conditions()) {
      Optional<List<Demand>> of = new Signs(asked).of(condition);
      if (of.isEmpty()) {
        return new Demands(List.of(), "the condition is no matter of a few signs");
      }
      of.get().stream().filter(demand -> !demands.contains(demand)).forEach(demands::add);
    }
    if (demands.stream().anyMatch(demand -> demand.function().isZero())) {
      return new Demands(List.of(), "one of the signs is 0 always");
    }
    demands.removeIf(
        demand ->
            demand.sign() == Formula.Comparison.AT_LEAST
                && demands.stream()
                    .anyMatch(
                        other ->
                            other.function().equals(demand.function())
                                && other.sign() == Formula.Comparison.GREATER));
    return new Demands(demands, "");
  }

  /** The inequalities for the letter; empty if the condition is no matter of a few signs. */
  static List<Claim.SignOn> inequalities(RegionAsked asked) {
    return demands(asked).list().stream()
        .map(demand -> new Claim.SignOn(demand.function(), demand.sign(), List.of()))
        .toList();
  }

  @Override
  public Attempt attempt(RegionAsked asked) {
    Demands found = demands(asked);
    List<Demand> demands = found.list();
    if (demands.isEmpty()) {
      return new Attempt.Declined(found.obstacle());
    }
    LetterLines lines = new LetterLines();
    for (Demand demand : demands) {
      write(lines, demand, asked);
    }
    if (demands.size() > 1 || asked.wholeNumbers()) {
      asked.conclude(lines, demands.size() > 1 ? "all of these together" : "together");
    }
    return new Attempt.Worked(title(), lines.steps(), asked.answer(), List.of());
  }

  private static void write(LetterLines lines, Demand demand, RegionAsked asked) {
    String letter = asked.letter();
    Formula function = PolynomialFormula.of(demand.function(), letter);
    lines.add(
        asked.problem().setting(),
        Idea.READ_COEFFICIENTS,
        "in the letter",
        demand.meaning(),
        function);
    Claim.SignOn claim =
        new Claim.SignOn(
            demand.function(),
            demand.sign(),
            LetterRegion.whereSign(
                demand.function(),
                new Claim.SignOn(demand.function(), demand.sign(), List.of())::holdsFor));
    String inequality =
        UnicodeWriter.write(
            NormalForm.of(
                new Formula.Relation(
                    List.of(function, Formula.number(0)), List.of(demand.sign()))));
    lines.write(
        new Step(
            new Formula.Words("%s %s".formatted(inequality, where(claim.region(), letter))),
            demand.reason(),
            Idea.INEQUALITY,
            claim));
  }

  private static String where(List<LetterInterval> region, String letter) {
    if (region.isEmpty()) {
      return "for no real " + letter;
    }
    boolean always =
        region.size() == 1 && region.get(0).low().isEmpty() && region.get(0).high().isEmpty();
    return always
        ? "for every real " + letter
        : "exactly for "
            + UnicodeWriter.write(IntervalFormula.of(region, letter)).replace(", ", " or ");
  }

  /** What a condition demands of discriminant, sum, product and values. */
  private record Signs(RegionAsked asked) {

    Optional<List<Demand>> of(Condition condition) {
      if (condition instanceof Condition.LetterIn in) {
        boolean positive =
            in.domain() == NumberDomain.POSITIVE || in.domain() == NumberDomain.POSITIVE_INTEGER;
        return Optional.of(
            positive
                ? List.of(
                    new Demand(
                        Formula.name(in.letter()),
                        Polynomial.X,
                        Formula.Comparison.GREATER,
                        "given"))
                : List.of());
      } else if (condition instanceof Condition.AllRoots all) {
        return switch (all.nature()) {
          case REAL ->
              Optional.of(List.of(real(Formula.Comparison.AT_LEAST, "the roots are real")));
          case DISTINCT ->
              asked.problem().says(RootNature.REAL)
                  ? Optional.of(
                      List.of(real(Formula.Comparison.GREATER, "the roots are real and distinct")))
                  : Optional.empty();
          case POSITIVE -> Optional.of(all(RootPlace.POSITIVE));
          case NEGATIVE -> Optional.of(all(RootPlace.NEGATIVE));
          default -> Optional.empty();
        };
      } else if (condition instanceof Condition.RealCount count) {
        return count.count() == 2
            ? Optional.of(List.of(real(Formula.Comparison.GREATER, "two distinct real roots")))
            : count.count() == 0
                ? Optional.of(List.of(real(Formula.Comparison.LESS, "no real root")))
                : Optional.empty();
      } else if (condition instanceof Condition.Placed placed && placed.cases().size() == 1) {
        return of(placed.cases().get(0));
      }
      return Optional.empty();
    }

    private Optional<List<Demand>> of(List<RootsPlaced> placed) {
      RootsPlaced first = placed.get(0);
      if (placed.size() == 1 && first.amount() == RootsPlaced.Amount.ALL) {
        return Optional.of(all(first.place()));
      } else if (placed.size() == 1 && first.place().equals(RootPlace.REAL)) {
        return first.amount() == RootsPlaced.Amount.AT_LEAST && first.number() == 1
            ? Optional.of(List.of(real(Formula.Comparison.AT_LEAST, "a root is real")))
            : first.amount() == RootsPlaced.Amount.EXACTLY && first.number() == 0
                ? Optional.of(List.of(real(Formula.Comparison.LESS, "no root is real")))
                : Optional.empty();
      }
      return separated(placed);
    }

    /** One root on either side of a number: P has the sign opposite to its lead there. */
    private Optional<List<Demand>> separated(List<RootsPlaced> placed) {
      if (placed.size() != 2
          || placed.stream()
              .anyMatch(one -> one.amount() != RootsPlaced.Amount.EXACTLY || one.number() != 1)) {
        return Optional.empty();
      }
      List<RootPlace> places = placed.stream().map(RootsPlaced::place).toList();
      for (Rational end : places.get(0).ends()) {
        if (places.contains(RootPlace.above(end)) && places.contains(RootPlace.below(end))) {
          return Optional.of(
              List.of(
                  value(
                      end,
                      Formula.Comparison.LESS,
                      end.isZero()
                          ? "the product is negative exactly when the signs are opposite; then the roots are real"
                          : "(%s − r)(%s − s) is negative exactly when it lies between the roots"
                              .formatted(end, end))));
        }
      }
      return Optional.empty();
    }

    private List<Demand> all(RootPlace place) {
      List<Demand> demands = new ArrayList<>();
      demands.add(real(Formula.Comparison.AT_LEAST, "the roots are real"));
      boolean between = place.low().isPresent() && place.high().isPresent();
      place
          .low()
          .ifPresent(
              end -> {
                demands.add(sum(end, Formula.Comparison.GREATER));
                demands.add(value(end, Formula.Comparison.GREATER, sides(end, between)));
              });
      place
          .high()
          .ifPresent(
              end -> {
                demands.add(sum(end, Formula.Comparison.LESS));
                demands.add(value(end, Formula.Comparison.GREATER, sides(end, between)));
              });
      return demands;
    }

    private static String sides(Rational end, boolean between) {
      return end.isZero()
          ? "the product is positive: the roots have the same sign"
          : "both roots lie on the same side of %s%s".formatted(end, between ? " too" : "");
    }

    private Demand real(Formula.Comparison sign, String reason) {
      return new Demand(
          Meaning.of(new Formula.Application("discriminant", List.of()), asked.problem()),
          asked.region().discriminant(),
          sign,
          reason);
    }

    /** Sum of the roots less twice the end. */
    private Demand sum(Rational end, Formula.Comparison sign) {
      LetteredPolynomial polynomial = asked.problem().polynomial();
      Rational lead = InLetters.inOne(polynomial.lead(), 1).coefficient(0);
      Polynomial sum =
          InLetters.inOne(polynomial.coefficient(1), 1).times(lead.reciprocal().negate());
      Formula names = root(0).plus(root(1));
      Formula twice = Formula.number(end.times(2));
      String reason =
          end.isZero()
              ? "the sum is " + (sign == Formula.Comparison.GREATER ? "positive" : "negative")
              : "the middle of the roots is %s than %s"
                  .formatted(sign == Formula.Comparison.GREATER ? "greater" : "less", end);
      return new Demand(
          end.isZero() ? names : NormalForm.of(names.minus(twice)),
          sum.minus(Polynomial.constant(end.times(2))),
          sign,
          reason);
    }

    /** (end − r)(end − s) = P(end)/lead. */
    private Demand value(Rational end, Formula.Comparison sign, String reason) {
      LetteredPolynomial polynomial = asked.problem().polynomial();
      Rational lead = InLetters.inOne(polynomial.lead(), 1).coefficient(0);
      Formula number = Formula.number(end);
      Formula meaning =
          end.isZero()
              ? root(0).times(root(1))
              : NormalForm.of(number.minus(root(0)).times(number.minus(root(1))));
      return new Demand(meaning, polynomial.valueAt(end).times(lead.reciprocal()), sign, reason);
    }

    private Formula root(int k) {
      return Formula.name(asked.problem().roots().get(k));
    }
  }
}
