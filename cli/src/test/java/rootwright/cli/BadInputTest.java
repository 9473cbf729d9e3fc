package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is typed gets an answer or a refusal; nothing hangs and nothing breaks. */
class BadInputTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20260101L);

  /** A guard against hangs, ten times what is promised. */
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  static Stream<Arguments> unreadable() {
    String cubic = "x^3 - x + 1";
    return Stream.of(
        Arguments.of("nothing at all", "", ""),
        Arguments.of("no polynomial", " ", "S_2"),
        Arguments.of("no ask", cubic, "  "),
        Arguments.of("a megabyte of brackets", "(".repeat(1 << 20), "S_2"),
        Arguments.of("a megabyte of brackets to find", cubic, "(".repeat(1 << 20)),
        Arguments.of(
            "a megabyte of closed brackets", "(".repeat(1 << 19) + ")".repeat(1 << 19), "r"),
        Arguments.of("a huge exponent", "x^999999999", "S_2"),
        Arguments.of("a tower of exponents", "x^9^9^9^9", "S_2"),
        Arguments.of("a huge exponent to find", cubic, "r^999999999"),
        Arguments.of("a huge number to find", cubic, "2^999999999"),
        Arguments.of("a power sum with too many digits", cubic, "S_(10^18)"),
        Arguments.of("a zero denominator", "1/0 x^2 - 1", "S_2"),
        Arguments.of("nested zero denominators", "1/(1/(1-1)) x^2 - 1", "S_2"),
        Arguments.of("control characters", "x^2\u0000\u0007 - 1\u001b[31m", "S_2"),
        Arguments.of("half a surrogate pair", "x^2 - \ud83d", "S_2"),
        Arguments.of("a million digits", "x^2 - " + "7".repeat(1_000_000), "S_2"),
        Arguments.of("a degree above the limit", "x^65 - x - 1", "S_2"),
        Arguments.of("a factored degree above the limit", "(x-1)^40 (x+1)^40", "S_2"),
        Arguments.of(
            "a polynomial of an orbit beyond the limit", "x^12-x-1", "resolvent(r s^2 t^3 u^4)"),
        Arguments.of("a modulus of zero", cubic, "S_5 mod 0"),
        Arguments.of("a root as modulus", cubic, "S_5 mod r"),
        Arguments.of("a power sum in the exponent", cubic, "r^S_2"),
        Arguments.of("a root in the exponent", cubic, "2^r"),
        Arguments.of("a fraction in the exponent", cubic, "r^(1/2)"),
        Arguments.of("the square root of a root", cubic, "sqrt(r)"),
        Arguments.of("a square root as factor", cubic, "sqrt(2) r"),
        Arguments.of("i as factor", cubic, "i r"),
        Arguments.of("a complete sum far out", cubic, "h_(10^20)"),
        Arguments.of("a fraction as index", cubic, "S_(1/2)"),
        Arguments.of("two values at once", cubic, "+-r"),
        Arguments.of("a reduction in two roots", cubic, "reduce(r s)"),
        Arguments.of("i in a resolvent", cubic, "resolvent(i r)"),
        Arguments.of("more names than roots", "x^2 - 2", "r + s + t"),
        Arguments.of("a letter nobody knows", cubic, "r + q s"),
        Arguments.of("two signs", "x^^2 - 1", "S_2"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("unreadable")
  void whatCannotBeReadIsRefusedWithItsReason(String what, String polynomial, String find) {
    Shell shell = assertTimeoutPreemptively(PATIENCE, () -> Shell.workAsJson(polynomial, find));
    assertThat(shell.status()).as(what).isEqualTo(2);
    assertThat(shell.err()).startsWith("error: ").hasSizeLessThan(2_000);
    assertThat(shell.json().at("/error/text").asText()).isNotBlank().hasSizeLessThan(400);
    assertThat(shell.json().at("/error/code").asText()).isNotBlank();
  }

  static Stream<Arguments> withoutAnswer() {
    return Stream.of(
        Arguments.of("the zero polynomial", "0", "S_2"),
        Arguments.of("an equation that says nothing", "x^2 = x^2", "S_2"),
        Arguments.of("a constant", "5", "S_2"),
        Arguments.of("a denominator that is always zero", "x^3-x+1", "sum 1/(1/(r-r))"),
        Arguments.of("a power sum of negative powers of zero", "x^3-x", "S_(-5)"),
        Arguments.of("a size between bars", "x^3-3x+1", "|r|"),
        Arguments.of("a size by its word", "x^3-3x+1", "abs(r)"),
        Arguments.of("no inverse for the modulus", "2x^3-x+3", "S_5 mod 2"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("withoutAnswer")
  void whatHasNoAnswerSaysWhy(String what, String polynomial, String find) {
    Shell shell = assertTimeoutPreemptively(PATIENCE, () -> Shell.workAsJson(polynomial, find));
    assertThat(shell.status()).as(what).isEqualTo(3);
    assertThat(shell.json().at("/answer/kind").asText()).isEqualTo("none");
    assertThat(shell.json().at("/answer/text").asText()).isNotBlank();
  }

  @Test
  void aProblemWithoutAnAskIsRefused() {
    assertThat(Shell.run("work", "--polynomial", "x^2-1").status()).isEqualTo(2);
    assertThat(Shell.run("work").err()).startsWith("error: ");
    assertThat(Shell.run("work", "--polynomial", "x^2-1", "--nonsense").status()).isEqualTo(2);
  }

  @Test
  void randomInputGetsAnAnswerOrARefusalAndNothingElse() {
    List<String> pieces =
        List.of(
            "x",
            "x^2",
            "x^3",
            "r",
            "s",
            "t",
            "u",
            "+",
            "-",
            "*",
            "/",
            "^",
            "(",
            ")",
            "=",
            ";",
            ",",
            "1",
            "2",
            "3",
            "0",
            "-1",
            "1/2",
            "0.5",
            "sum ",
            "product ",
            "Σ",
            "Π",
            "S_2",
            "S_",
            "e_1",
            "h_3",
            "sqrt(2)",
            "√",
            "i",
            "±",
            "|",
            "mod 7",
            "discriminant",
            "roots",
            "real roots",
            "reduce(",
            "resolvent(",
            "\\frac{1}{r}",
            "{",
            "}",
            "²",
            "₁",
            "_",
            "'",
            "P'(r)",
            " ",
            "π",
            "α",
            "of the",
            "polynomial with roots (",
            "\u0000",
            "#",
            "10^18",
            "r_1",
            "x_1");
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 1_500; round++) {
      String polynomial = random.nextInt(3) == 0 ? soup(pieces, random) : small(random);
      String find = random.nextInt(4) == 0 ? "S_3" : soup(pieces, random);
      Shell shell = assertTimeoutPreemptively(PATIENCE, () -> Shell.workAsJson(polynomial, find));
      assertThat(shell.status())
          .as("seed %d, round %d: «%s» ; «%s» %s", SEED, round, polynomial, find, shell.err())
          .isIn(0, 2, 3);
    }
  }

  private static String soup(List<String> pieces, SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    for (int k = random.nextInt(1, 9); k > 0; k--) {
      text.append(pieces.get(random.nextInt(pieces.size())));
    }
    return text.toString();
  }

  private static String small(SplittableRandom random) {
    return "%d %d %d %d"
        .formatted(
            random.nextInt(-1, 3),
            random.nextInt(-3, 4),
            random.nextInt(-3, 4),
            random.nextInt(-3, 4));
  }
}
