package rootwright.composing.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Every family of asks; a new one registers itself here. */
public final class Families {

  /** The kind of ask that is a number made of all roots. */
  public static final String VALUE = "value";

  /** From a read-off to what is seldom set. */
  public static final List<AskFamily> ALL =
      List.of(
          new AskFamily(
              "read-off",
              "what the coefficients give at once: e₁, e₂, …",
              VALUE,
              degree -> indexed("e_%d", 1, degree)),
          new AskFamily(
              "power-sum",
              "sums of equal powers: Σr², Σr³, …",
              VALUE,
              degree -> indexed("Σ r^%d", 2, Math.min(6, degree + 3))),
          new AskFamily(
              "reciprocal-sum",
              "sums of reciprocals and their powers: Σ1/r, Σ1/r², …",
              VALUE,
              degree -> above(degree, 3, List.of("Σ 1/r", "Σ 1/r^2"), "Σ 1/(r s)", "Σ 1/r^3")),
          new AskFamily(
              "mixed-sum",
              "sums of products of powers of several roots: Σr²s, Σr²s², …",
              VALUE,
              degree -> above(degree, 3, List.of("Σ r^2 s", "Σ r^3 s"), "Σ r^2 s^2", "Σ r^2 s t")),
          new AskFamily(
              "pair-squares",
              "squares of sums and of differences of two roots",
              VALUE,
              degree -> List.of("Σ (r - s)^2", "Σ (r + s)^2")),
          new AskFamily(
              "linear-product",
              "products over the roots of k − r, of r² + c, of r + s",
              VALUE,
              degree ->
                  above(
                      degree,
                      3,
                      List.of("Π (1 + r)", "Π (2 - r)", "Π (r^2 + 1)", "Π (3 - r)", "Π (2 + r)"),
                      "Π (r + s)")),
          new AskFamily(
              "log-derivative-sum",
              "sums of reciprocals of differences to one number: Σ1/(k − r), …",
              VALUE,
              degree -> List.of("Σ 1/(2 - r)", "Σ 1/(r + 1)", "Σ 1/(3 - r)", "Σ 1/(r - 1)^2")),
          new AskFamily(
              "ratio-sum",
              "sums of quotients of roots and of linear expressions in them",
              VALUE,
              degree -> List.of("Σ r/s", "Σ (r + 1)/(r - 2)", "Σ r/(r + 1)", "Σ r^2/s")),
          new AskFamily(
              "split-fraction-sum",
              "sums of fractions with a quadratic below the line",
              VALUE,
              degree -> List.of("Σ 1/(r^2 - 1)", "Σ 1/(r^2 - 4)", "Σ r/(r^2 + 1)")),
          new AskFamily(
              "constant-carried-sum",
              "sums of a polynomial in each root with a constant: Σ(r² + 4), …",
              VALUE,
              degree -> List.of("Σ (r^2 + 4)", "Σ (r^3 - r + 2)", "Σ (r + 1)^2")),
          new AskFamily(
              "far-power-sum",
              "power sums far out: S₈, S₁₀, …",
              VALUE,
              degree -> indexed("S_%d", 7, 11)),
          new AskFamily(
              "cover-up-sum",
              "sums of powers over the products of differences",
              VALUE,
              degree ->
                  degree == 3
                      ? List.of("Σ r^4/((r - s)(r - t))", "Σ r^5/((r - s)(r - t))")
                      : List.of()),
          new AskFamily(
              "new-polynomial",
              "the polynomial with new roots made of the old",
              "polynomial-with-roots",
              degree ->
                  above(
                      degree,
                      3,
                      List.of(
                          "polynomial with roots (r + 1)",
                          "polynomial with roots (2r - 1)",
                          "polynomial with roots (1/r)",
                          "polynomial with roots (r^2)"),
                      degree == 3
                          ? "polynomial with roots (r + s)"
                          : "polynomial with roots (-r)")),
          new AskFamily(
              "discriminant", "the discriminant", "discriminant", d -> one("discriminant")),
          new AskFamily(
              "residue",
              "the remainder of a far power sum",
              "residue",
              degree ->
                  List.of(
                      "S_20 mod 7", "S_30 mod 11", "S_50 mod 10", "S_100 mod 13", "S_2026 mod 9")),
          new AskFamily(
              "real-root-count", "how many real roots", "real-roots", d -> one("real roots")),
          new AskFamily(
              "positive-root-count",
              "how many positive roots",
              "positive-roots",
              d -> one("positive roots")),
          new AskFamily(
              "negative-root-count",
              "how many negative roots",
              "negative-roots",
              d -> one("negative roots")),
          new AskFamily(
              "whether-all-real",
              "whether all roots are real",
              "all-roots-real",
              d -> one("all roots real")),
          new AskFamily(
              "real-root-sum",
              "the sum of the real roots",
              "sum-of-real-roots",
              degree -> degree > 2 ? one("sum of the real roots") : List.of()),
          new AskFamily(
              "reduction",
              "a high power of a root brought down",
              "reduce",
              degree -> indexed("reduce(r^%d)", degree, degree + 3)),
          new AskFamily(
              "resolvent",
              "the polynomial of the values under renaming",
              "resolvent",
              degree ->
                  switch (degree) {
                    case 2 -> List.of("resolvent(r + 2)");
                    case 3 -> List.of("resolvent(r s)", "resolvent(r^2 s + s^2 t + t^2 r)");
                    case 4 -> List.of("resolvent(r + s + t)", "resolvent(r s + t u)");
                    default -> List.of();
                  }),
          new AskFamily("all-roots", "all the roots", "roots", d -> one("roots")));

  private Families() {}

  /** The family with a name. */
  public static Optional<AskFamily> named(String name) {
    return ALL.stream().filter(family -> family.name().equals(name)).findFirst();
  }

  /** The names of all kinds of ask there are families of. */
  public static Set<String> kinds() {
    return ALL.stream().map(AskFamily::kind).collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> one(String ask) {
    return List.of(ask);
  }

  private static List<String> indexed(String pattern, int from, int to) {
    return IntStream.rangeClosed(from, to).mapToObj(pattern::formatted).toList();
  }

  /** The first asks, and from a degree on the others too. */
  private static List<String> above(int degree, int from, List<String> always, String... more) {
    List<String> all = new ArrayList<>(always);
    if (degree >= from) {
      all.addAll(List.of(more));
    }
    return List.copyOf(all);
  }
}
