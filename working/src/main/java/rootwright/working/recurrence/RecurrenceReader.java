package rootwright.working.recurrence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.subject.Inquiry;

/** Reads “u_0 = 2, u_1 = 3, u_{k+2} = 5u_{k+1} − 6u_k”, in the ask or in the polynomial's place. */
final class RecurrenceReader {

  private static final int LONGEST = 2000;
  private static final int HIGHEST_ORDER = 8;
  private static final int LARGEST_SHIFT = 1000;

  private static final Pattern RUNNING =
      Pattern.compile(
          "(?<![A-Za-z\\\\])(?<letter>[A-Za-z])\\s*(?:_\\s*\\{\\s*(?=[a-z])|\\(\\s*(?=[ijklmn]))"
              + "(?<index>[a-z])\\s*[+-]\\s*\\d+\\s*[})]");
  private static final Pattern INDEX =
      Pattern.compile(
          "\\s*(?:(?<running>[a-z])\\s*(?:(?<sign>[+-])\\s*(?<by>\\d{1,4}))?|(?<number>-?\\d{1,4}))\\s*");

  private RecurrenceReader() {}

  /**
   * What was read.
   *
   * @param sequence the sequence
   * @param ask what is asked
   * @param redundant whether more first members were given than are needed, in agreement
   */
  record Read(Recurrence sequence, RecurrenceAsk ask, boolean redundant) {}

  /** Whether an inquiry gives a recurrence, judged by its form. */
  static boolean isLike(Inquiry inquiry) {
    String text = text(inquiry);
    return text.length() <= LONGEST && text.contains("=") && RUNNING.matcher(text).find();
  }

  private static String text(Inquiry inquiry) {
    List<String> pieces = new ArrayList<>();
    if (!inquiry.polynomial().isEmpty()) {
      pieces.add(inquiry.polynomial());
    }
    pieces.addAll(inquiry.conditions());
    return plain(String.join(", ", pieces));
  }

  /** Subscripts and minus signs as they are typed. */
  static String plain(String text) {
    String subscripts = "₀₁₂₃₄₅₆₇₈₉₊₋ₙₖₘ";
    String letters = "0123456789+-nkm";
    StringBuilder plain = new StringBuilder();
    boolean below = false;
    for (int k = 0; k < text.length(); k++) {
      char c = text.charAt(k);
      int at = subscripts.indexOf(c);
      if (at >= 0 && !below) {
        plain.append("_{");
      } else if (at < 0 && below) {
        plain.append('}');
      }
      below = at >= 0;
      plain.append(at >= 0 ? letters.charAt(at) : c == '−' || c == '–' ? '-' : c);
    }
    return below ? plain.append('}').toString() : plain.toString();
  }

  static Read read(Inquiry inquiry) throws UnreadableException {
    String text = text(inquiry);
    Matcher running = RUNNING.matcher(text);
    if (!running.find()) {
      throw new IllegalArgumentException("no recurrence in " + text);
    }
    String letter = running.group("letter");
    String index = running.group("index");
    Map<Integer, Rational> members = new TreeMap<>();
    Optional<Shifted> rule = Optional.empty();
    for (String piece : text.split("[,;]|\\band\\b")) {
      String bare =
          piece.replaceAll("\\bfor\\b.*|\\bwhere\\b.*|\\bwhen\\b.*|\\bif\\b.*", "").strip();
      if (bare.isEmpty() || bare.matches(".*(?:>|≥|<|≤|\\\\ge|\\\\le).*")) {
        continue;
      }
      String[] sides = bare.split("=");
      if (sides.length < 2) {
        throw refused("“%s” is neither a member nor a recurrence.".formatted(bare), inquiry, bare);
      }
      List<Shifted> read = new ArrayList<>();
      for (String side : sides) {
        read.add(shifted(side, letter, index, inquiry));
      }
      boolean isRule = read.stream().anyMatch(side -> !side.running().isEmpty());
      if (isRule && (rule.isPresent() || sides.length > 2)) {
        throw refused("One recurrence is expected; here is another.", inquiry, bare);
      } else if (isRule) {
        rule = Optional.of(read.get(0).minus(read.get(1)));
      } else {
        member(read, members, bare, inquiry);
      }
    }
    Shifted found =
        rule.orElseThrow(() -> refused("There is no recurrence.", inquiry, inquiry.ask()));
    Built built = build(found, members, letter, index, inquiry);
    RecurrenceAsk ask =
        RecurrenceAsk.read(inquiry.ask(), letter, index)
            .orElseThrow(
                () ->
                    new UnreadableException(
                        new Refusal(
                            "unsupported",
                            "“%s” is not asked of a sequence here.".formatted(inquiry.ask()),
                            inquiry.statement().find(),
                            0,
                            "such as %s_10, %s_100 mod 7, last two digits of %s_50, closed form, period mod 7"
                                .formatted(letter, letter, letter),
                            letter + "_10")));
    return new Read(built.sequence(), ask, built.redundant());
  }

