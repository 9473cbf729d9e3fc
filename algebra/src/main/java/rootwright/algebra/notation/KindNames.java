package rootwright.algebra.notation;

/** What the kinds of formula that cannot stand in a polynomial are called in a message. */
final class KindNames extends SomeFormulaCases<String> {

  static final KindNames TABLE = new KindNames();

  private KindNames() {}

  @Override
  protected String otherwise(Formula formula) {
    return "“" + PlainWriter.write(formula) + "”";
  }

  @Override
  public String imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return "The imaginary unit i";
  }

  @Override
  public String radical(Formula.Radical radical) {
    return "A root sign";
  }

  @Override
  public String plusMinus(Formula.PlusMinus plusMinus) {
    return "The sign ± (two values at once)";
  }

  @Override
  public String aggregate(Formula.Aggregate aggregate) {
    return aggregate.operation() == Formula.Aggregate.Operation.SUM
        ? "A sum over the roots"
        : "A product over the roots";
  }

  @Override
  public String application(Formula.Application application) {
    return "The word “" + application.function() + "”";
  }

  @Override
  public String modulo(Formula.Modulo modulo) {
    return "A residue";
  }

  @Override
  public String relation(Formula.Relation relation) {
    return "A comparison";
  }

  @Override
  public String listing(Formula.Listing listing) {
    return "A list with commas";
  }
}
