package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.ExactTests;
import rootwright.composing.scan.filter.NotAllRootsReal;
import rootwright.composing.scan.filter.RealRootCount;

/** How many roots are to be real, each taken as often as it occurs. */
public sealed interface RealWish {

  /** It does not matter. */
  record Open() implements RealWish {
    @Override
    public List<CandidateFilter> filters(int degree, ExactTests exact) {
      return List.of();
    }

    @Override
    public String text() {
      return "open";
    }
  }

  /** All of them. */
  record All() implements RealWish {
    @Override
    public List<CandidateFilter> filters(int degree, ExactTests exact) {
      return List.of(new RealRootCount(degree, exact));
    }

    @Override
    public String text() {
      return "all";
    }
  }

  /** Not all of them. */
  record NotAll() implements RealWish {
    @Override
    public List<CandidateFilter> filters(int degree, ExactTests exact) {
      return List.of(new NotAllRootsReal(degree, exact));
    }

    @Override
    public String text() {
      return "not-all";
    }
  }

  /** So many. */
  record Exactly(int count) implements RealWish {
    @Override
    public List<CandidateFilter> filters(int degree, ExactTests exact) {
      return List.of(new RealRootCount(count, exact));
    }

    @Override
    public List<String> contradictions(int degree) {
      List<String> found = new ArrayList<>();
      if (count < 0 || count > degree || (degree - count) % 2 != 0) {
        found.add(
            "a real polynomial of degree %d cannot have %d real roots counted with multiplicity"
                .formatted(degree, count));
      }
      return found;
    }

    @Override
    public String text() {
      return Integer.toString(count);
    }
  }

  /** What the scan looks for. */
  List<CandidateFilter> filters(int degree, ExactTests exact);

  /** Why no polynomial of this degree can be so, one sentence each. */
  default List<String> contradictions(int degree) {
    return List.of();
  }

  /** The wish as it is typed: {@code open}, {@code all}, {@code not-all} or a number. */
  String text();

  /**
   * Reads what {@link #text} writes.
   *
   * @throws IllegalArgumentException if it is something else; says what would do
   */
  static RealWish parse(String text) {
    String wish = text.strip();
    return switch (wish) {
      case "open" -> new Open();
      case "all" -> new All();
      case "not-all" -> new NotAll();
      default -> {
        if (wish.matches("[0-9]{1,3}")) {
          yield new Exactly(Integer.parseInt(wish));
        }
        throw new IllegalArgumentException(
            "the real roots cannot be wished as “%s”; write open, all, not-all or how many"
                .formatted(text));
      }
    };
  }
}
