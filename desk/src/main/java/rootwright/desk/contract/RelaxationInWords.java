package rootwright.desk.contract;

import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.composing.scan.Relaxation;

/** What would help an order that found nothing, one sentence. */
public final class RelaxationInWords {

  private RelaxationInWords() {}

  /** The sentence. */
  public static String of(Relaxation relaxation) {
    if (relaxation instanceof Relaxation.InSample sample) {
      return "In a sample of %,d of %,d candidates: %s"
          .formatted(sample.examined(), sample.all(), of(sample.relaxation()));
    }
    String example =
        relaxation.examples().isEmpty()
            ? ""
            : ", such as "
                + UnicodeWriter.write(PolynomialFormula.of(relaxation.examples().get(0), "x"));
    String found =
        relaxation.candidates() == 1
            ? "one is found" + example
            : "%d are found%s".formatted(relaxation.candidates(), example);
    if (relaxation instanceof Relaxation.WithoutFilter without) {
      return "Without the wish “%s” %s.".formatted(without.explanation(), found);
    } else if (relaxation instanceof Relaxation.WeakerFilter weaker) {
      return "With “%s” instead %s.".formatted(weaker.explanation(), found);
    }
    return "With coefficients in %s %s.".formatted(((Relaxation.WiderBox) relaxation).box(), found);
  }
}
