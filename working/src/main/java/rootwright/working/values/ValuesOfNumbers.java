package rootwright.working.values;

import java.util.Locale;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.kind.Kinds;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Numbers from their symmetric values: x + y + z, x² + y² + z², x³ + y³ + z³ or any others are
 * given, and another expression, the polynomial or the numbers are asked for.
 */
public final class ValuesOfNumbers implements Subject {

  private static final Set<String> OTHERS =
      Set.of("prove", "disprove", "show", "refute", "is", "does");

  private final SolvedData solved;

  /** With the kinds that work asks about roots. */
  public ValuesOfNumbers(Kinds kinds) {
    solved = new SolvedData(kinds, new TwoChecks());
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    String first = inquiry.ask().strip().toLowerCase(Locale.ROOT).split("[^a-z]", 2)[0];
    return inquiry.polynomial().isEmpty()
        && !OTHERS.contains(first)
        && !BoundAsk.isBound(inquiry.ask())
        && inquiry.conditions().stream().anyMatch(condition -> condition.contains("="));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    SymmetricData data = DataReader.read(inquiry);
    return given(data, DataAskText.read(inquiry, data).shown(), new Formula.Words(""));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    SymmetricData data = DataReader.read(inquiry);
    return solved.of(data, DataAskText.read(inquiry, data), inquiry.statement().find(), profile);
  }

  /** The problem as it is shown. */
  static Given given(SymmetricData data, Formula ask, Formula polynomial) {
    return new Given(
        polynomial,
        polynomial,
        data.unknown(),
        data.names(),
        ask,
        data.givens().stream().map(GivenValue::relation).distinct().toList(),
        data.reading());
  }
}
