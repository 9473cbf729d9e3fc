package rootwright.working.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * The letters that stand for the roots in a statement about n roots: r, s, t for n = 3.
 *
 * @param roots one name for each root, as typed: {@code r} or {@code r_1}
 */
public record Letters(List<String> roots) {

  /** The fewest and the most letters for which facts are written out. */
  public static final int FEWEST = 2;

  public static final int MOST = 7;

  private static final List<String> USUAL = List.of("r", "s", "t", "u", "v", "w");

  /**
   * @throws IllegalArgumentException if there are too few or too many, or one stands twice
   */
  public Letters {
    roots = List.copyOf(roots);
    if (roots.size() < FEWEST || roots.size() > MOST) {
      throw new IllegalArgumentException(
          "facts are written out for %d to %d roots: %s".formatted(FEWEST, MOST, roots));
    }
    if (new HashSet<>(roots).size() < roots.size()) {
      throw new IllegalArgumentException("a root name stands twice: " + roots);
    }
  }

  /** The usual letters for n roots: r, s, t, …, or r_1 to r_n above six. */
  public static Letters usual(int n) {
    List<String> names = new ArrayList<>();
    for (int k = 1; k <= n; k++) {
      names.add(n <= USUAL.size() ? USUAL.get(k - 1) : "r_" + k);
    }
    return new Letters(names);
  }

  /** How many roots, n. */
  public int n() {
    return roots.size();
  }

  /** The name of a root, counted from 1. */
  public String root(int number) {
    return roots.get(number - 1);
  }

  /** The roots with a sign between them, each in some dress: {@code r^2 + s^2 + t^2}. */
  public String joined(String sign, UnaryOperator<String> dress) {
    return roots.stream().map(dress).collect(Collectors.joining(sign));
  }

  /** The product of the linear factors without the lead: {@code (x - r)*(x - s)*(x - t)}. */
  public String factors(String unknown) {
    return joined("*", root -> "(" + unknown + " - " + root + ")");
  }

  /**
   * A text with its places filled: {@code {r}}, {@code {s}} and {@code {t}} are the first roots,
   * {@code {last}} the last one, {@code {roots}} all of them and {@code {n}} their number, from
   * which also {@code {n-1}}, {@code {n-2}}, {@code {n+1}} and {@code {2n-2}} are filled.
   */
  public String fill(String text) {
    return text.replace("{r}", root(1))
        .replace("{s}", root(2))
        .replace("{t}", root(Math.min(3, n())))
        .replace("{last}", root(n()))
        .replace("{roots}", String.join(", ", roots))
        .replace("{n}", Integer.toString(n()))
        .replace("{n-1}", Integer.toString(n() - 1))
        .replace("{n-2}", Integer.toString(n() - 2))
        .replace("{n+1}", Integer.toString(n() + 1))
        .replace("{2n-2}", Integer.toString(2 * n() - 2));
  }
}
