package rootwright.working.proof;

import java.util.function.Function;

/** An identity for every number of roots, written out for the one that is chosen. */
@FunctionalInterface
public interface General {

  /** The identity in these letters. */
  Identity in(Letters letters);

  /** An identity whose text depends on the letters. */
  static General equation(Function<Letters, String> text) {
    return letters -> Identity.of(letters, letters.fill(text.apply(letters)));
  }

  /** An identity that looks the same for every n but for the places that are filled. */
  static General equation(String text) {
    return equation(letters -> text);
  }

  /** The same identity where one more function of x is given. */
  default General with(String function, Function<Letters, String> body) {
    return letters -> in(letters).with(function, letters.fill(body.apply(letters)));
  }
}
