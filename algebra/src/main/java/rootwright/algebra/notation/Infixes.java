package rootwright.algebra.notation;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The table of what may continue a piece. A new construct is a new row. */
final class Infixes {

  private static final Map<String, Infix> SIGNS = new HashMap<>();
  private static final Infix JUXTAPOSITION = new JuxtapositionInfix();

  static {
    SIGNS.put(",", new ListingInfix());
    SIGNS.put("mod", new ModuloInfix());
    SIGNS.put("\\pmod", new ModuloInfix());
    SIGNS.put("+", new SumInfix());
    SIGNS.put("-", new SumInfix());
    SIGNS.put("+-", new PlusMinusInfix());
    SIGNS.put("*", new TimesInfix());
    SIGNS.put("/", new OverInfix());
    SIGNS.put("^", new PowerInfix());
    for (String comparison : RelationInfix.comparisons()) {
      SIGNS.put(comparison, new RelationInfix());
    }
  }

  private Infixes() {}

  /** What a token continues a piece with, if it can; a bar closes what a bar opened. */
  static Optional<Infix> of(Token token, boolean barIsOpen) {
    return switch (token.kind()) {
      case SIGN ->
          SIGNS.containsKey(token.text())
              ? Optional.of(SIGNS.get(token.text()))
              : sideBySide(Prefixes.of(token).isPresent());
      case WORD ->
          SIGNS.containsKey(token.text()) ? Optional.of(SIGNS.get(token.text())) : sideBySide(true);
      case NUMBER, VULGAR, LETTER, OPEN -> sideBySide(true);
      case BAR -> sideBySide(!barIsOpen);
      case CLOSE, END -> Optional.empty();
    };
  }

  private static Optional<Infix> sideBySide(boolean canBegin) {
    return canBegin ? Optional.of(JUXTAPOSITION) : Optional.empty();
  }
}
