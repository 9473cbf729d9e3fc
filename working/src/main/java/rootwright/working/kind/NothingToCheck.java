package rootwright.working.kind;

import java.util.OptionalInt;
import rootwright.working.solve.SecondOpinion;

/** The opinion where no value exists. */
final class NothingToCheck {

  static final SecondOpinion OPINION =
      new SecondOpinion("there is no value to check", true, OptionalInt.empty());

  private NothingToCheck() {}
}
