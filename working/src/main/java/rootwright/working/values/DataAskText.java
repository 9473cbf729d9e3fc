package rootwright.working.values;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rootwright.algebra.notation.AskReader;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.ReadAsk;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.subject.Inquiry;

/** What is asked of numbers with given values. */
sealed interface DataAskText {

  /** How the ask is shown. */
  Formula shown();

  /** The monic polynomial whose roots they are. */
  record ForPolynomial() implements DataAskText {
    @Override
    public Formula shown() {
      return new Formula.Words("the polynomial");
    }
  }

  /** The numbers themselves. */
  record ForNumbers(List<String> names) implements DataAskText {
    @Override
    public Formula shown() {
      return names.size() == 1
          ? Formula.name(names.get(0))
          : new Formula.Listing(names.stream().map(Formula::name).toList());
    }
  }

  /** An expression in them. */
  record ForExpression(Formula formula) implements DataAskText {
    @Override
    public Formula shown() {
      return formula;
    }
  }

  /**
   * Reads the ask of an inquiry.
   *
   * @throws UnreadableException if it is neither words that are known nor a formula in the numbers
   */
  static DataAskText read(Inquiry inquiry, SymmetricData data) throws UnreadableException {
    String words = inquiry.ask().toLowerCase(Locale.ROOT).replaceFirst("^(find |all )?(the )?", "");
    switch (words) {
      case "polynomial", "monic polynomial", "equation", "polynomials", "monic polynomials" -> {
        return new ForPolynomial();
      }
      case "numbers", "solutions", "values" -> {
        return new ForNumbers(data.names());
      }
      default -> {
        ReadAsk read = AskReader.read(inquiry.ask(), data.names(), Set.of());
        boolean all =
            read.formula() instanceof Formula.Listing listing
                && new HashSet<>(listing.items())
                    .equals(new HashSet<>(data.names().stream().map(Formula::name).toList()));
        return all ? new ForNumbers(data.names()) : new ForExpression(read.formula());
      }
    }
  }
}
