package rootwright.working.letters;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.NumberDomain;

/** Reads one condition, in words or as a relation. */
final class ConditionReader {

  private static final Pattern PROGRESSION =
      Pattern.compile(
          "(?:all |its |the )*(?:roots|solutions)?(?: are| is| form)*(?: in| an| a)* ?"
              + "(?<sort>arithmetic|geometric|harmonic|ap|gp|hp)(?: progression| sequence)?");
  private static final Pattern REPEATED =
      Pattern.compile(
          "(?:there is |it has |has |with |p has )?(?:a |an )?(?<times>double|repeated|multiple|equal|triple)"
              + "(?: real)? (?:roots?|solutions?)"
              + "|two (?:of (?:the|its) )?roots (?:are )?(?:equal|the same)");
  private static final Pattern NATURE =
      Pattern.compile(
          "(?:all |both |its |the |only |has |it has )*(?:(?:roots|solutions)(?: are| all| being)* (?<after>"
              + Natures.WORDS
              + ")|(?<before>"
              + Natures.WORDS
              + ") (?:roots|solutions))(?: only)?");
  private static final Pattern COUNT =
      Pattern.compile(
          "(?:there (?:is|are) |it has |has |with )?(?:exactly |only |a )?(?<count>no|unique|single|one|two|three|four|five|six|\\d+)"
              + "(?: distinct| different)?(?: real)?(?: distinct| different)? (?<what>roots?|solutions?|zeros?)");
  private static final Pattern RELATED =
      Pattern.compile(
          "(?:one|a) (?:root|solution) is (?<how>.+?) (?:of )?(?:another|the other)(?: one| root)?");
  private static final Pattern OTHERS =
      Pattern.compile(
          "(?:one|a) (?:root|solution) is the (?<how>sum|product) of the other(?:s| two| roots| two roots)?");
  private static final Pattern ROOT_IS =
      Pattern.compile(
          "(?:(?:one|a) (?:root|solution) is|root|x =) (?<after>(?:(?! is (?:a|one)\\b).)+)"
              + "|(?:x = )?(?<before>.+?) (?:is|as) (?:a|one)(?: given)?(?: of (?:the|its))? (?:roots?|solutions?)");
  private static final Pattern SUM_PRODUCT =
      Pattern.compile(
          "(?:the |its )*(?:roots sum to|roots add up to|sum of (?:the |its |all )?roots (?:equals|is|=))"
              + " (?:the |their )product(?: of (?:the |its |all )?roots)?"
              + "|sum = product|sum equals product");
  private static final Pattern LETTER =
      Pattern.compile(
          "(?<letter>\\p{L}(?:_\\w+)?)(?: is| are|) (?:an? )?(?<domain>"
              + Natures.WORDS
              + "|complex)(?: numbers?)?");
  private static final Pattern MULTIPLE_ROOT =
      Pattern.compile(
          "(?:x = )?(?<before>\\S+) is (?:a|the) (?<times>double|repeated|triple) root"
              + "|(?:it has |has |there is )?(?:a |the )?(?<often>double|repeated|triple) root (?:is |at |= |x = )+(?<after>\\S+)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern DIVIDES =
      Pattern.compile(
          "(?<before>.+?) (?:divides(?: it| the polynomial| p)?|is a (?:factor|divisor))"
              + "|(?:it is )?divisible by (?<after>.+)");

  private static final int LONGEST = 300;

  private static final Map<String, Integer> NUMBERS =
      Map.of(
          "no", 0, "unique", 1, "single", 1, "one", 1, "two", 2, "three", 3, "four", 4, "five", 5,
          "six", 6);

  private final LetteredPolynomial polynomial;
  private final List<String> roots;
  private final String typed;

  /**
   * @param typed the whole ask, into which refusals point
   */
  ConditionReader(LetteredPolynomial polynomial, List<String> roots, String typed) {
    this.polynomial = polynomial;
    this.roots = roots;
    this.typed = typed;
  }

  /** The relation that the text is, if it is one. */
  static Optional<Formula> relation(String text) {
    try {
      Formula formula = FormulaReader.formula(text);
      return formula instanceof Formula.Relation ? Optional.of(formula) : Optional.empty();
    } catch (UnreadableException words) {
      return Optional.empty();
    }
  }

  /**
   * The conditions of a list. A condition that holds the word "and" was cut there, so neighbours
   * are read together where that makes sense: “real and distinct”, “between 0 and 4”.
   */
  List<Condition> readAll(List<String> texts) throws UnreadableException {
    List<Condition> conditions = new ArrayList<>();
    RootComparisons compared = new RootComparisons(roots);
    int from = 0;
    while (from < texts.size()) {
      if (relation(texts.get(from)).filter(compared::take).isPresent()) {
        from++;
        continue;
      }
      int to = texts.size();
      Optional<List<Condition>> joined = Optional.empty();
      while (to > from + 1 && joined.isEmpty()) {
        joined = inWords(String.join(" and ", texts.subList(from, to)));
        to -= joined.isEmpty() ? 1 : 0;
      }
      conditions.addAll(joined.isPresent() ? joined.get() : read(texts.get(from)));
      from = joined.isPresent() ? to : from + 1;
    }
    conditions.addAll(compared.conditions());
    return conditions;
  }

  /** One condition. */
  List<Condition> read(String text) throws UnreadableException {
    Optional<Formula> relation = relation(text);
    if (relation.isPresent()) {
      return comparison((Formula.Relation) relation.get(), text);
    }
    Optional<List<Condition>> words = inWords(text);
    return words.isPresent() ? words.get() : List.of(valued(text));
  }

  /** What the words say, if they are of a known form. */
  private Optional<List<Condition>> inWords(String text) throws UnreadableException {
    if (text.length() > LONGEST || relation(text).isPresent()) {
      return Optional.empty();
    }
    Optional<List<Condition>> fixed = fixed(text);
    if (fixed.isPresent()) {
      return fixed;
    }
    String bare = ConditionText.bare(text);
    RelationWords relations = new RelationWords(polynomial, roots);
    return relations
        .read(bare)
        .or(() -> new PlaceWords(polynomial.degree()).read(bare))
        .or(() -> relations.told(text));
  }

  private Optional<List<Condition>> fixed(String text) throws UnreadableException {
    String words = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    Matcher matcher = PROGRESSION.matcher(words);
    if (matcher.matches()) {
      return one(progression(matcher.group("sort"), text));
    }
    matcher = REPEATED.matcher(words);
    if (matcher.matches()) {
      return one(repeated("triple".equals(matcher.group("times")), text));
    }
    matcher = SUM_PRODUCT.matcher(words);
    if (matcher.matches()) {
      int n = polynomial.degree();
      Formula sum = Formula.sum(roots.stream().map(Formula::name).toList());
      Formula product = Formula.product(roots.stream().map(Formula::name).toList());
      return one(
          zeros(
              "the roots have their product for sum", n > 6 ? e(1) : sum, n > 6 ? e(n) : product));
    }
    matcher = OTHERS.matcher(words);
    if (matcher.matches() && roots.size() >= 3) {
      List<Formula> others = roots.subList(1, roots.size()).stream().map(Formula::name).toList();
      boolean sum = matcher.group("how").equals("sum");
      return one(zeros(words, name(0), sum ? Formula.sum(others) : Formula.product(others)));
    }
    matcher = RELATED.matcher(words);
    if (matcher.matches() && roots.size() >= 2) {
      Optional<Formula> image = RelatedRoot.of(matcher.group("how"), name(1));
      if (image.isPresent()) {
        return one(zeros(words, name(0), image.get()));
      }
    }
    matcher = NATURE.matcher(words);
    if (matcher.matches()) {
      String nature =
          matcher.group("after") != null ? matcher.group("after") : matcher.group("before");
      return Optional.of(
          Natures.of(nature).stream().<Condition>map(Condition.AllRoots::new).toList());
    }
    matcher = COUNT.matcher(words);
    if (matcher.matches()) {
      String count = matcher.group("count");
      int number =
          NUMBERS.containsKey(count)
              ? NUMBERS.getOrDefault(count, 0)
              : new BigInteger(count).min(BigInteger.valueOf(1000)).intValueExact();
      return one(
          new Condition.RealCount(
              number,
              matcher.group("what").startsWith("solution"),
              words.contains("distinct") || words.contains("different")));
    }
    matcher = LETTER.matcher(text.strip().replaceAll("\\s+", " "));
    if (matcher.matches() && polynomial.letters().contains(matcher.group("letter"))) {
      String letter = matcher.group("letter");
      String domain = matcher.group("domain").toLowerCase(Locale.ROOT);
      NumberDomain in =
          domain.equals("complex") ? NumberDomain.COMPLEX : Natures.of(domain).get(0).domain();
      return one(new Condition.LetterIn(letter, in));
    }
    return Optional.empty();
  }

  private static Optional<List<Condition>> one(Condition condition) {
    return Optional.of(List.of(condition));
  }

  private Condition valued(String text) throws UnreadableException {
    String typedWords = text.strip().replaceAll("\\s+", " ");
    Matcher twice = MULTIPLE_ROOT.matcher(typedWords);
    if (twice.matches()) {
      String value = twice.group("before") != null ? twice.group("before") : twice.group("after");
      Optional<Rational> root = ConditionText.number(value);
      if (root.isPresent()) {
        boolean triple =
            twice
                .group(twice.group("before") != null ? "times" : "often")
                .equalsIgnoreCase("triple");
        Formula power =
            Formula.name(polynomial.unknown())
                .minus(Formula.number(root.get()))
                .power(triple ? 3 : 2);
        return new Condition.DividedBy(
            FormulaExpansion.polynomial(power, polynomial.unknown()), NormalForm.of(power));
      }
    }
    Matcher matcher =
        Pattern.compile(DIVIDES.pattern(), Pattern.CASE_INSENSITIVE).matcher(typedWords);
    if (matcher.matches()) {
      String divisor =
          matcher.group("before") != null ? matcher.group("before") : matcher.group("after");
      Formula formula = FormulaReader.formula(divisor);
      Polynomial value = FormulaExpansion.polynomial(formula, polynomial.unknown());
      if (value.degree() < 1) {
        throw refused("“%s” divides nothing: it is constant.".formatted(divisor), text);
      }
      return new Condition.DividedBy(value, formula);
    }
    matcher = Pattern.compile(ROOT_IS.pattern(), Pattern.CASE_INSENSITIVE).matcher(typedWords);
    if (matcher.matches()) {
      String value =
          matcher.group("before") != null ? matcher.group("before") : matcher.group("after");
      Formula formula =
          value.equalsIgnoreCase("zero") ? Formula.number(0) : FormulaReader.formula(value);
      if (!polynomial.letters().containsAll(FormulaNames.in(formula))) {
        throw refused("“%s” is no number.".formatted(value), text);
      }
      return new Condition.RootIs(formula);
    }
    throw refused("The condition “%s” is not understood.".formatted(text.strip()), text);
  }

  /** |r − s| = 3: squared, and the roots are real. */
  private static Optional<List<Condition>> distance(Formula.Relation relation) {
    if (relation.sides().size() != 2
        || relation.comparisons().get(0) != Formula.Comparison.EQUAL
        || !(relation.sides().get(0) instanceof Formula.Application abs)
        || !abs.function().equals("abs")
        || abs.arguments().size() != 1) {
      return Optional.empty();
    }
    Formula square = abs.arguments().get(0).power(2);
    Formula value = relation.sides().get(1).power(2);
    return Optional.of(
        List.of(
            new Condition.Zeros(
                UnicodeWriter.write(relation),
                List.of(difference(square, value)),
                List.of(Formula.equation(square, value))),
            new Condition.AllRoots(RootNature.REAL)));
  }

  private List<Condition> comparison(Formula.Relation relation, String text)
      throws UnreadableException {
    Set<String> names = FormulaNames.in(relation);
    for (String name : names) {
      if (!roots.contains(name)
          && !polynomial.letters().contains(name)
          && !name.equals(polynomial.unknown())) {
        throw refused(
            "The letter %s is neither a root (%s) nor a letter of the polynomial."
                .formatted(name, String.join(", ", roots)),
            text);
      }
    }
    if (names.equals(Set.of(polynomial.unknown()))
        && relation.sides().size() == 2
        && relation.comparisons().get(0) == Formula.Comparison.EQUAL
        && relation.sides().get(0).equals(Formula.name(polynomial.unknown()))) {
      return List.of(new Condition.RootIs(relation.sides().get(1)));
    }
    Optional<List<Condition>> distance = distance(relation);
    if (distance.isPresent()) {
      return distance.get();
    }
    boolean ofRoots =
        relation.contains(
            part ->
                part instanceof Formula.Aggregate
                    || part instanceof Formula.Family
                    || part instanceof Formula.Application
                    || (part instanceof Formula.Name name && roots.contains(name.spelling())));
    boolean equal =
        relation.comparisons().stream().allMatch(sign -> sign == Formula.Comparison.EQUAL);
    if (ofRoots && !equal) {
      throw refused(
          "A condition on the roots with “<”, “>” or “≠” is not worked; equations are, and “all roots positive”.",
          text);
    } else if (!equal) {
      return List.of(new Condition.LetterBound(relation));
    }
    List<Formula> zeros = new ArrayList<>();
    for (int k = 1; k < relation.sides().size(); k++) {
      zeros.add(difference(relation.sides().get(k - 1), relation.sides().get(k)));
    }
    return List.of(new Condition.Zeros(UnicodeWriter.write(relation), zeros, List.of(relation)));
  }

  private Condition progression(String sort, String text) throws UnreadableException {
    int n = roots.size();
    if (n < 3) {
      throw refused("Two roots are always in progression.", text);
    }
    if (n > 4) {
      throw refused("Roots in progression are worked for degree 3 and 4.", text);
    }
    char kind = sort.charAt(0);
    if (n == 4) {
      return QuarticProgression.of(kind)
          .orElseThrow(() -> refused("A harmonic progression is worked for degree 3.", text));
    }
    List<Formula> zeros = new ArrayList<>();
    List<Formula> equations = new ArrayList<>();
    for (int k = 0; k + 2 < n; k++) {
      Formula left = name(k);
      Formula middle = name(k + 1);
      Formula right = name(k + 2);
      Formula one =
          kind == 'a'
              ? left.plus(right)
              : kind == 'g' ? left.times(right) : Formula.number(2).times(left).times(right);
      Formula other =
          kind == 'a'
              ? Formula.number(2).times(middle)
              : kind == 'g' ? middle.power(2) : middle.times(left.plus(right));
      zeros.add(difference(one, other));
      equations.add(Formula.equation(one, other));
    }
    String word = kind == 'a' ? "arithmetic" : kind == 'g' ? "geometric" : "harmonic";
    return new Condition.Zeros(
        "the roots are in %s progression in some order".formatted(word), zeros, equations);
  }

  private Condition repeated(boolean triple, String text) throws UnreadableException {
    if (roots.size() < (triple ? 3 : 2)) {
      throw refused("There are not so many roots.", text);
    }
    List<Formula> zeros = new ArrayList<>();
    List<Formula> equations = new ArrayList<>();
    for (int k = 1; k <= (triple ? 2 : 1); k++) {
      zeros.add(name(k - 1).minus(name(k)));
      equations.add(Formula.equation(name(k - 1), name(k)));
    }
    return new Condition.Zeros(
        triple ? "there is a triple root" : "there is a repeated root", zeros, equations);
  }

  private static Condition zeros(String words, Formula left, Formula right) {
    return new Condition.Zeros(
        words, List.of(difference(left, right)), List.of(Formula.equation(left, right)));
  }

  private static Formula difference(Formula left, Formula right) {
    return right.equals(Formula.number(0)) ? left : left.minus(right);
  }

  private Formula name(int k) {
    return Formula.name(roots.get(k));
  }

  private static Formula e(int k) {
    return new Formula.Family("e", Formula.number(k));
  }

  private UnreadableException refused(String sentence, String part) {
    int at = Math.max(0, typed.indexOf(part.strip()));
    return new UnreadableException(
        new Refusal(
            "condition-unread",
            sentence,
            typed,
            typed.codePointCount(0, at),
            "such as r = 2s, r^2 + s^2 = 4, 2 is a root, roots in arithmetic progression, all roots"
                + " real, a double root, or k > 0",
            ""));
  }
}
