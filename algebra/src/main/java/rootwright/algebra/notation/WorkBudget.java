package rootwright.algebra.notation;

/**
 * Counts the work of multiplying out, so that it is refused instead of taking minutes. It counts
 * multiplications, not time, so that the same text is refused on every machine.
 */
final class WorkBudget {

  private long left;

  WorkBudget(long work) {
    left = work;
  }

  /** Work for so many products of numbers, each with so many binary digits. */
  void spend(Formula part, long products, long leftBits, long rightBits, long overhead) {
    long words = (leftBits / 32 + 1) * (rightBits / 32 + 1);
    if (products > left / (words + overhead)) {
      throw new PartRefusedException(
          "too-large", "This takes too long to multiply out.", part, "a shorter formula");
    }
    left -= products * (words + overhead);
  }
}
