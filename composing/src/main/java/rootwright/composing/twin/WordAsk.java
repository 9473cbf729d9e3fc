package rootwright.composing.twin;

import java.util.Optional;

/**
 * An ask that is known by its words only, such as a discriminant or a residue; nothing may be done
 * to the polynomial without changing what is asked.
 */
record WordAsk(String text) implements AskForm {

  @Override
  public Optional<AskForm> mirrored() {
    return Optional.empty();
  }

  @Override
  public Optional<AskForm> inverted() {
    return Optional.empty();
  }
}
