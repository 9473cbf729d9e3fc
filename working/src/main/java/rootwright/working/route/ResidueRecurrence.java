package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** S_k modulo m step by step, every member of the recurrence reduced before the next. */
final class ResidueRecurrence implements Route {

  private static final BigInteger FARTHEST = BigInteger.valueOf(20);

  @Override
  public String name() {
    return "residue-recurrence";
  }

  @Override
  public String title() {
    return "the recurrence, with remainders";
  }

  @Override
  public String teaches() {
    return "Sums and products may be reduced modulo m at every step.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<ResidueAsk> read = ResidueAsk.of(asked);
    if (read.isEmpty()) {
      return ResidueAsk.OTHER;
    } else if (read.get().index().compareTo(FARTHEST) > 0) {
      return new Attempt.Declined("the index is too far out to go step by step");
    }
    return worked(read.get());
  }

  private Attempt worked(ResidueAsk ask) {
    int n = ask.degree();
    int k = ask.index().intValueExact();
    Lines lines = new Lines(ask.problem().setting());
    ask.begin(lines);
    List<BigInteger> residues = new ArrayList<>();
    for (int j = 0; j < n; j++) {
      BigInteger exact = ask.start().get(j);
      boolean said = j > 0 && exact.equals(exact.mod(ask.modulus()));
      residues.add(exact.mod(ask.modulus()));
      if (said) {
        continue;
      }
      lines.add(
          Idea.ARITHMETIC,
          j == 0 ? "one for every root" : "divide by " + ask.modulus(),
          ask.name(j),
          Formula.number(exact),
          ask.divided(exact));
    }
    List<Step> steps = new ArrayList<>(lines.steps());
    for (int j = n; j <= k; j++) {
      List<BigInteger> last = List.copyOf(residues.subList(j - n, j));
      BigInteger total = ask.total(last);
      Lines line = new Lines(ask.problem().setting());
      line.add(
          Idea.RECURRENCE,
          "%s with index %d leaves %s".formatted(ask.letter(), j, total.mod(ask.modulus())),
          ask.recurrence(last.stream().map(Formula::number).toList()),
          Formula.number(total),
          ask.divided(total));
      steps.addAll(line.steps());
      residues.add(total.mod(ask.modulus()));
    }
    steps.add(ask.end(residues.get(k), "modulo " + ask.modulus()));
    return ask.worked(title(), steps, residues.get(k));
  }
}
