package rootwright.algebra.notation;

import java.util.IdentityHashMap;

/**
 * A formula with the place of each part in the text it was read from.
 *
 * @param text what was typed
 * @param read the formula and its readings
 * @param places the code point at which a part begins, by the very object
 */
record PlacedFormula(String text, ReadFormula read, IdentityHashMap<Formula, Integer> places) {

  Formula formula() {
    return read.formula();
  }

  int placeOf(Formula part) {
    return places.getOrDefault(part, 0);
  }

  UnreadableException refused(String code, String sentence, Formula part, String expected) {
    return refused(code, sentence, part, expected, "");
  }

  UnreadableException refused(
      String code, String sentence, Formula part, String expected, String mend) {
    return new UnreadableException(
        new Refusal(code, sentence, text, placeOf(part), expected, mend));
  }
}
