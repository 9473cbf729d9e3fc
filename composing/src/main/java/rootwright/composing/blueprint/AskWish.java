package rootwright.composing.blueprint;

import java.util.Set;

/** What is to be asked about the roots. */
public sealed interface AskWish {

  /**
   * One ask for all problems.
   *
   * @param text the ask as it would be typed
   */
  record Given(String text) implements AskWish {
    @Override
    public String words() {
      return text;
    }
  }

  /**
   * Asks of one family, taken in turn.
   *
   * @param name the name of the family, such as {@code power-sum}
   */
  record OfFamily(String name) implements AskWish {
    @Override
    public String words() {
      return "family " + name;
    }
  }

  /**
   * Asks of any family, a different one each time as far as they go.
   *
   * @param kinds names of kinds of ask that may come up; empty for values only
   */
  record Surprise(Set<String> kinds) implements AskWish {
    /** Keeps its own copy. */
    public Surprise {
      kinds = Set.copyOf(kinds);
    }

    @Override
    public String words() {
      return "a surprise";
    }
  }

  /** The wish in a few words. */
  String words();
}
