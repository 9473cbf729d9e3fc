package rootwright.working.check.exact;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;
import rootwright.working.step.LetteredSetting;
import rootwright.working.step.Setting;

/** Whether an equality holds identically in several letters. */
final class IdentityInLetters {

  private static final String FORMAL = "exact normal form in the letters";
  private static final String GRID = "exact normal form at more values of the letters than degrees";

  private IdentityInLetters() {}

  /** An equality in a setting with free letters that are not in the polynomial. */
  static Verdict of(Claim.Equal claim) {
    Setting setting = claim.setting();
    List<String> letters = setting.free();
    boolean letterAlone =
        claim.sides().stream().noneMatch(side -> meetsRoots(side, setting.roots()))
            && setting.definitions().values().stream()
                .noneMatch(meaning -> meetsRoots(meaning, setting.roots()));
    if (letterAlone) {
      return formal(
          new Setting(
              Polynomial.X.power(letters.size()),
              letters,
              setting.functions(),
              setting.definitions(),
              List.of()),
          claim.sides());
    }
    int total =
        DegreeInLetter.ofDifferences(claim.sides(), DegreeScope.of(setting, Set.copyOf(letters)));
    int[] degrees =
        letters.stream()
            .mapToInt(
                letter ->
                    DegreeInLetter.ofDifferences(claim.sides(), DegreeScope.of(setting, letter)))
            .toArray();
    return new LetterGrid(letters, total, degrees)
        .everywhere(GRID, point -> at(point, setting, claim.sides()));
  }

  /** An equality about the roots of a polynomial with letters in its coefficients. */
  static Verdict of(Claim.EqualWithLetters claim) {
    LetteredSetting setting = claim.setting();
    // Where a root is named, what vanishes at a repeated root need not vanish in the algebra.
    boolean named =
        claim.sides().stream().anyMatch(side -> namesRoot(side, setting)) && setting.degree() > 1;
    int total =
        DegreeInLetter.ofDifferences(
            claim.sides(), DegreeScope.of(setting, Set.copyOf(setting.letters())));
    int[] degrees =
        setting.letters().stream()
            .mapToInt(
                letter ->
                    DegreeInLetter.ofDifferences(
                        claim.sides(), DegreeScope.of(setting, Set.of(letter))))
            .toArray();
    return new LetterGrid(setting.letters(), total, degrees)
        .everywhere(
            GRID,
            point ->
                setting
                    .at(point)
                    .filter(special -> !named || special.polynomial().isSquarefree())
                    .flatMap(special -> at(point, special, claim.sides())));
  }

  private static Verdict formal(Setting setting, List<Formula> sides) {
    FormalEvaluation evaluation =
        new FormalEvaluation(setting, new Unknowns(setting.roots().size()), Map.of());
    RationalFunction left = evaluation.of(sides.get(0));
    for (Formula side : sides.subList(1, sides.size())) {
      RationalFunction right = evaluation.of(side);
      if (!left.isSameFunction(right)) {
        return new Verdict.Refuted("the sides differ as functions of the letters");
      }
      left = right;
    }
    return Verdict.confirmed(FORMAL);
  }

  private static Optional<Verdict> at(
      Map<String, Rational> point, Setting setting, List<Formula> sides) {
    try {
      return Optional.of(ExactCheck.equalAt(setting, sides, point, new HashMap<>()));
    } catch (Unevaluable pole) {
      if (pole.reason() == Unevaluable.Cause.ZERO_DENOMINATOR) {
        return Optional.empty();
      }
      throw pole;
    }
  }

  /** Whether a formula is about roots in any way, or holds what only numbers may stand in. */
  private static boolean meetsRoots(Formula formula, List<String> roots) {
    return formula.contains(
        part ->
            part instanceof Formula.Aggregate
                || part instanceof Formula.Family
                || part instanceof Formula.Radical
                || part instanceof Formula.ImaginaryUnit
                || (part instanceof Formula.Name name && roots.contains(name.spelling())));
  }

  /** Under Σ and Π a name stands for every root in turn. */
  private static boolean namesRoot(Formula formula, LetteredSetting setting) {
    if (formula instanceof Formula.Name name) {
      Set<String> defined = setting.definitions().keySet();
      return setting.roots().contains(name.spelling()) || defined.contains(name.spelling());
    }
    return !(formula instanceof Formula.Aggregate)
        && formula.parts().stream().anyMatch(part -> namesRoot(part, setting));
  }
}
