package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;
import rootwright.working.solve.Given;
import rootwright.working.step.LetteredSetting;
import rootwright.working.step.NumberDomain;

/**
 * A problem about a polynomial with letters.
 *
 * @param polynomial the polynomial, of degree at least 1 in its unknown
 * @param stated as it was written
 * @param roots a name for every root
 * @param ask what is wanted
 * @param conditions what is given besides
 * @param reading how doubtful notation was understood
 */
public record LetteredProblem(
    LetteredPolynomial polynomial,
    Formula stated,
    List<String> roots,
    LetterAsk ask,
    List<Condition> conditions,
    List<String> reading) {

  public LetteredProblem {
    roots = List.copyOf(roots);
    conditions = List.copyOf(conditions);
    reading = List.copyOf(reading);
  }

  /** The setting in which P is the polynomial. */
  LetteredSetting setting() {
    return polynomial.setting(roots);
  }

  /** The conditions of one sort. */
  <C extends Condition> List<C> conditions(Class<C> sort) {
    return conditions.stream()
        .flatMap(
            condition -> sort.isInstance(condition) ? Stream.of(sort.cast(condition)) : Stream.of())
        .toList();
  }

  /** The domain that is given for a letter. */
  Optional<NumberDomain> domain(String letter) {
    return conditions(Condition.LetterIn.class).stream()
        .filter(condition -> condition.letter().equals(letter))
        .map(Condition.LetterIn::domain)
        .findFirst();
  }

  /** Whether the roots are said to be all of this nature, or of a narrower one. */
  boolean says(RootNature nature) {
    return conditions(Condition.AllRoots.class).stream()
            .anyMatch(
                condition ->
                    condition.nature() == nature
                        || (nature == RootNature.REAL && condition.nature() != RootNature.DISTINCT))
        || (nature == RootNature.REAL
            && conditions(Condition.Placed.class).stream().anyMatch(Condition.Placed::allReal));
  }

  /** What a solution shows of it. */
  Given given() {
    return new Given(
        polynomial.formula(),
        stated,
        polynomial.unknown(),
        roots,
        ask.shown(),
        conditions.stream().map(Condition::shown).toList(),
        reading);
  }
}
