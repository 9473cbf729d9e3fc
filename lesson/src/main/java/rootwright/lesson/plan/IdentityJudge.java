package rootwright.lesson.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.check.Verdict;
import rootwright.working.proof.ExpansionCheck;
import rootwright.working.proof.Fact;
import rootwright.working.proof.General;
import rootwright.working.proof.Identity;
import rootwright.working.proof.Letters;
import rootwright.working.proof.Proof;
import rootwright.working.proof.ProofLine;
import rootwright.working.topic.Topic;

/** Formulas about any polynomial with roots in these letters. */
final class IdentityJudge implements LineJudge {

  private final Letters letters;
  private final Map<String, Formula> functions = new HashMap<>();
  private final Map<String, Formula> known = new HashMap<>();
  private final Set<String> names;

  private IdentityJudge(Letters letters, List<General> claims) {
    this.letters = letters;
    names = new HashSet<>(letters.roots());
    names.add("x");
    names.add(Identity.LEAD);
    for (General claim : claims) {
      Identity identity = claim.in(letters);
      functions.putAll(identity.functions());
      identity.sides().forEach(side -> names.addAll(FormulaNames.in(side)));
      if (ExpansionCheck.of(identity).isConfirmed()) {
        known.put(PlainWriter.write(identity.shown()), identity.shown());
      }
    }
    functions.values().forEach(body -> names.addAll(FormulaNames.in(body)));
  }

  /** For the lines about a fact. */
  static IdentityJudge of(Fact fact, Letters letters) {
    List<General> claims = new ArrayList<>(List.of(fact.shown()));
    for (Proof.Length length : Proof.Length.values()) {
      claims.addAll(claims(fact.proof().lines(length)));
    }
    return new IdentityJudge(letters, claims);
  }

  /** For the lines of a trick and everything else that belongs to a topic. */
  static IdentityJudge of(Topic topic, Letters letters) {
    List<General> claims = new ArrayList<>(claims(topic.trick().lines()));
    topic.facts().forEach(fact -> claims.add(fact.shown()));
    return new IdentityJudge(letters, claims);
  }

  /** Where there is neither fact nor topic. */
  static IdentityJudge of(Letters letters) {
    return new IdentityJudge(letters, List.of(General.equation("e_1 = p_1")));
  }

  private static List<General> claims(List<ProofLine> lines) {
    return lines.stream().map(ProofLine::claim).flatMap(Optional::stream).toList();
  }

  @Override
  public Optional<Known> known(String written) {
    return Optional.ofNullable(known.get(written))
        .map(formula -> new Known(formula, Optional.empty(), false));
  }

  @Override
  public Set<String> letters() {
    return names;
  }

  @Override
  public List<String> roots() {
    return letters.roots();
  }

  @Override
  public Verdict equal(Formula.Relation equation) {
    return ExpansionCheck.of(new Identity(letters, equation.sides(), functions));
  }
}
