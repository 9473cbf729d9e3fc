package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.RealRootCount;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValues;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.step.NumberDomain;

/** Whether numbers with a known polynomial are of the kind that the statement says. */
final class DomainGate {

  private DomainGate() {}

  /** Whether all roots of the polynomial are numbers of this domain. */
  static boolean allows(NumberDomain domain, Polynomial polynomial) {
    return domain == NumberDomain.COMPLEX
        || ExactValues.rootsOf(polynomial).stream()
            .map(ExactRoot::value)
            .allMatch(domain::contains);
  }

  /** What is to be said of the kind of numbers. */
  static List<Warning> warnings(SymmetricData data, Polynomial polynomial) {
    List<Warning> warnings = new ArrayList<>();
    int real = RealRootCount.of(polynomial).withMultiplicity();
    boolean allReal = real == polynomial.degree();
    Optional<NumberDomain> domain = data.domain();
    if (domain.isPresent() && !allows(domain.get(), polynomial)) {
      warnings.add(
          new Warning(WarningCode.NOT_REAL, refusal(data, polynomial, domain.get(), real)));
    } else if (domain.isEmpty() && !allReal) {
      warnings.add(
          new Warning(
              WarningCode.DOMAIN_OPEN,
              "The numbers are not all real: %s. Say “complex numbers”."
                  .formatted(because(data, polynomial, real))));
    }
    return warnings;
  }

  private static String refusal(
      SymmetricData data, Polynomial polynomial, NumberDomain domain, int real) {
    String names =
        String.join(
            ", ", data.names().stream().map(n -> UnicodeWriter.write(Formula.name(n))).toList());
    boolean allReal = real == polynomial.degree();
    return allReal || domain == NumberDomain.RATIONAL
        ? "The statement must not say “%s”: %s are the roots of %s = 0, which are not all %s."
            .formatted(domain.words(), names, written(data, polynomial), domain.words())
        : "The statement must not say “%s”: %s. Say “complex numbers” instead."
            .formatted(domain.words(), because(data, polynomial, real));
  }

  private static String because(SymmetricData data, Polynomial polynomial, int real) {
    Rational discriminant = Discriminant.of(polynomial);
    String roots =
        real == 0
            ? "no real root"
            : real == 1 ? "one real root" : "only %d real roots".formatted(real);
    return discriminant.signum() < 0
        ? "%s has the discriminant %s < 0 and %s"
            .formatted(
                written(data, polynomial), UnicodeWriter.write(Formula.number(discriminant)), roots)
        : "%s has %s".formatted(written(data, polynomial), roots);
  }

  private static String written(SymmetricData data, Polynomial polynomial) {
    return UnicodeWriter.write(PolynomialFormula.of(polynomial, data.unknown()));
  }
}
