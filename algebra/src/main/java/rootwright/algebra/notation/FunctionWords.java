package rootwright.algebra.notation;

import java.util.List;

/** The words that stand before arguments in brackets: what may be applied by its name. */
final class FunctionWords {

  /** As they are written in a formula; other spellings are in the {@link Vocabulary}. */
  static final List<String> ALL =
      List.of(
          "reduce",
          "resolvent",
          "log",
          "ln",
          "abs",
          "floor",
          "ceil",
          "sin",
          "cos",
          "tan",
          "cot",
          "csc",
          "sec",
          "gcd",
          "resultant",
          "max",
          "min");

  private FunctionWords() {}
}