  private record Built(Recurrence sequence, boolean redundant) {}

  private static Built build(
      Shifted rule, Map<Integer, Rational> members, String letter, String index, Inquiry inquiry)
      throws UnreadableException {
    if (!rule.numbered().isEmpty()) {
      throw refused("A single member stands in the recurrence.", inquiry, inquiry.ask());
    }
    TreeMap<Integer, Rational> shifts = new TreeMap<>(rule.running());
    int low = shifts.firstKey();
    int d = shifts.lastKey() - low;
    if (d < 1 || d > HIGHEST_ORDER) {
      throw refused(
          "The recurrence reaches over %d places; 1 to %d are worked.".formatted(d, HIGHEST_ORDER),
          inquiry,
          inquiry.ask());
    }
    Rational lead = shifts.lastEntry().getValue();
    List<Rational> coefficients = new ArrayList<>();
    for (int k = 1; k <= d; k++) {
      coefficients.add(shifts.getOrDefault(low + d - k, Rational.ZERO).over(lead).negate());
    }
    Rational constant = rule.constant().over(lead).negate();
    int start = members.keySet().stream().min(Integer::compare).orElse(0);
    List<Rational> first = new ArrayList<>();
    for (int k = start; k < start + d; k++) {
      Rational member = members.get(k);
      if (member == null) {
        throw refused(
            "%d neighbouring members are needed to begin with; %s_%d is not given."
                .formatted(d, letter, k),
            inquiry,
            inquiry.ask());
      }
      first.add(member);
    }
    Recurrence sequence = new Recurrence(letter, index, coefficients, constant, start, first);
    int last = members.keySet().stream().max(Integer::compare).orElse(start);
    List<Rational> all = sequence.members(last - start + 1);
    for (Map.Entry<Integer, Rational> member : members.entrySet()) {
      if (!all.get(member.getKey() - start).equals(member.getValue())) {
        throw refused(
            "By the recurrence %s_%d is %s, not %s."
                .formatted(
                    letter, member.getKey(), all.get(member.getKey() - start), member.getValue()),
            inquiry,
            inquiry.ask());
      }
    }
    return new Built(sequence, members.size() > d);
  }

  /** u_0 = 2, or u_0 = u_1 = 1. */
  private static void member(
      List<Shifted> sides, Map<Integer, Rational> members, String piece, Inquiry inquiry)
      throws UnreadableException {
    Shifted value = sides.get(sides.size() - 1);
    boolean number = value.numbered().isEmpty();
    for (Shifted side : sides.subList(0, sides.size() - 1)) {
      boolean single =
          side.numbered().size() == 1
              && side.constant().isZero()
              && side.numbered().values().iterator().next().isOne();
      if (!single || !number) {
        throw refused("“%s” gives no member.".formatted(piece), inquiry, piece);
      }
      int at = side.numbered().keySet().iterator().next();
      Rational before = members.putIfAbsent(at, value.constant());
      if (before != null && !before.equals(value.constant())) {
        throw refused("Two values are given for one member.", inquiry, piece);
      }
    }
  }

