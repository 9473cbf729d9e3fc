package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The body of a Σ or Π with letters as indices of the roots, {@code x_i^2 x_j}, and what it says in
 * definite names, {@code x_1^2*x_2}: the first such letter stands for 1, the next for 2.
 *
 * @param body as typed
 * @param indices the letters, in order
 */
record IndexedBody(Formula body, List<String> indices) {

  private static final String USUAL = "ijklm";

  /** A text may hold many such sums, so that one must not cost much. */
  private static final long WORK = 1_000_000;

  IndexedBody {
    indices = List.copyOf(indices);
  }

  /** The body with the indices of its caption, or those that occur if the caption names none. */
  static IndexedBody of(Formula body, Caption caption) {
    if (!caption.indices().isEmpty()) {
      return new IndexedBody(body, caption.indices());
    }
    Set<String> found = new LinkedHashSet<>();
    for (Formula.Name name : FormulaNames.first(body).values()) {
      if (name.index().length() == 1 && USUAL.contains(name.index())) {
        found.add(name.index());
      }
    }
    return new IndexedBody(body, new ArrayList<>(found));
  }

  /** Whether an index stands in the body by itself, as a number: that is another kind of sum. */
  boolean countsByIndex() {
    return body.contains(
        part ->
            (part instanceof Formula.ImaginaryUnit && indices.contains("i"))
                || (part instanceof Formula.Name name
                    && name.index().isEmpty()
                    && indices.contains(name.letter()))
                || (part instanceof Formula.Family family
                    && family.index() instanceof Formula.Name name
                    && indices.contains(name.letter())));
  }

  /** The body in definite names. */
  Formula definite() {
    return renamed(indices);
  }

  private Formula renamed(List<String> order) {
    return body.rewrite(
        part ->
            part instanceof Formula.Name name && order.contains(name.index())
                ? new Formula.Name(name.letter(), Integer.toString(order.indexOf(name.index()) + 1))
                : part);
  }

  /**
   * Whether exchanging neighbouring indices changes nothing; empty if that cannot be told by
   * multiplying out.
   */
  Optional<Boolean> isSymmetric() {
    try {
      RationalFunction first = expanded(indices);
      boolean symmetric = true;
      for (int k = 0; k + 1 < indices.size(); k++) {
        List<String> exchanged = new ArrayList<>(indices);
        Collections.swap(exchanged, k, k + 1);
        symmetric &= expanded(exchanged).isSameFunction(first);
      }
      return Optional.of(symmetric);
    } catch (PartRefusedException refused) {
      return Optional.empty();
    }
  }

  private RationalFunction expanded(List<String> order) {
    Map<String, Integer> numbers = new HashMap<>();
    for (Formula.Name name : FormulaNames.first(body).values()) {
      numbers.putIfAbsent(name.spelling(), numbers.size());
      for (int number = 1; indices.contains(name.index()) && number <= indices.size(); number++) {
        numbers.putIfAbsent(name.letter() + "_" + number, numbers.size());
      }
    }
    return new FunctionEvaluation(numbers, WORK).valueOf(renamed(order));
  }
}
