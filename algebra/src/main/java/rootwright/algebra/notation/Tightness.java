package rootwright.algebra.notation;

/**
 * How tightly a formula in normal form is held together when it is written on one line; what is
 * looser than its place allows gets a bracket.
 */
final class Tightness implements FormulaCases<Integer> {

  static final int LISTING = 0;
  static final int MODULO = 10;
  static final int RELATION = 20;
  static final int SUM = 30;
  static final int SIGNED = 35;
  static final int PRODUCT = 40;
  static final int POWER = 60;
  static final int ATOM = 70;

  private static final Tightness TABLE = new Tightness();

  private Tightness() {}

  static int of(Formula formula) {
    return formula.choose(TABLE);
  }

  @Override
  public Integer numeral(Formula.Numeral numeral) {
    if (numeral.value().signum() < 0) {
      return SIGNED;
    }
    return numeral.value().isInteger() ? ATOM : PRODUCT;
  }

  @Override
  public Integer name(Formula.Name name) {
    return ATOM;
  }

  @Override
  public Integer imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return ATOM;
  }

  @Override
  public Integer negative(Formula.Negative negative) {
    return SIGNED;
  }

  @Override
  public Integer sum(Formula.Sum sum) {
    return SUM;
  }

  @Override
  public Integer product(Formula.Product product) {
    return PRODUCT;
  }

  @Override
  public Integer quotient(Formula.Quotient quotient) {
    return PRODUCT;
  }

  @Override
  public Integer power(Formula.Power power) {
    return POWER;
  }

  @Override
  public Integer radical(Formula.Radical radical) {
    return ATOM;
  }

  @Override
  public Integer plusMinus(Formula.PlusMinus plusMinus) {
    return SUM;
  }

  @Override
  public Integer aggregate(Formula.Aggregate aggregate) {
    return PRODUCT;
  }

  @Override
  public Integer family(Formula.Family family) {
    return ATOM;
  }

  @Override
  public Integer application(Formula.Application application) {
    return ATOM;
  }

  @Override
  public Integer modulo(Formula.Modulo modulo) {
    return MODULO;
  }

  @Override
  public Integer relation(Formula.Relation relation) {
    return RELATION;
  }

  @Override
  public Integer listing(Formula.Listing listing) {
    return LISTING;
  }

  @Override
  public Integer words(Formula.Words words) {
    return ATOM;
  }
}
