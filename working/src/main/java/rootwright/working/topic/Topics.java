package rootwright.working.topic;

import java.util.List;
import java.util.Optional;
import rootwright.working.proof.Fact;

/** Every topic of the house; a new one registers itself here. */
public final class Topics {

  /** In the order in which a course would take them. */
  public static final List<Topic> ALL =
      List.of(
          new CoefficientsAndRoots(),
          new Multiplicity(),
          new SymmetricPolynomials(),
          new NewtonsIdentities(),
          new ReducingPowers(),
          new PowerSumRecurrence(),
          new LogDerivative(),
          new PartialFractions(),
          new TransformedPolynomials(),
          new TheDiscriminant(),
          new Resolvents(),
          new ConjugateRoots(),
          new RationalRoots());

  private Topics() {}

  /** The topic with this name. */
  public static Optional<Topic> named(String name) {
    return ALL.stream().filter(topic -> topic.name().equals(name)).findFirst();
  }

  /** The fact with this name, of whichever topic. */
  public static Optional<Fact> fact(String name) {
    return ALL.stream()
        .flatMap(topic -> topic.facts().stream())
        .filter(fact -> fact.name().equals(name))
        .findFirst();
  }
}
