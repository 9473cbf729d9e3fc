package rootwright.composing.blueprint;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.DistinctRoots;
import rootwright.composing.scan.filter.ExactTests;
import rootwright.composing.scan.filter.Irreducible;
import rootwright.composing.scan.filter.NoRationalRoot;

/** What the roots of a composed polynomial are to be like. */
public enum RootsWish {
  /** Any roots. */
  ANY("any") {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of();
    }
  },
  /** No root repeated. */
  DISTINCT("distinct") {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of(new DistinctRoots(exact));
    }
  },
  /** Distinct, and none of them rational, so that they cannot be read off. */
  NO_RATIONAL_ROOT("no-rational") {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of(new DistinctRoots(exact), new NoRationalRoot(exact));
    }
  },
  /** The polynomial does not factor over the rational numbers. */
  IRREDUCIBLE("irreducible") {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of(new Irreducible(exact));
    }
  };

  private final String text;

  RootsWish(String text) {
    this.text = text;
  }

  abstract List<CandidateFilter> filters(ExactTests exact);

  /** Whether the wish keeps rational roots away. */
  public boolean forbidsRationalRoots() {
    return this == NO_RATIONAL_ROOT || this == IRREDUCIBLE;
  }

  /** The wish as it is typed. */
  public String text() {
    return text;
  }

  /**
   * Reads what {@link #text} writes.
   *
   * @throws IllegalArgumentException if it is something else; says what would do
   */
  public static RootsWish parse(String text) {
    return Arrays.stream(values())
        .filter(wish -> wish.text.equals(text.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the roots cannot be wished as “%s”; write %s"
                        .formatted(
                            text,
                            Arrays.stream(values())
                                .map(RootsWish::text)
                                .collect(Collectors.joining(", ")))));
  }
}
