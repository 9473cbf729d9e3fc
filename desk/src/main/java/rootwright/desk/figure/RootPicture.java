package rootwright.desk.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.enclosure.Dyadic;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * What a picture of a polynomial needs: its roots in the plane and its coefficients for the curve.
 *
 * @param roots the distinct roots, real ones first and ascending
 * @param coefficients decimal, highest power first
 */
public record RootPicture(List<PicturedRoot> roots, List<String> coefficients) {

  private static final int DIGITS = 15;
  private static final MathContext WRITTEN = new MathContext(DIGITS, RoundingMode.HALF_EVEN);
  private static final MathContext OUTWARD = new MathContext(3, RoundingMode.UP);

  public RootPicture {
    roots = List.copyOf(roots);
    coefficients = List.copyOf(coefficients);
  }

  /**
   * The picture of a polynomial; costs one enclosure of its roots.
   *
   * @param polynomial degree from 1 to {@link RootEnclosures#HIGHEST_DEGREE}
   */
  public static RootPicture of(Polynomial polynomial) {
    List<PicturedRoot> roots =
        RootEnclosures.of(polynomial, DIGITS).stream().map(RootPicture::pictured).toList();
    List<String> coefficients = new ArrayList<>();
    for (int power = polynomial.degree(); power >= 0; power--) {
      coefficients.add(decimal(polynomial.coefficient(power), WRITTEN));
    }
    return new RootPicture(roots, coefficients);
  }

  private static PicturedRoot pictured(EnclosedRoot root) {
    return new PicturedRoot(
        decimal(root.disc().realCentre(), WRITTEN),
        decimal(root.disc().imaginaryCentre(), WRITTEN),
        decimal(root.disc().radius(), OUTWARD),
        root.multiplicity(),
        root.real());
  }

  private static String decimal(Dyadic number, MathContext context) {
    return decimal(number.toRational(), context);
  }

  private static String decimal(Rational number, MathContext context) {
    return new BigDecimal(number.numerator())
        .divide(new BigDecimal(number.denominator()), context)
        .stripTrailingZeros()
        .toString();
  }
}
