package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.review.LineText;

/** Takes a line apart: what is supposed, what is concluded, alternatives, equations. */
final class SpokenReader {

  private static final Pattern CASE =
      Pattern.compile(
          "^(?:(?:if|for|when|case|with|at|taking|suppose|assume|assuming|but for|but if)\\s+"
              + "([^:;]{1,60}?)(?:\\s*[:;,]\\s*|\\s+then\\s+|$)|"
              + "([^:;=,]{1,40}=\\s*[^:;=,]{1,40}):\\s)(.*)$",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern CALLED =
      Pattern.compile(
          "^(?:let\\s+)?(?:the\\s+)?(?:three |two |four )?roots\\s+(?:be|are|=)\\s+(.+)$",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern THROWN_OUT =
      Pattern.compile(
          "(?i)\\b(?:reject\\p{L}*|discard\\p{L}*|exclud\\p{L}*|not allowed|not possible|impossible"
              + "|extraneous|not real|invalid|thrown out|no real roots|leave out|ruled out)\\b");

  private static final Pattern ONE_VALUE =
      Pattern.compile("(\\p{L}\\w{0,3}\\s*=\\s*[-−+]?[\\d./√]+)");

  private static final Pattern ANSWER =
      Pattern.compile(
          "(?i)^.*\\b(?:answer|result|value|sum|total|minimum|maximum|least|greatest|min|max|area"
              + "|remainder|digit|number)\\b[^=]*?(?:\\bis\\b|=|:)\\s*([^=]+)$");

  /** Words and a colon before an equation. */
  private static final Pattern LABEL =
      Pattern.compile("^[^=:]*\\p{L}{3}[^=:]*:\\s+(.*=.*)$", Pattern.DOTALL);

  private static final Pattern WORD =
      Pattern.compile("(?<![\\\\\\p{L}])(?!sqrt|log|sum|prod|cos|sin|tan|disc)\\p{L}{3,}");

  private static final Pattern NOTHING =
      Pattern.compile(
          "^(?:there (?:is|are) )?(?:no (?:such |real |possible |valid )*(?:\\p{L}{1,12})?"
              + "(?: exists?)?|none|impossible|∅|\\\\varnothing|\\\\emptyset|does not exist)$",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern MEMBER =
      Pattern.compile("^(.+?)\\s*(?:∈|\\\\in\\b)\\s*\\\\?\\{(.+?)\\\\?}$");

  private static final Pattern OR =
      Pattern.compile("\\s*(?:\\bor\\b|∨|\\\\text\\{ ?or ?}|\\\\lor)\\s*");
  private static final Pattern COMPARISON = Pattern.compile("[=<>≤≥≠]");
  private static final Pattern WORDY = Pattern.compile("\\p{L}{3,}\\s+\\p{L}{2,}");

  private SpokenReader() {}

  /**
   * What a line says, piece by piece.
   *
   * @param before the last side of the line above, which a line beginning with = goes on from
   */
  static List<Said> read(String line, Optional<Formula> before) {
    List<Said> all = new ArrayList<>();
    for (String part : LineText.parts(line)) {
      part(part, before, all);
    }
    return all;
  }

  private static void part(String text, Optional<Formula> before, List<Said> all) {
    Matcher label = LABEL.matcher(text);
    Matcher supposed = CASE.matcher(text);
    if (label.matches() && !supposed.matches()) {
      part(LineText.bare(label.group(1)), before, all);
      return;
    }
    Matcher called = CALLED.matcher(text);
    if (text.isBlank()) {
      return;
    } else if (called.matches()) {
      all.add(called(called.group(1)));
      return;
    } else if (NOTHING.matcher(text).matches()) {
      all.add(new Said.Nothing());
      return;
    } else if (supposed.matches()) {
      String first = supposed.group(1) == null ? supposed.group(2) : supposed.group(1);
      Optional<Formula> formula = formula(first);
      if (formula.isPresent() && formula.get() instanceof Formula.Relation relation) {
        all.add(new Said.Case(relation));
        part(supposed.group(3).strip(), before, all);
        return;
      }
    }
    Matcher value = ONE_VALUE.matcher(text);
    Matcher answer = ANSWER.matcher(text);
    if (THROWN_OUT.matcher(text).find() && value.find()) {
      Optional<Formula> formula = formula(value.group(1));
      if (formula.isPresent() && formula.get() instanceof Formula.Relation relation) {
        all.add(new Said.ThrownOut(relation));
        return;
      }
    } else if (answer.matches() && WORDY.matcher(text).find() && formula(text).isEmpty()) {
      part(answer.group(1).strip(), before, all);
      return;
    }
    Matcher member = MEMBER.matcher(text);
    List<String> alternatives =
        member.matches() ? values(member.group(1), member.group(2)) : List.of(OR.split(text));
    if (alternatives.size() > 1) {
      all.add(oneOf(alternatives));
      return;
    }
    List<Said> pieces = new ArrayList<>();
    for (String piece : LineText.pieces(text)) {
      pieces.add(piece(piece, before));
    }
    all.addAll(together(pieces));
  }

  private static List<String> values(String left, String list) {
    List<String> all = new ArrayList<>();
    for (String value : list.split("[,;]")) {
      all.add(left + " = " + value.strip());
    }
    return all;
  }

  private static Said called(String list) {
    List<Formula> roots = new ArrayList<>();
    for (String part : list.split(",\\s*and\\s|,|;|\\band\\b")) {
      formula(part.strip()).ifPresent(roots::add);
    }
    return roots.size() >= 2 ? new Said.RootsCalled(roots) : new Said.Remark();
  }

  /** Alternatives without a left side of their own have that of the one before. */
  private static Said oneOf(List<String> texts) {
    List<Formula.Relation> all = new ArrayList<>();
    List<Formula> alone = new ArrayList<>();
    Optional<Formula> left = Optional.empty();
    for (String text : texts) {
      Optional<Formula> read = formula(text.strip());
      if (read.isEmpty()) {
        return new Said.Unread(refusal(text.strip()));
      } else if (read.get() instanceof Formula.Relation relation) {
        left = Optional.of(relation.sides().get(0));
        all.addAll(signs(relation));
      } else if (left.isPresent()) {
        all.addAll(signs(equation(left.get(), read.get())));
      } else {
        alone.add(read.get());
      }
    }
    return all.isEmpty() ? new Said.Alone(alone) : new Said.OneOf(all);
  }

  private static Formula.Relation equation(Formula left, Formula right) {
    return (Formula.Relation) Formula.equation(left, right);
  }

  /** ± stands for two alternatives. */
  private static List<Formula.Relation> signs(Formula.Relation relation) {
    boolean two = relation.contains(part -> part instanceof Formula.PlusMinus);
    return two ? List.of(withSign(relation, true), withSign(relation, false)) : List.of(relation);
  }

  private static Formula.Relation withSign(Formula.Relation relation, boolean plus) {
    return (Formula.Relation)
        relation.rewrite(
            part ->
                part instanceof Formula.PlusMinus both
                    ? plus ? both.before().plus(both.after()) : both.before().minus(both.after())
                    : part);
  }

  private static Said piece(String piece, Optional<Formula> before) {
    if (!COMPARISON.matcher(piece).find() && WORD.matcher(piece).find()) {
      return new Said.Remark();
    }
    boolean continued = piece.startsWith("=") && !piece.startsWith("=>");
    if (continued && before.isEmpty()) {
      return new Said.Unread(Optional.empty());
    }
    Optional<Formula> read = formula(continued ? piece.substring(1).strip() : piece);
    if (read.isEmpty()) {
      boolean words = !LineText.hasEquation(piece) || WORDY.matcher(piece).find();
      return words ? new Said.Remark() : new Said.Unread(refusal(piece));
    }
    if (continued) {
      List<Formula> sides = new ArrayList<>(List.of(before.orElseThrow()));
      sides.addAll(
          read.get() instanceof Formula.Relation relation ? relation.sides() : List.of(read.get()));
      return new Said.Chain(
          (Formula.Relation) Formula.equation(sides.toArray(Formula[]::new)), true);
    } else if (read.get() instanceof Formula.Relation relation) {
      List<Formula.Relation> signs = signs(relation);
      return signs.size() > 1 ? new Said.OneOf(signs) : new Said.Chain(relation, false);
    } else if (read.get() instanceof Formula.Listing list) {
      return new Said.Alone(list.items());
    }
    return read.get() instanceof Formula.Words
        ? new Said.Remark()
        : new Said.Alone(List.of(read.get()));
  }

  /** Two values for one name on one line are alternatives; "k = 2, −2" is "k = 2 or k = −2". */
  private static List<Said> together(List<Said> pieces) {
    List<Said> all = new ArrayList<>();
    for (Said piece : pieces) {
      Said last = all.isEmpty() ? new Said.Remark() : all.get(all.size() - 1);
      List<Formula.Relation> soFar = values(last);
      List<Formula.Relation> more = values(piece);
      boolean alone = piece instanceof Said.Alone;
      if (!soFar.isEmpty() && alone) {
        more =
            ((Said.Alone) piece)
                .values().stream().map(v -> equation(soFar.get(0).sides().get(0), v)).toList();
      }
      boolean same =
          !soFar.isEmpty()
              && !more.isEmpty()
              && soFar.get(0).sides().get(0).equals(more.get(0).sides().get(0));
      if (same) {
        List<Formula.Relation> both = new ArrayList<>(soFar);
        both.addAll(more);
        all.set(all.size() - 1, new Said.OneOf(both));
      } else {
        all.add(piece);
      }
    }
    return all;
  }

  /** The equations of a piece that gives values to one name. */
  private static List<Formula.Relation> values(Said said) {
    if (said instanceof Said.Chain chain
        && chain.relation().sides().size() == 2
        && chain.relation().sides().get(0) instanceof Formula.Name
        && chain.relation().comparisons().get(0) == Formula.Comparison.EQUAL) {
      return List.of(chain.relation());
    }
    return said instanceof Said.OneOf one
            && one.alternatives().get(0).sides().get(0) instanceof Formula.Name
        ? one.alternatives()
        : List.of();
  }

  private static Optional<Formula> formula(String text) {
    try {
      return Optional.of(FormulaReader.formula(text));
    } catch (UnreadableException unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<Refusal> refusal(String text) {
    try {
      FormulaReader.formula(text);
      return Optional.empty();
    } catch (UnreadableException unreadable) {
      return Optional.of(unreadable.refusal());
    }
  }
}
