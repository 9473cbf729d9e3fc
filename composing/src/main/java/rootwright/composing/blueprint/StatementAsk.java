package rootwright.composing.blueprint;

import rootwright.composing.pattern.AnswerSort;
import rootwright.composing.pattern.Pattern;
import rootwright.composing.pattern.Scale;
import rootwright.working.Subjects;

/**
 * Statements that are drawn one by one, as an ask of an order.
 *
 * @param words what they ask, a few words
 * @param answers what sort of thing their answers are
 * @param source where they come from
 * @param subjects what they are worked as
 */
record StatementAsk(String words, AnswerSort answers, StatementSource source, Subjects subjects)
    implements OrderedAsk {

  /** The statements of a pattern, with what an order says of degree and size. */
  static StatementAsk of(Pattern pattern, Blueprint blueprint, Subjects subjects) {
    PolynomialWish wish = blueprint.polynomial();
    int degree = pattern.degrees().contains(wish.degree()) ? wish.degree() : pattern.usualDegree();
    Scale scale = new Scale(degree, wish.size());
    return new StatementAsk(
        pattern.words(), pattern.answers(), seed -> pattern.at(seed, scale), subjects);
  }

  @Override
  public Lot lot(Blueprint blueprint, Judge judge, int kept, long seed) {
    return new StatementLot(source, words, subjects, judge.ofStatements(answers), kept, seed);
  }
}
