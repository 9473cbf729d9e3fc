package rootwright.algebra.notation;

import java.util.List;

/**
 * The same kind of formula made of other parts.
 *
 * @param parts as many as the formula has
 */
record PartsReplaced(List<Formula> parts) implements FormulaCases<Formula> {

  @Override
  public Formula numeral(Formula.Numeral numeral) {
    return numeral;
  }

  @Override
  public Formula name(Formula.Name name) {
    return name;
  }

  @Override
  public Formula imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return imaginaryUnit;
  }

  @Override
  public Formula negative(Formula.Negative negative) {
    return new Formula.Negative(parts.get(0));
  }

  @Override
  public Formula sum(Formula.Sum sum) {
    return new Formula.Sum(parts);
  }

  @Override
  public Formula product(Formula.Product product) {
    return new Formula.Product(parts);
  }

  @Override
  public Formula quotient(Formula.Quotient quotient) {
    return new Formula.Quotient(parts.get(0), parts.get(1));
  }

  @Override
  public Formula power(Formula.Power power) {
    return new Formula.Power(parts.get(0), parts.get(1));
  }

  @Override
  public Formula radical(Formula.Radical radical) {
    return new Formula.Radical(parts.get(0), radical.index());
  }

  @Override
  public Formula plusMinus(Formula.PlusMinus plusMinus) {
    return new Formula.PlusMinus(parts.get(0), parts.get(1));
  }

  @Override
  public Formula aggregate(Formula.Aggregate aggregate) {
    return new Formula.Aggregate(aggregate.operation(), parts.get(0));
  }

  @Override
  public Formula family(Formula.Family family) {
    return new Formula.Family(family.letter(), parts.get(0));
  }

  @Override
  public Formula application(Formula.Application application) {
    return new Formula.Application(application.function(), parts);
  }

  @Override
  public Formula modulo(Formula.Modulo modulo) {
    return new Formula.Modulo(parts.get(0), parts.get(1));
  }

  @Override
  public Formula relation(Formula.Relation relation) {
    return new Formula.Relation(parts, relation.comparisons());
  }

  @Override
  public Formula listing(Formula.Listing listing) {
    return new Formula.Listing(parts);
  }

  @Override
  public Formula words(Formula.Words words) {
    return words;
  }
}
