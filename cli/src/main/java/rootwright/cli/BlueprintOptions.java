package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rootwright.composing.blueprint.AnswerWish;
import rootwright.composing.blueprint.AskWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.RealWish;
import rootwright.composing.blueprint.RootsWish;
import rootwright.composing.blueprint.ShorterRoute;
import rootwright.composing.blueprint.WorkingWish;
import rootwright.desk.Desk;
import rootwright.desk.table.UnreadableBlueprintException;

/** The order of a coach as options of a command, on top of a file if there is one. */
final class BlueprintOptions {

  @Option(
      names = "--blueprint",
      paramLabel = "FILE",
      description = "An order in YAML; the other options change it.")
  @Nullable Path file;

  @Option(
      names = "--ask",
      paramLabel = "TEXT",
      description = "What is asked, as you would type it.")
  @Nullable String ask;

  @Option(
      names = "--family",
      paramLabel = "NAME",
      description =
          "Asks of one family instead: power-sum, reciprocal-sum, …; --families lists them.")
  @Nullable String family;

  @Option(names = "--surprise", description = "Asks of any family instead, mixed.")
  boolean surprise;

  @Option(
      names = "--kinds",
      split = ",",
      paramLabel = "KIND",
      description = "What a surprise may ask for: value, discriminant, residue, …")
  @Nullable Set<String> kinds;

  @Option(names = "--degree", paramLabel = "N", description = "The degree, 2 to 8 (3).")
  @Nullable Integer degree;

  @Option(names = "--size", paramLabel = "N", description = "The largest coefficient by size (12).")
  @Nullable Integer size;

  @Option(
      names = "--lead",
      paramLabel = "N",
      description = "The largest lead, or a range: 1 for monic, 2..5 for never monic (3).")
  @Nullable String lead;

  @Option(
      names = "--answer",
      paramLabel = "WISH",
      description = "any, whole, 0..999, /12 (denominator up to 12) or =2026 (whole).")
  @Nullable String answer;

  @Option(
      names = "--roots",
      paramLabel = "WISH",
      description = "any, distinct, no-rational or irreducible (no-rational).")
  @Nullable String roots;

  @Option(
      names = "--real",
      paramLabel = "WISH",
      description = "Real roots: open, all, not-all or how many (open).")
  @Nullable String real;

  @Option(
      names = "--with",
      split = ",",
      paramLabel = "ROUTE",
      description = "Routes that must go through.")
  @Nullable Set<String> with;

  @Option(
      names = "--without",
      split = ",",
      paramLabel = "ROUTE",
      description = "Routes that must not.")
  @Nullable Set<String> without;

  @Option(
      names = "--shorter",
      split = ",",
      paramLabel = "WISH",
      description = "A route that must be shorter: \"reduce-powers than build-from-e by 2\".")
  @Nullable List<String> shorter;

  @Option(
      names = "--slips",
      paramLabel = "N",
      description = "The least number of different wrong answers from slips (3 for values).")
  @Nullable Integer slips;

  @Option(
      names = "--traps",
      split = ",",
      paramLabel = "SLIP",
      description = "Slips each of which must give a wrong answer of its own.")
  @Nullable Set<String> traps;

  @Option(names = "--level", paramLabel = "N", description = "The estimated level, 1 to 5.")
  @Nullable Integer level;

  @Option(
      names = "--choices",
      paramLabel = "N",
      description = "Choices of a multiple-choice item, 3 to 5 (4).")
  @Nullable Integer choices;

  @Option(names = "--many", paramLabel = "N", description = "How many problems (5).")
  @Nullable Integer many;

  @Option(names = "--seed", paramLabel = "N", description = "What chance starts from (1).")
  @Nullable Long seed;

  @Option(
      names = "--avoid",
      split = ",",
      paramLabel = "FILE",
      description = "Shelves or lists; nothing in them, and no twin of it, is composed.")
  @Nullable List<String> avoid;

  /**
   * The order.
   *
   * @throws IllegalArgumentException if a wish cannot be read; says which and what would do
   * @throws UnreadableBlueprintException if the file cannot be read as an order
   * @throws IOException if there is no such file
   */
  Blueprint blueprint(Desk desk) throws UnreadableBlueprintException, IOException {
    Blueprint order = file == null ? Blueprint.USUAL : fromFile(file, desk);
    order = order.withAsk(ask(order.ask()));
    order = order.withPolynomial(polynomial(order.polynomial()));
    order = order.withWorking(working(order.working()));
    order = answer == null ? order : order.withAnswer(AnswerWish.parse(answer));
    order = choices == null ? order : order.withChoices(choices);
    order = many == null ? order : order.withMany(many);
    order = seed == null ? order : order.withSeed(seed);
    return avoid == null ? order : order.withAvoid(avoid);
  }

  private static Blueprint fromFile(Path file, Desk desk)
      throws UnreadableBlueprintException, IOException {
    return desk.table().readBlueprint(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
  }

  private AskWish ask(AskWish usual) {
    if ((ask == null ? 0 : 1) + (family == null ? 0 : 1) + (surprise ? 1 : 0) > 1) {
      throw new IllegalArgumentException("write one of --ask, --family and --surprise");
    }
    AskWish wish =
        ask != null
            ? new AskWish.Given(ask)
            : family != null
                ? new AskWish.OfFamily(family)
                : surprise ? new AskWish.Surprise(Set.of()) : usual;
    if (kinds == null) {
      return wish;
    }
    if (!(wish instanceof AskWish.Surprise)) {
      throw new IllegalArgumentException("--kinds belongs to --surprise");
    }
    return new AskWish.Surprise(new LinkedHashSet<>(kinds));
  }

  private PolynomialWish polynomial(PolynomialWish usual) {
    PolynomialWish wish = degree == null ? usual : usual.withDegree(degree);
    wish = size == null ? wish : wish.withSize(size);
    if (lead != null) {
      wish = lead(wish, lead);
    } else if (wish.size() >= 1 && wish.largestLead() > wish.size()) {
      wish = wish.withLead(1, wish.size());
    }
    wish = roots == null ? wish : wish.withRoots(RootsWish.parse(roots));
    return real == null ? wish : wish.withReal(RealWish.parse(real));
  }

  private static PolynomialWish lead(PolynomialWish wish, String text) {
    int dots = text.indexOf("..");
    try {
      return dots < 0
          ? wish.withLead(1, Integer.parseInt(text.strip()))
          : wish.withLead(
              Integer.parseInt(text.substring(0, dots).strip()),
              Integer.parseInt(text.substring(dots + 2).strip()));
    } catch (NumberFormatException noNumber) {
      throw new IllegalArgumentException(
          "the lead cannot be wished as “%s”; write 1, 3 or 2..5".formatted(text), noNumber);
    }
  }

  private WorkingWish working(WorkingWish usual) {
    WorkingWish wish = with == null ? usual : usual.withRoutes(with);
    wish = without == null ? wish : wish.withoutRoutes(without);
    wish =
        shorter == null
            ? wish
            : wish.withShorter(shorter.stream().map(ShorterRoute::parse).toList());
    wish = slips == null ? wish : wish.withSlips(OptionalInt.of(slips));
    wish = traps == null ? wish : wish.withTraps(traps);
    return level == null ? wish : wish.withLevel(OptionalInt.of(level));
  }
}
