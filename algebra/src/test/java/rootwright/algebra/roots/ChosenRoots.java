package rootwright.algebra.roots;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** Roots chosen first and multiplied out, so that every answer is known without the algebra. */
record ChosenRoots(List<Rational> roots, Polynomial polynomial) {

  /** All multisets of 1 to {@code most} roots from −3 … 3, each with a lead of its own. */
  static List<ChosenRoots> all(int most) {
    List<ChosenRoots> found = new ArrayList<>();
    collect(-3, most, List.of(), found);
    return found;
  }

  private static void collect(int least, int left, List<Rational> roots, List<ChosenRoots> found) {
    if (!roots.isEmpty()) {
      Rational lead = Rational.of(List.of(1L, -2L, 3L).get(found.size() % 3));
      found.add(new ChosenRoots(roots, Polynomial.withRoots(roots).times(lead)));
    }
    if (left > 0) {
      for (int next = least; next <= 3; next++) {
        List<Rational> longer = new ArrayList<>(roots);
        longer.add(Rational.of(next));
        collect(next, left - 1, List.copyOf(longer), found);
      }
    }
  }

  Rational sum(Function<Rational, Rational> term) {
    return roots.stream().map(term).reduce(Rational.ZERO, Rational::plus);
  }

  Rational product(Function<Rational, Rational> term) {
    return roots.stream().map(term).reduce(Rational.ONE, Rational::times);
  }

  /** Every way to choose this many roots in order. */
  List<List<Rational>> choices(int size) {
    List<List<Rational>> choices = new ArrayList<>();
    choose(size, new ArrayList<>(), choices);
    return choices;
  }

  private void choose(int size, List<Integer> taken, List<List<Rational>> choices) {
    if (taken.size() == size) {
      choices.add(taken.stream().map(roots::get).toList());
      return;
    }
    for (int k = 0; k < roots.size(); k++) {
      if (!taken.contains(k)) {
        List<Integer> longer = new ArrayList<>(taken);
        longer.add(k);
        choose(size, longer, choices);
      }
    }
  }
}
