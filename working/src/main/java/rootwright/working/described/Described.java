package rootwright.working.described;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** Roots described in words or as a list of numbers, and what is known of them. */
sealed interface Described {

  /** The letter of the polynomials that are found. */
  String UNKNOWN = "x";

  /** More roots than this are not worked with. */
  int MOST = 64;

  /**
   * All the roots of a polynomial.
   *
   * @param words how a sheet would call them
   * @param shown the same as a formula, to stand where else a polynomial stands
   * @param polynomial primitive, with these roots as often as they are listed
   * @param lines how it is found
   * @param warnings what the coach should know
   * @param route the name of the way it is found
   */
  record Known(
      String words,
      Formula shown,
      Polynomial polynomial,
      List<Step> lines,
      List<Warning> warnings,
      String route)
      implements Described {
    public Known {
      lines = List.copyOf(lines);
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Numbers that are not all the roots of any polynomial with rational coefficients.
   *
   * @param missing what belongs to them
   */
  record Incomplete(String words, Formula shown, List<Formula> numbers, List<Formula> missing)
      implements Described {
    public Incomplete {
      numbers = List.copyOf(numbers);
      missing = List.copyOf(missing);
    }
  }

  /**
   * Reads a description.
   *
   * @throws UnreadableException if it cannot be read, or names more roots than are worked with
   */
  static Described read(String text) throws UnreadableException {
    Optional<UnityRoots> unity = UnityRoots.of(text);
    if (unity.isPresent()) {
      return unity(unity.get(), text);
    }
    List<Formula> numbers = ListedNumbers.read(text);
    if (numbers.isEmpty() || numbers.size() > MOST) {
      throw refused(
          "too-large",
          "%d numbers are listed; at least 1 and at most %d are worked with."
              .formatted(numbers.size(), MOST),
          text,
          "a shorter list");
    }
    return listed(numbers, text);
  }

  private static Described unity(UnityRoots roots, String text) throws UnreadableException {
    if (roots.order() > MOST) {
      throw refused(
          "too-large",
          "Roots of unity are worked up to order %d.".formatted(MOST),
          text,
          "a smaller order");
    }
    if (roots.polynomial().degree() < 1) {
      throw refused("empty", "There are no such roots of unity.", text, "a larger order");
    }
    return new Known(
        roots.words(),
        new Formula.Words(roots.words()),
        roots.polynomial(),
        roots.lines(UNKNOWN),
        List.of(),
        "unity");
  }

  /** The numbers as the roots of a polynomial. */
  static Described listed(List<Formula> numbers, String text) throws UnreadableException {
    AngleField field =
        AngleField.of(numbers)
            .orElseThrow(
                () ->
                    refused(
                        "too-large",
                        "The angles have no common measure of at least 2π/%d."
                            .formatted(AngleField.LARGEST_ORDER),
                        text,
                        "angles with smaller denominators"));
    List<Polynomial> elements = new ArrayList<>();
    for (Formula number : numbers) {
      elements.add(
          field
              .residue(number)
              .orElseThrow(
                  () ->
                      refused(
                          "zero-denominator",
                          "%s has no value.".formatted(UnicodeWriter.write(number)),
                          text,
                          "another angle")));
    }
    Formula shown = numbers.size() == 1 ? numbers.get(0) : new Formula.Listing(numbers);
    String words = numbers.stream().map(UnicodeWriter::write).collect(Collectors.joining(", "));
    Optional<Polynomial> polynomial = field.withRoots(elements);
    if (polynomial.isEmpty()) {
      return new Incomplete(words, shown, numbers, field.missing(numbers, elements));
    }
    Polynomial primitive = polynomial.get().primitive();
    List<Warning> warnings = new ArrayList<>();
    if (new HashSet<>(elements).size() < elements.size()) {
      warnings.add(
          new Warning(
              WarningCode.REPEATED_ROOT,
              "Some of the listed numbers are equal; each is counted as often as it is listed."));
    }
    Optional<List<Step>> multiple = MultipleAngle.lines(numbers, field, primitive, UNKNOWN);
    List<Step> lines = new ArrayList<>(multiple.orElse(List.of()));
    lines.add(linearFactors(numbers, primitive, multiple.isPresent()));
    return new Known(
        words,
        shown,
        primitive,
        lines,
        warnings,
        multiple.isPresent() ? "multiple-angle" : "unity");
  }

  /** The line on which everything rests: the polynomial is the product of these factors. */
  private static Step linearFactors(
      List<Formula> numbers, Polynomial polynomial, boolean explained) {
    Formula x = Formula.name(UNKNOWN);
    List<Formula> factors = new ArrayList<>();
    if (!polynomial.lead().isOne()) {
      factors.add(Formula.number(polynomial.lead()));
    }
    numbers.forEach(number -> factors.add(x.minus(number)));
    return Step.equation(
        Setting.ofLetters(List.of(UNKNOWN)),
        explained ? Idea.STATE : Idea.MULTIPLE_ANGLE,
        explained
            ? "all the listed numbers, and no others, are its roots"
            : "multiplied out, with every value written by roots of unity",
        PolynomialFormula.of(polynomial, UNKNOWN),
        NormalForm.of(Formula.product(factors)));
  }

  private static UnreadableException refused(
      String code, String sentence, String text, String expected) {
    return new UnreadableException(new Refusal(code, sentence, text, 0, expected, ""));
  }
}
