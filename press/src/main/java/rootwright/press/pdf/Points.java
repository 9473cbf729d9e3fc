package rootwright.press.pdf;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as they are written in formatting objects. */
final class Points {

  /** Points of 1/72 inch in a millimetre. */
  static final double A_MILLIMETRE = 72 / 25.4;

  private Points() {}

  /** {@code 12.346pt}. */
  static String pt(double length) {
    return bare(length) + "pt";
  }

  /** {@code 12.346}. */
  static String bare(double length) {
    return BigDecimal.valueOf(length)
        .setScale(3, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
