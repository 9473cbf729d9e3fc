package rootwright.desk.figure;

import java.util.List;

/**
 * How the real roots move with a letter: the set where P(x) = 0 in the plane of the letter and x.
 *
 * @param letter the letter
 * @param unknown the unknown of the polynomial
 * @param coefficients by the power of the unknown, each by the power of the letter, from 0 up
 * @param values values of the letter that are the answer
 * @param spans ranges of the letter that are the answer
 */
public record LetterPicture(
    String letter,
    String unknown,
    List<List<Double>> coefficients,
    List<Double> values,
    List<Span> spans)
    implements Picture {

  /** Keeps its own copies. */
  public LetterPicture {
    coefficients = coefficients.stream().map(List::copyOf).toList();
    values = List.copyOf(values);
    spans = List.copyOf(spans);
  }

  /**
   * A range of the letter.
   *
   * @param from its lower end; minus infinity if it has none
   * @param to its upper end; infinity if it has none
   * @param fromIn whether the lower end belongs to it
   * @param toIn whether the upper end belongs to it
   */
  public record Span(double from, double to, boolean fromIn, boolean toIn) {}

  @Override
  public String kind() {
    return "letter";
  }
}
