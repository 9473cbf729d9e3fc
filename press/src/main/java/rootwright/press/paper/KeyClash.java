package rootwright.press.paper;

import rootwright.working.answer.Answer;

/** Whether a copier from one version would by accident be right, or tempted, in another. */
final class KeyClash {

  private KeyClash() {}

  /**
   * Whether, of two siblings with options, one offers the key of the other at the very letter at
   * which it is the key there.
   */
  static boolean between(Form.Choice one, Answer key, Form.Choice other, Answer otherKey) {
    return offers(other, key, one) || offers(one, otherKey, other);
  }

  /** Whether the key of {@code keyed} stands at its letter among other options too. */
  private static boolean offers(Form.Choice options, Answer key, Form.Choice keyed) {
    for (int k = 0; k < Math.min(options.options().size(), keyed.options().size()); k++) {
      if (keyed.options().get(k).value().equals(key)
          && options.options().get(k).value().equals(key)) {
        return true;
      }
    }
    return false;
  }
}
