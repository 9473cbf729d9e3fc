package rootwright.working.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.ClassroomReduction;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * Builds the ask from products of e_1, e_2, …: which product makes the wanted terms, what else it
 * makes, subtract, repeat (Gauss 1816; the leading-term descent). A fraction is built above and
 * below.
 */
final class BuildFromElementary implements Route {

  private static final String TITLE = "build it from e₁, e₂, …";

  /** Most products that a person multiplies out. */
  private static final int MOST_PRODUCTS = 9;

  /** Highest degree of an ask that a person builds. */
  private static final int HIGHEST_DEGREE = 12;

  /** Most arrangements of roots in a product of e_1, e_2, …. */
  private static final long MOST_ARRANGEMENTS = 6_000;

  @Override
  public String name() {
    return "build-from-e";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "Every symmetric expression can be put together from e₁, e₂, …, eₙ.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.symmetric().isPresent()) {
      SymmetricPolynomial ask = asked.symmetric().get();
      return OrbitSums.isElementary(ask)
          ? Reasons.READ_OFF
          : tooHigh(ask) ? tooMany() : new Builder(asked).upright(ask);
    } else if (asked.quotient().isEmpty()) {
      return Reasons.notSymmetric(asked);
    }
    Optional<SymmetricFraction> fraction = SymmetricFraction.of(asked);
    if (fraction.isEmpty()) {
      return Reasons.TOO_LONG;
    }
    SymmetricQuotient quotient = fraction.get().quotient();
    return tooHigh(quotient.numerator()) || tooHigh(quotient.denominator())
        ? tooMany()
        : new Builder(asked).fraction(fraction.get());
  }

  private static boolean tooHigh(SymmetricPolynomial polynomial) {
    return polynomial.terms().keySet().stream()
        .anyMatch(
            partition ->
                partition.weight() > HIGHEST_DEGREE
                    || OrbitSums.arrangements(
                            polynomial.variables(),
                            Math.min(partition.weight(), polynomial.variables()))
                        > MOST_ARRANGEMENTS);
  }

  private static Attempt tooMany() {
    return new Attempt.Declined("too many products of e₁, e₂, … would have to be multiplied out");
  }

  /** One working in the making. */
  private static final class Builder {

    private final Asked asked;
    private final OrbitSums orbits;
    private final CoefficientLines coefficients;
    private final Lines lines;

    Builder(Asked asked) {
      this.asked = asked;
      this.orbits = new OrbitSums(asked.problem().roots());
      this.coefficients = CoefficientLines.of(asked.problem());
      this.lines = new Lines(asked.problem().setting());
    }

    Attempt upright(SymmetricPolynomial ask) {
      ClassroomReduction reduction = ClassroomReduction.of(ask);
      if (products(reduction).size() > MOST_PRODUCTS) {
        return tooMany();
      }
      NamedForm form = NamedForm.inElementary(reduction.form().polynomial());
      if (!isOneOrbit(ask)) {
        lines.add(Idea.EXPAND, "multiply out and sort", asked.formula(), orbits.written(ask));
      }
      coefficients.write(lines, form.indices());
      build(reduction, asked.formula(), form);
      return Attempt.Worked.of(TITLE, lines.steps(), form.value(coefficients.values()));
    }

    Attempt fraction(SymmetricFraction fraction) {
      SymmetricQuotient quotient = fraction.quotient();
      ClassroomReduction above = ClassroomReduction.of(quotient.numerator());
      ClassroomReduction below = ClassroomReduction.of(quotient.denominator());
      int count = products(above).size() + products(below).size();
      if (count > MOST_PRODUCTS) {
        return tooMany();
      } else if (count == 0 && below.stages().size() == 1) {
        return Reasons.READ_OFF;
      }
      Optional<Rational> value = fraction.value(coefficients.values());
      if (value.isEmpty()) {
        return Reasons.ZERO_DENOMINATOR;
      }
      lines.add(
          Idea.COMMON_DENOMINATOR,
          "over the common denominator",
          asked.formula(),
          fraction.inOrbits(orbits));
      coefficients.write(lines, fraction.indices());
      build(above, orbits.written(quotient.numerator()), fraction.over());
      build(below, orbits.written(quotient.denominator()), fraction.under());
      lines.add(
          Idea.ARITHMETIC,
          "one over the other",
          asked.formula(),
          Formula.number(fraction.over().value(coefficients.values()))
              .over(Formula.number(fraction.under().value(coefficients.values()))),
          Formula.number(value.get()));
      return Attempt.Worked.of(TITLE, lines.steps(), value.get());
    }

    /** One line for each product, then the whole with its numbers. */
    private void build(ClassroomReduction reduction, Formula wanted, NamedForm form) {
      if (isOneOrbit(reduction.start()) && OrbitSums.isElementary(reduction.start())) {
        return;
      }
      List<ClassroomReduction.Stage> products = products(reduction);
      boolean saidAtOnce = products.size() == 1 && isOneOrbit(reduction.start());
      if (!saidAtOnce) {
        products.forEach(this::stage);
      }
      lines.add(
          Idea.BUILD,
          saidAtOnce ? makes(products.get(0)) : "put together, with numbers",
          wanted,
          form.written(),
          form.worked(coefficients.values()),
          Formula.number(form.value(coefficients.values())));
    }

    /** What a product makes, solved for the largest orbit in it. */
    private void stage(ClassroomReduction.Stage stage) {
      Combination rest = new Combination().plus(product(stage));
      besides(stage)
          .forEach((partition, count) -> rest.plus(count.negate(), orbits.sum(partition)));
      lines.add(Idea.BUILD, makes(stage), orbits.sum(stage.leading()), rest.formula());
    }

    private String makes(ClassroomReduction.Stage stage) {
      String makes = text(product(stage)) + " makes " + text(orbits.monomial(stage.leading()));
      List<String> others = new ArrayList<>();
      besides(stage)
          .forEach(
              (partition, count) ->
                  others.add(
                      text(new Combination().plus(count, orbits.monomial(partition)).formula())));
      return switch (others.size()) {
        case 0 -> makes + ", nothing else";
        case 1, 2 -> makes + ", and " + String.join(" and ", others) + " besides";
        default -> makes + ", and much besides";
      };
    }

    private static SortedMap<Partition, Rational> besides(ClassroomReduction.Stage stage) {
      SortedMap<Partition, Rational> others = new TreeMap<>(Comparator.reverseOrder());
      others.putAll(stage.expansion().terms());
      others.remove(stage.leading());
      return others;
    }

    /** The factors e_k in ascending order, equal ones as a power. */
    private static Formula product(ClassroomReduction.Stage stage) {
      SortedMap<Integer, Integer> powers = new TreeMap<>();
      stage.elementaryProduct().forEach(k -> powers.merge(k, 1, Integer::sum));
      List<Formula> factors = new ArrayList<>();
      powers.forEach((k, power) -> factors.add(Combination.power(NamedForm.elementary(k), power)));
      return Combination.product(factors);
    }

    private static List<ClassroomReduction.Stage> products(ClassroomReduction reduction) {
      return reduction.stages().stream()
          .filter(stage -> stage.elementaryProduct().size() > 1)
          .toList();
    }

    private static boolean isOneOrbit(SymmetricPolynomial polynomial) {
      return polynomial.terms().size() == 1 && polynomial.terms().firstEntry().getValue().isOne();
    }

    private static String text(Formula formula) {
      return UnicodeWriter.write(formula);
    }
  }
}
