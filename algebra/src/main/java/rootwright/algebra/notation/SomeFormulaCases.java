package rootwright.algebra.notation;

/**
 * Answers for some kinds of formula and one answer for all others.
 *
 * @param <R> what is answered
 */
public abstract class SomeFormulaCases<R> implements FormulaCases<R> {

  /** The answer for a kind of which nothing else is said. */
  protected abstract R otherwise(Formula formula);

  @Override
  public R numeral(Formula.Numeral numeral) {
    return otherwise(numeral);
  }

  @Override
  public R name(Formula.Name name) {
    return otherwise(name);
  }

  @Override
  public R imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return otherwise(imaginaryUnit);
  }

  @Override
  public R negative(Formula.Negative negative) {
    return otherwise(negative);
  }

  @Override
  public R sum(Formula.Sum sum) {
    return otherwise(sum);
  }

  @Override
  public R product(Formula.Product product) {
    return otherwise(product);
  }

  @Override
  public R quotient(Formula.Quotient quotient) {
    return otherwise(quotient);
  }

  @Override
  public R power(Formula.Power power) {
    return otherwise(power);
  }

  @Override
  public R radical(Formula.Radical radical) {
    return otherwise(radical);
  }

  @Override
  public R plusMinus(Formula.PlusMinus plusMinus) {
    return otherwise(plusMinus);
  }

  @Override
  public R aggregate(Formula.Aggregate aggregate) {
    return otherwise(aggregate);
  }

  @Override
  public R family(Formula.Family family) {
    return otherwise(family);
  }

  @Override
  public R application(Formula.Application application) {
    return otherwise(application);
  }

  @Override
  public R modulo(Formula.Modulo modulo) {
    return otherwise(modulo);
  }

  @Override
  public R relation(Formula.Relation relation) {
    return otherwise(relation);
  }

  @Override
  public R listing(Formula.Listing listing) {
    return otherwise(listing);
  }

  @Override
  public R words(Formula.Words words) {
    return otherwise(words);
  }
}
