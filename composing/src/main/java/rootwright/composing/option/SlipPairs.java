package rootwright.composing.option;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.problem.Problem;
import rootwright.working.slip.Slip;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;

/**
 * Wrong answers reached by two wrong turnings: the polynomial is misread, and the work with the
 * misread one goes wrong as well.
 *
 * <p>A pair is given the product of the two weights times 0.3, a judgement of practice.
 */
final class SlipPairs {

  private static final Rational TOGETHER = Rational.of(3, 10);

  private final List<Slip> slips;

  SlipPairs(List<Slip> slips) {
    this.slips = List.copyOf(slips);
  }

  /** The wrong answers, one entry for each pair that leads anywhere neither slip leads alone. */
  List<WrongValue> on(Solution solution) {
    Optional<Problem> problem = solution.given().problem();
    List<WrongValue> found = new ArrayList<>();
    Set<Set<String>> pairs = new HashSet<>();
    for (Slip first : slips) {
      problem
          .flatMap(read -> first.polynomialTaken(read).map(taken -> misread(read, taken)))
          .filter(taken -> !taken.polynomial().equals(problem.get().polynomial()))
          .ifPresent(taken -> add(first, taken, solution, pairs, found));
    }
    return found;
  }

  private void add(
      Slip first,
      Problem taken,
      Solution solution,
      Set<Set<String>> pairs,
      List<WrongValue> found) {
    Asked asked = AskedReader.read(taken);
    Set<Object> alone = new HashSet<>();
    alone.add(Numbers.identity(solution.answer()));
    solution.slips().stream()
        .filter(slip -> slip.name().equals(first.name()))
        .forEach(slip -> alone.add(Numbers.identity(slip.value())));
    for (Slip second : slips) {
      if (second.name().equals(first.name()) || !pairs.add(Set.of(first.name(), second.name()))) {
        continue;
      }
      Set<Object> either = new HashSet<>(alone);
      solution.slips().stream()
          .filter(slip -> slip.name().equals(second.name()))
          .forEach(slip -> either.add(Numbers.identity(slip.value())));
      for (Rational value : second.on(asked)) {
        Answer answer = Answer.exact(value);
        if (either.add(Numbers.identity(answer))) {
          found.add(
              new WrongValue(
                  answer,
                  List.of(
                      new WayThere(
                          first.name() + " + " + second.name(),
                          Rational.of((long) first.weight() * second.weight(), 10_000)
                              .times(TOGETHER),
                          spots(first, second)))));
        }
      }
    }
  }

  private static Set<Idea> spots(Slip first, Slip second) {
    Set<Idea> spots = new HashSet<>();
    spots.add(first.spot());
    spots.add(second.spot());
    return spots;
  }

  /** The misread problem; the lead keeps its sign, for it is not what was misread. */
  private static Problem misread(Problem problem, Polynomial taken) {
    boolean turned = taken.lead().signum() != problem.polynomial().lead().signum();
    return new Problem(
        turned ? taken.negate() : taken,
        problem.stated(),
        problem.unknown(),
        problem.roots(),
        problem.ask(),
        List.of());
  }
}