  /**
   * A linear expression in members of the sequence.
   *
   * @param running coefficients of members with the running index, by what is added to it
   * @param numbered coefficients of members with a number for index
   * @param constant what stands alone
   */
  private record Shifted(
      Map<Integer, Rational> running, Map<Integer, Rational> numbered, Rational constant) {

    Shifted minus(Shifted other) {
      Map<Integer, Rational> differences = new HashMap<>(running);
      other.running().forEach((shift, c) -> differences.merge(shift, c.negate(), Rational::plus));
      differences.values().removeIf(Rational::isZero);
      Map<Integer, Rational> single = new HashMap<>(numbered);
      other.numbered().forEach((at, c) -> single.merge(at, c.negate(), Rational::plus));
      return new Shifted(differences, single, constant.minus(other.constant()));
    }
  }

  private static Shifted shifted(String side, String letter, String index, Inquiry inquiry)
      throws UnreadableException {
    Matcher term =
        Pattern.compile(
                "(?<![A-Za-z\\\\])"
                    + Pattern.quote(letter)
                    + "\\s*(?:_\\s*\\{(?<braced>[^{}]*)\\}|_\\s*(?<plain>\\d+|[a-z](?![A-Za-z]))|_?\\((?<bracketed>[^()]*)\\))")
            .matcher(side);
    List<String> names = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    int from = 0;
    while (term.find()) {
      String inside =
          term.group("braced") != null
              ? term.group("braced")
              : term.group("plain") != null ? term.group("plain") : term.group("bracketed");
      Matcher at = INDEX.matcher(inside);
      if (!at.matches() || (at.group("running") != null && !at.group("running").equals(index))) {
        throw refused("The index “%s” is not understood.".formatted(inside), inquiry, inside);
      }
      String key = inside.replaceAll("\\s", "");
      if (!names.contains(key)) {
        names.add(key);
      }
      text.append(side, from, term.start())
          .append(" y_")
          .append(names.indexOf(key) + 1)
          .append(' ');
      from = term.end();
    }
    text.append(side.substring(from));
    Map<String, Integer> unknowns = new HashMap<>();
    for (int k = 0; k < names.size(); k++) {
      unknowns.put("y_" + (k + 1), k);
    }
    RationalFunction function =
        FormulaExpansion.expand(FormulaReader.formula(text.toString().strip()), unknowns);
    MultivariatePolynomial polynomial =
        function.isPolynomial()
            ? function
                .numerator()
                .times(function.denominator().coefficient(Monomial.ONE).reciprocal())
            : function.numerator();
    if (!function.isPolynomial() || polynomial.degree() > 1) {
      throw refused("The recurrence is not linear.", inquiry, side.strip());
    }
    Map<Integer, Rational> running = new HashMap<>();
    Map<Integer, Rational> numbered = new HashMap<>();
    for (int k = 0; k < names.size(); k++) {
      Rational c = polynomial.coefficient(Monomial.power(k, 1));
      Matcher at = INDEX.matcher(names.get(k));
      if (!at.matches() || c.isZero()) {
        continue;
      }
      if (at.group("number") != null) {
        numbered.merge(Integer.parseInt(at.group("number")), c, Rational::plus);
      } else {
        int by = at.group("by") == null ? 0 : Integer.parseInt(at.group("by"));
        if (by > LARGEST_SHIFT) {
          throw refused("The index “%s” reaches too far.".formatted(names.get(k)), inquiry, side);
        }
        running.merge("-".equals(at.group("sign")) ? -by : by, c, Rational::plus);
      }
    }
    return new Shifted(running, numbered, polynomial.coefficient(Monomial.ONE));
  }

  private static UnreadableException refused(String sentence, Inquiry inquiry, String part) {
    String find = inquiry.statement().find();
    String whole = find.contains(part) ? find : inquiry.statement().polynomial();
    int at = Math.max(0, whole.indexOf(part));
    return new UnreadableException(
        new Refusal(
            "recurrence-unread",
            sentence,
            whole,
            whole.codePointCount(0, at),
            "such as u_0 = 2, u_1 = 3, u_{k+2} = 5u_{k+1} - 6u_k",
            ""));
  }
}
