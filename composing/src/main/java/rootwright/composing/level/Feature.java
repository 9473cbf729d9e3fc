package rootwright.composing.level;

import rootwright.algebra.number.Rational;

/**
 * One thing that makes a problem harder.
 *
 * @param name stable short name, lower case with hyphens
 * @param words what is counted, a few words for a coach
 * @param amount how much of it the problem has
 * @param weight what one of it adds to the difficulty, in logits
 */
public record Feature(String name, String words, Rational amount, Rational weight) {

  /** What this feature adds to the difficulty, in logits. */
  public Rational share() {
    return amount.times(weight);
  }
}
