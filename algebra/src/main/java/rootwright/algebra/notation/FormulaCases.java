package rootwright.algebra.notation;

/**
 * One answer for each kind of formula; {@link Formula#choose} picks the one that fits. A new kind
 * of formula does not compile until every such table has answered for it.
 *
 * @param <R> what is answered
 */
public interface FormulaCases<R> {

  /** The answer for a {@link Formula.Numeral}. */
  R numeral(Formula.Numeral numeral);

  /** The answer for a {@link Formula.Name}. */
  R name(Formula.Name name);

  /** The answer for a {@link Formula.ImaginaryUnit}. */
  R imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit);

  /** The answer for a {@link Formula.Negative}. */
  R negative(Formula.Negative negative);

  /** The answer for a {@link Formula.Sum}. */
  R sum(Formula.Sum sum);

  /** The answer for a {@link Formula.Product}. */
  R product(Formula.Product product);

  /** The answer for a {@link Formula.Quotient}. */
  R quotient(Formula.Quotient quotient);

  /** The answer for a {@link Formula.Power}. */
  R power(Formula.Power power);

  /** The answer for a {@link Formula.Radical}. */
  R radical(Formula.Radical radical);

  /** The answer for a {@link Formula.PlusMinus}. */
  R plusMinus(Formula.PlusMinus plusMinus);

  /** The answer for a {@link Formula.Aggregate}. */
  R aggregate(Formula.Aggregate aggregate);

  /** The answer for a {@link Formula.Family}. */
  R family(Formula.Family family);

  /** The answer for a {@link Formula.Application}. */
  R application(Formula.Application application);

  /** The answer for a {@link Formula.Modulo}. */
  R modulo(Formula.Modulo modulo);

  /** The answer for a {@link Formula.Relation}. */
  R relation(Formula.Relation relation);

  /** The answer for a {@link Formula.Listing}. */
  R listing(Formula.Listing listing);

  /** The answer for a {@link Formula.Words}. */
  R words(Formula.Words words);
}
