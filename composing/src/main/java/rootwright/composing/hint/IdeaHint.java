package rootwright.composing.hint;

import rootwright.working.step.Idea;

/**
 * What is said of an idea before a line is shown; without any number, so that it cannot say too
 * much.
 *
 * @param question a question that leads there
 * @param name the idea named
 */
record IdeaHint(String question, String name) {

  private static final String COEFFICIENTS =
      "Which symmetric expressions of the roots do the coefficients give you?";

  /** The two hints for an idea. */
  static IdeaHint of(Idea idea) {
    return switch (idea) {
      case READ_COEFFICIENTS ->
          new IdeaHint(COEFFICIENTS, "Read the elementary symmetric sums off the coefficients.");
      case BUILD ->
          new IdeaHint(COEFFICIENTS, "Build what is wanted from the elementary symmetric sums.");
      case EXPAND ->
          new IdeaHint(
              "Which product contains what is wanted, once it is multiplied out?",
              "Multiply out and count how often each term comes.");
      case NEWTON ->
          new IdeaHint(
              "How do the sums of powers hang together with the coefficients?",
              "Use Newton's identities, one power after the other.");
      case VANISHING ->
          new IdeaHint(
              "What do you know of every single root?",
              "Use that every root satisfies the equation.");
      case REDUCE ->
          new IdeaHint(
              "Which power of a root can be written with lower powers?",
              "Replace high powers of a root by lower ones, using the equation.");
      case SUM_OVER_ROOTS ->
          new IdeaHint(
              "What becomes of a relation if you write it down for every root?",
              "Add up over all roots; a constant is added once for each.");
      case RECURRENCE ->
          new IdeaHint(
              "How does one sum of powers follow from those before it?",
              "The sums of powers follow a recurrence.");
      case EVALUATE ->
          new IdeaHint(
              "What does the polynomial look like, split into linear factors?",
              "Put a suitable number into the polynomial.");
      case LOG_DERIVATIVE ->
          new IdeaHint(
              "Which fraction falls apart into one simple fraction for each root?",
              "Compare with the derivative over the polynomial.");
      case SHIFT ->
          new IdeaHint(
              "Which polynomial has the moved roots?",
              "Move the roots: find the polynomial that has them.");
      case REVERSE ->
          new IdeaHint(
              "Which polynomial has the reciprocals of the roots?",
              "Turn the order of the coefficients round.");
      case SCALE ->
          new IdeaHint(
              "Which polynomial has the stretched roots?",
              "Stretch the roots: find the polynomial that has them.");
      case SQUARE_ROOTS ->
          new IdeaHint(
              "Which polynomial has the squares of the roots?",
              "Pass to the squares of the roots.");
      case COMMON_DENOMINATOR ->
          new IdeaHint(
              "What stands above and below, as a single fraction?",
              "Bring everything to one common denominator.");
      case PARTIAL_FRACTIONS ->
          new IdeaHint(
              "Of which simpler fractions is this one made?", "Split into partial fractions.");
      case INTERPOLATE ->
          new IdeaHint(
              "Which polynomial takes these values at the roots?", "Interpolate at the roots.");
      case RATIONAL_ROOT ->
          new IdeaHint(
              "Does the polynomial have a root that you can find?", "Split off a rational root.");
      case SUBSTITUTE ->
          new IdeaHint(
              "Which quantity comes up again and again?", "Give the repeated quantity a name.");
      case CONJUGATE -> new IdeaHint("What belongs together?", "Pair what belongs together.");
      case SUM_AND_DIFFERENCE ->
          new IdeaHint(
              "What else could the expression be, with the names of the roots exchanged?",
              "Find the sum and the difference of the two values.");
      case DISCRIMINANT ->
          new IdeaHint("What tells whether two roots are equal?", "The discriminant decides.");
      case MULTIPLE_ANGLE ->
          new IdeaHint(
              "Of which multiple of the angle do you know the value?",
              "Write that multiple by powers, as an equation.");
      case ELIMINATE -> new IdeaHint("Which unknown can you get rid of?", "Eliminate one unknown.");
      case CASES -> new IdeaHint("Which cases can occur?", "Go through the cases.");
      case DIVISORS ->
          new IdeaHint("Which whole numbers can occur at all?", "Only divisors can occur.");
      case INEQUALITY ->
          new IdeaHint(
              "How large can it be, and when is it that large?",
              "Use an inequality, and see when it is an equality.");
      case DOMAIN ->
          new IdeaHint("What does the statement allow?", "Keep only what the statement allows.");
      case ARITHMETIC ->
          new IdeaHint("What do you know already?", "Work the numbers out, step by step.");
      case STATE ->
          new IdeaHint("What is wanted, in other words?", "Say what is wanted in other words.");
    };
  }
}
