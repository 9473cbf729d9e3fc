package rootwright.press;

import java.util.stream.*;
import rootwright.algebra.notation.*;
import rootwright.press.formula.FormulaScripts;

final @SuppressWarnings("MissingOverride") class SketchScripts implements FormulaCases<String> {
  static final FormulaScripts SCRIPTS =
      new FormulaScripts(
          f -> f.choose(new SketchScripts()),
          f ->
              "<math xmlns=\"http://www.w3.org/1998/Math/MathML\"><mtext>"
                  + UnicodeWriter.write(f)
                  + "</mtext></math>",
          UnicodeWriter::write,
          PlainWriter::write,
          PlainWriter::write);

  String g(Formula f) {
    return f.choose(this);
  }

  String p(Formula f) {
    return f instanceof Formula.Sum
            || f instanceof Formula.Negative
            || f instanceof Formula.Relation
        ? "\\left(" + g(f) + "\\right)"
        : g(f);
  }

  public String numeral(Formula.Numeral n) {
    var v = n.value();
    return v.isInteger()
        ? v.toString()
        : (v.signum() < 0 ? "-" : "")
            + "\\frac{"
            + v.numerator().abs()
            + "}{"
            + v.denominator()
            + "}";
  }

  public String name(Formula.Name n) {
    return (n.letter().length() > 1 ? "\\mathrm{" + n.letter() + "}" : n.letter())
        + (n.index().isEmpty() ? "" : "_{" + n.index() + "}");
  }

  public String imaginaryUnit(Formula.ImaginaryUnit i) {
    return "i";
  }

  public String negative(Formula.Negative n) {
    return "-" + p(n.of());
  }

  public String sum(Formula.Sum s) {
    StringBuilder b = new StringBuilder();
    for (Formula t : s.terms()) {
      if (b.length() == 0) b.append(g(t).isEmpty() ? "\\text{}" : g(t));
      else if (t instanceof Formula.Negative n) b.append("-").append(p(n.of()));
      else b.append("+").append(g(t));
    }
    return b.toString();
  }

  public String product(Formula.Product s) {
    return s.factors().stream().map(this::p).collect(Collectors.joining(" "));
  }

  public String quotient(Formula.Quotient q) {
    return "\\frac{" + g(q.over()) + "}{" + g(q.under()) + "}";
  }

  public String power(Formula.Power q) {
    return p(q.base()) + "^{" + g(q.exponent()) + "}";
  }

  public String radical(Formula.Radical r) {
    return "\\sqrt" + (r.index() == 2 ? "" : "[" + r.index() + "]") + "{" + g(r.radicand()) + "}";
  }

  public String plusMinus(Formula.PlusMinus q) {
    return g(q.before()) + "\\pm " + p(q.after());
  }

  public String aggregate(Formula.Aggregate a) {
    return (a.operation() == Formula.Aggregate.Operation.SUM ? "\\sum " : "\\prod ") + p(a.body());
  }

  public String family(Formula.Family a) {
    return a.letter() + "_{" + g(a.index()) + "}";
  }

  public String application(Formula.Application a) {
    return a.function()
        + "("
        + a.arguments().stream().map(this::g).collect(Collectors.joining(", "))
        + ")";
  }

  public String modulo(Formula.Modulo m) {
    return g(m.of()) + "\\bmod " + g(m.modulus());
  }

  public String relation(Formula.Relation r) {
    StringBuilder b = new StringBuilder(g(r.sides().get(0)));
    if (b.length() == 0) b.append("\\text{}");
    for (int k = 1; k < r.sides().size(); k++)
      b.append(r.comparisons().get(k - 1) == Formula.Comparison.EQUAL ? "=" : "<")
          .append(g(r.sides().get(k)));
    return b.toString();
  }

  public String listing(Formula.Listing l) {
    return l.items().stream().map(this::g).collect(Collectors.joining(",\\ "));
  }

  public String words(Formula.Words w) {
    return "\\text{" + w.text() + "}";
  }
}
