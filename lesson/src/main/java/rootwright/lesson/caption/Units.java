package rootwright.lesson.caption;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.lesson.text.Part;
import rootwright.lesson.text.Phrase;
import rootwright.lesson.text.Speech;

/** Takes what is said apart into units that a caption does not divide. */
public final class Units {

  /** Words before which a line of a caption may well end. */
  private static final Set<String> BEFORE =
      Set.of(
          "and", "or", "but", "so", "that", "which", "where", "when", "if", "with", "for", "from",
          "of", "in", "on", "is", "are", "equals", "gives", "by", "over", "to");

  private static final int AFTER_PHRASE = 0;
  private static final int AT_RELATION = 1;
  private static final int BEFORE_JOINT = 3;
  private static final int AT_FORMULA = 4;
  private static final int ANYWHERE = 12;

  private final Wording wording;
  private final List<String> roots;
  private final List<Unit> units = new ArrayList<>();

  private Units(Wording wording, List<String> roots) {
    this.wording = wording;
    this.roots = roots;
  }

  /**
   * The units of a phrase.
   *
   * @param roots the names of the roots
   */
  public static List<Unit> of(Phrase phrase, Wording wording, List<String> roots) {
    Units made = new Units(wording, roots);
    boolean glue = false;
    for (Part part : phrase.parts()) {
      if (part instanceof Part.Words words) {
        if (glue && Speech.goesOn(words.text())) {
          made.pause();
        }
        made.words(words.text(), glue);
        glue = false;
      } else {
        made.formula(((Part.Mathematics) part).formula());
        glue = true;
      }
    }
    made.mindJoints();
    return List.copyOf(made.units);
  }

  /** After a formula with pauses inside, one more before the words go on. */
  private void pause() {
    Unit last = units.get(units.size() - 1);
    if (Speech.isOpen(last.text()) && last.text().length() < CaptionRules.LINE) {
      units.set(
          units.size() - 1,
          new Unit(last.text() + ",", last.words(), last.formula(), AFTER_PHRASE));
    }
  }

  private void words(String text, boolean afterFormula) {
    String said = Speech.words(text);
    boolean first = true;
    for (String word : said.strip().split("\\s+")) {
      if (word.isEmpty()) {
        continue;
      }
      boolean attached =
          first
              && afterFormula
              && !said.startsWith(" ")
              && !Character.isLetterOrDigit(word.charAt(0));
      if (attached && !units.isEmpty()) {
        Unit last = units.remove(units.size() - 1);
        units.add(
            new Unit(last.text() + word, last.words(), last.formula(), cost(word, AT_FORMULA)));
      } else {
        units.add(new Unit(word, spoken(word), false, cost(word, ANYWHERE)));
      }
      first = false;
    }
  }

  /** The sides of a relation are units; a relation sign goes with the side that it leads to. */
  private void formula(Formula formula) {
    if (!units.isEmpty()) {
      Unit last = units.remove(units.size() - 1);
      units.add(
          new Unit(
              last.text(), last.words(), last.formula(), Math.min(last.breakCost(), AT_FORMULA)));
    }
    if (formula instanceof Formula.Relation relation && !fits(spokenOf(formula))) {
      for (int k = 0; k < relation.sides().size(); k++) {
        Formula side =
            k == 0
                ? relation.sides().get(0)
                : new Formula.Relation(
                    List.of(new Formula.Words(""), relation.sides().get(k)),
                    List.of(relation.comparisons().get(k - 1)));
        unit(side, k < relation.sides().size() - 1 ? AT_RELATION : AT_FORMULA);
      }
    } else {
      unit(formula, AT_FORMULA);
    }
  }

  private void unit(Formula formula, int cost) {
    String spoken = spokenOf(formula);
    String written = UnicodeWriter.write(formula).strip();
    int words = spoken.split("\\s+").length;
    if (wording == Wording.SPOKEN && fits(spoken)) {
      units.add(new Unit(spoken, words, true, cost));
    } else if (fits(written)) {
      units.add(new Unit(written, words, true, cost));
    } else {
      units.add(new Unit("[the formula on the board]", words, true, cost));
    }
  }

  private String spokenOf(Formula formula) {
    return Speech.of(formula, roots).strip();
  }

  private static boolean fits(String text) {
    // One place is kept for the punctuation that may follow.
    return text.length() < CaptionRules.LINE;
  }

  private static int cost(String word, int otherwise) {
    char last = word.charAt(word.length() - 1);
    return ".,;:?!".indexOf(last) >= 0 ? AFTER_PHRASE : otherwise;
  }

  private void mindJoints() {
    for (int k = 0; k < units.size() - 1; k++) {
      Unit unit = units.get(k);
      boolean joint = BEFORE.contains(units.get(k + 1).text());
      if (joint && unit.breakCost() > BEFORE_JOINT) {
        units.set(k, new Unit(unit.text(), unit.words(), unit.formula(), BEFORE_JOINT));
      }
    }
  }

  private static int spoken(String word) {
    return word.chars().anyMatch(Character::isLetterOrDigit) ? 1 : 0;
  }
}
