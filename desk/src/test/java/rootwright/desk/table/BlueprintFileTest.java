package rootwright.desk.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.AnswerWish;
import rootwright.composing.blueprint.AskWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.KnownNames;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.RealWish;
import rootwright.composing.blueprint.RootsWish;
import rootwright.composing.blueprint.ShorterRoute;
import rootwright.composing.blueprint.WorkingWish;
import rootwright.composing.family.Families;
import rootwright.working.kind.Kinds;

/** Orders as files: what is written is read back, and the published schema says what is read. */
class BlueprintFileTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_260_119L);
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
  private static final Path PUBLISHED = Path.of("..", "docs", "blueprint.schema.json");

  private final ComposersTable table = new ComposersTable(new Kinds());
  private final JsonSchema schema = schema();

  private static JsonSchema schema() {
    try {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(Files.readString(PUBLISHED));
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  @Test
  void everyOrderComesBackFromItsFileTheSame() throws Exception {
    for (Blueprint order : orders(300)) {
      String yaml = table.blueprintAsYaml(order);
      assertThat(table.readBlueprint(yaml)).as("%s%n%s", seed(), yaml).isEqualTo(order);
    }
  }

  @Test
  void whatIsWrittenFitsThePublishedSchema() throws Exception {
    for (Blueprint order : orders(300)) {
      String yaml = table.blueprintAsYaml(order);
      assertThat(schema.validate(YAML.readTree(yaml))).as("%s%n%s", seed(), yaml).isEmpty();
    }
  }

  @Test
  void anOrderInJsonIsReadAsWell() throws Exception {
    for (Blueprint order : orders(50)) {
      JsonNode json = YAML.readTree(table.blueprintAsYaml(order));
      assertThat(table.readBlueprint(json.toString())).as(seed()).isEqualTo(order);
    }
  }

  @Test
  void nothingSaidIsTheUsualOrder() throws Exception {
    assertThat(table.readBlueprint("")).isEqualTo(Blueprint.USUAL);
    assertThat(table.readBlueprint("# nothing yet\nlevel:\nreal: \"\"\nseed: null\n"))
        .isEqualTo(Blueprint.USUAL);
  }

  @Test
  void theUsualLeadIsNoLargerThanTheCoefficients() throws Exception {
    assertThat(table.readBlueprint("size: 2").polynomial().largestLead()).isEqualTo(2);
  }

  @Test
  void theSchemaNamesTheFamiliesThereAre() throws Exception {
    Set<String> named = new TreeSet<>();
    new ObjectMapper()
        .readTree(PUBLISHED.toFile())
        .path("properties")
        .path("family")
        .path("enum")
        .forEach(name -> named.add(name.asText()));
    Set<String> there = new TreeSet<>();
    there.addAll(KnownNames.families().keySet());
    assertThat(named).isEqualTo(there);
  }

  /** Line breaks are written as a slash between blanks. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "degree: three | 1 | degree is “three” | write a whole number, such as 3",
        "ask: \"Σ r^2\" // degre: 3 | 2 | there is no wish “degre” | the nearest is “degree”",
        "degree: 3 // roots: irational | 2 | roots is “irational” | no-rational",
        "answer: between 0 and 9 | 1 | answer is “between 0 and 9” | 0..999",
        "real: some | 1 | real is “some” | write open, all, not-all or how many",
        "lead: 1..x | 1 | lead is “1..x” | 2..5",
        "many: 3 // seed: 1.5 | 2 | seed is “1.5” | write a whole number, such as 41",
        "shorter: [newton before evaluate] | 1 | shorter is “a list” | reduce-powers than build-from-e by 2",
        "ask: S_3 // family: power-sum | 2 | there are two wishes for the ask | write one of",
        "surprise: perhaps | 1 | surprise is “perhaps” | write true",
        "kinds: [value] | 1 | kinds belong to a surprise | surprise: true",
        "- degree: 3 | 1 | an order is a list of wishes | degree: 3",
        "degree: [3, 4] | 1 | degree is “a list” | write a whole number",
      })
  void whatCannotBeReadIsToldWithItsLineAndTheMendAndDoesNotFitTheSchema(
      String text, int line, String said, String mend) throws Exception {
    String yaml = text.replace(" // ", "\n");
    UnreadableBlueprintException unreadable =
        catchThrowableOfType(UnreadableBlueprintException.class, () -> table.readBlueprint(yaml));
    assertThat(unreadable).as(yaml).isNotNull();
    assertThat(unreadable.faults().get(0).line()).isEqualTo(line);
    assertThat(unreadable.faults().get(0).text()).contains(said);
    assertThat(unreadable.faults().get(0).mend()).contains(mend);
    assertThat(schema.validate(YAML.readTree(yaml))).as(yaml).isNotEmpty();
  }

  @Test
  void everyFaultOfAnOrderIsToldAtOnce() {
    UnreadableBlueprintException unreadable =
        catchThrowableOfType(
            UnreadableBlueprintException.class,
            () -> table.readBlueprint("degree: x\nsize: y\nlevel: 3\nmanny: 2\n"));
    assertThat(unreadable.faults()).extracting(fault -> fault.line()).containsExactly(1, 2, 4);
  }

  @Test
  void brokenYamlIsToldWithItsLine() {
    UnreadableBlueprintException unreadable =
        catchThrowableOfType(
            UnreadableBlueprintException.class, () -> table.readBlueprint("degree: 3\nask: [\n"));
    assertThat(unreadable.faults().get(0).line()).isGreaterThanOrEqualTo(2);
    assertThat(unreadable.getMessage()).contains("not YAML");
  }

  @Test
  void aFileThatUnfoldsWithoutEndIsRefused() {
    StringBuilder bomb = new StringBuilder("a: &a [x, x, x, x, x, x, x, x, x]\n");
    for (char letter = 'b'; letter <= 'j'; letter++) {
      String before = "*" + (char) (letter - 1);
      bomb.append("%c: &%c [%s]\n".formatted(letter, letter, String.join(", ", before, before)));
    }
    assertThat(
            catchThrowableOfType(
                UnreadableBlueprintException.class, () -> table.readBlueprint(bomb.toString())))
        .isNotNull();
  }

  private static String seed() {
    return "seed " + SEED;
  }

  /** Orders of all shapes, not all of which make sense. */
  private static List<Blueprint> orders(int howMany) {
    SplittableRandom chance = new SplittableRandom(SEED);
    List<Blueprint> orders = new ArrayList<>();
    for (int k = 0; k < howMany; k++) {
      int least = 1 + chance.nextInt(4);
      orders.add(
          new Blueprint(
              ask(chance),
              new PolynomialWish(
                  2 + chance.nextInt(7),
                  10 + chance.nextInt(1_000),
                  least,
                  least + chance.nextInt(3),
                  pick(List.of(RootsWish.values()), chance),
                  pick(
                      List.of(
                          new RealWish.Open(),
                          new RealWish.All(),
                          new RealWish.NotAll(),
                          new RealWish.Exactly(chance.nextInt(9))),
                      chance)),
              pick(
                  List.of(
                      new AnswerWish.Any(),
                      new AnswerWish.Whole(),
                      new AnswerWish.Between(-chance.nextInt(50), chance.nextInt(1_000)),
                      new AnswerWish.Fraction(1 + chance.nextInt(20)),
                      new AnswerWish.Wanted(
                          Rational.of(chance.nextInt(100) - 50, 1 + chance.nextInt(9)))),
                  chance),
              new WorkingWish(
                  some(KnownNames.ROUTES, chance),
                  some(KnownNames.ROUTES, chance),
                  chance.nextBoolean()
                      ? List.of()
                      : List.of(
                          new ShorterRoute("newton", "build-from-e", Rational.of(3, 2)),
                          new ShorterRoute("evaluate", "build-from-e", Rational.of(2))),
                  chance.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(chance.nextInt(9)),
                  some(KnownNames.SLIPS, chance),
                  chance.nextBoolean()
                      ? OptionalInt.empty()
                      : OptionalInt.of(1 + chance.nextInt(5))),
              3 + chance.nextInt(3),
              1 + chance.nextInt(500),
              chance.nextLong(),
              chance.nextBoolean() ? List.of() : List.of("shelf.txt", "old \"ones\" \\ 2025.txt")));
    }
    return orders;
  }

  private static AskWish ask(SplittableRandom chance) {
    return pick(
        List.of(
            new AskWish.Given("Σ 1/(r - 3)"),
            new AskWish.Given("S_20 mod 7 # not a comment: {x}"),
            new AskWish.OfFamily(pick(Families.ALL, chance).name()),
            new AskWish.Surprise(Set.of()),
            new AskWish.Surprise(some(Families.kinds(), chance))),
        chance);
  }

  private static <T> T pick(List<? extends T> list, SplittableRandom chance) {
    return list.get(chance.nextInt(list.size()));
  }

  private static Set<String> some(Set<String> names, SplittableRandom chance) {
    Set<String> some = new TreeSet<>();
    for (String name : names) {
      if (chance.nextInt(8) == 0) {
        some.add(name);
      }
    }
    return some;
  }
}
