package rootwright.architecture.planted.cycle.egg;

import java.util.Optional;
import rootwright.architecture.planted.cycle.hen.Hen;

/** Planted to be found: knows the hen, which knows the egg. */
public record Egg(Optional<Class<Hen>> of) {

  /** The hen's class, so that the compiled code knows it too. */
  public static Egg ofHen() {
    return new Egg(Optional.of(Hen.class));
  }
}
