package rootwright.working.kind;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.companion.CompanionMatrix;
import rootwright.algebra.companion.TraceResidue;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.PowerSumResidue;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.exact.Valuation;
import rootwright.working.gate.PolynomialGate;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.problem.WholeNumber;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;

/** The residue of a power sum, or of any whole value, for a modulus. */
final class ResidueKind implements Kind {

  private static final String UNLIKE = "powers of the companion matrix modulo the same number";

  private final Assembly assembly;
  private final TwoChecks checks;

  ResidueKind(Assembly assembly, TwoChecks checks) {
    this.assembly = assembly;
    this.checks = checks;
  }

  @Override
  public String name() {
    return "residue";
  }

  @Override
  public boolean recognises(Problem problem) {
    return problem.ask() instanceof Formula.Modulo;
  }

  @Override
  public Solution solve(Problem problem, ClassProfile profile) {
    Formula.Modulo ask = (Formula.Modulo) problem.ask();
    List<Warning> warnings = new ArrayList<>(PolynomialGate.warnings(problem));
    Optional<BigInteger> modulus =
        WholeNumber.of(ask.modulus()).filter(m -> m.compareTo(BigInteger.ONE) > 0);
    if (modulus.isEmpty()) {
      return BeyondLimits.misshapen(name(), problem, "the modulus must be a whole number above 1");
    }
    Optional<BigInteger> index =
        ask.of() instanceof Formula.Family family
                && (family.letter().equals("S") || family.letter().equals("p"))
            ? WholeNumber.of(family.index())
            : Optional.empty();
    return index.isPresent()
        ? farPowerSum(problem, index.get(), modulus.get(), warnings, profile)
        : wholeValue(problem, ask.of(), modulus.get(), warnings, profile);
  }

  private Solution farPowerSum(
      Problem problem,
      BigInteger index,
      BigInteger modulus,
      List<Warning> warnings,
      ClassProfile profile) {
    PowerSumResidue residue = PowerSums.of(problem.polynomial()).modulo(index, modulus);
    if (residue instanceof PowerSumResidue.NoResidue none) {
      return none(
          problem,
          "%s and the modulus %s have the divisor %s in common"
              .formatted(none.coefficient(), modulus, none.common()),
          warnings);
    } else if (residue instanceof PowerSumResidue.ZeroRoot) {
      return none(problem, "0 is a root and the exponent negative", warnings);
    }
    BigInteger value = ((PowerSumResidue.Residue) residue).value();
    TraceResidue trace = CompanionMatrix.of(problem.polynomial()).tracePower(index, modulus);
    if (!(trace instanceof TraceResidue.Known other) || !other.value().equals(value)) {
      throw new CheckFailedException(
          "the answer", problem.ask(), "the companion matrix gives " + trace + ", not " + value);
    }
    return found(
        problem, new Answer.Residue(value, modulus), warnings, SecondOpinion.by(UNLIKE), profile);
  }

  private Solution wholeValue(
      Problem problem,
      Formula of,
      BigInteger modulus,
      List<Warning> warnings,
      ClassProfile profile) {
    Valuation valuation = Valuation.of(of, problem.setting());
    if (valuation instanceof Valuation.Refused refused) {
      return BeyondLimits.refused(name(), problem.asking(of), refused.why(), refused.bySize());
    }
    if (!(valuation instanceof Valuation.Determined determined)) {
      return none(problem, "only a single whole value has a residue", warnings);
    }
    Rational value = determined.value();
    if (!value.denominator().gcd(modulus).equals(BigInteger.ONE)) {
      return none(
          problem,
          "the value %s has a denominator that shares a factor with %s".formatted(value, modulus),
          warnings);
    }
    BigInteger residue =
        value.numerator().multiply(value.denominator().modInverse(modulus)).mod(modulus);
    SecondOpinion second =
        checks.require(of, Claim.equal(problem.setting(), of, Formula.number(value)));
    return found(problem, new Answer.Residue(residue, modulus), warnings, second, profile);
  }

  private Solution found(
      Problem problem,
      Answer answer,
      List<Warning> warnings,
      SecondOpinion second,
      ClassProfile profile) {
    Findings findings = new Findings(answer, answer, Optional.empty(), List.of(), warnings, second);
    return assembly.assemble(name(), AskedReader.read(problem), findings, profile);
  }

  private Solution none(Problem problem, String why, List<Warning> warnings) {
    warnings.add(0, new Warning(WarningCode.NO_RESIDUE, "There is no residue: " + why + "."));
    Answer answer = new Answer.None(why);
    return Assembly.withoutRoutes(
        name(),
        problem,
        new Findings(
            answer, answer, Optional.empty(), List.of(), warnings, SecondOpinion.NOTHING_TO_CHECK));
  }
}
