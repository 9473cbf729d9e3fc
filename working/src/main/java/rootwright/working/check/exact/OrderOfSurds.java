package rootwright.working.check.exact;

import rootwright.algebra.value.SurdSum;
import rootwright.working.check.Verdict;
import rootwright.working.problem.SurdReader;
import rootwright.working.step.Claim;

/** Whether numbers with square roots ascend, decided by squaring. */
final class OrderOfSurds {

  private OrderOfSurds() {}

  static Verdict of(Claim.Ascending claim) {
    for (int k = 1; k < claim.sides().size(); k++) {
      SurdSum left = read(claim, k - 1);
      SurdSum right = read(claim, k);
      SurdSum gap = right.minus(left);
      if (!gap.isReal() || gap.signum() <= 0) {
        return new Verdict.Refuted("squaring shows another order");
      }
    }
    return Verdict.confirmed("squaring");
  }

  private static SurdSum read(Claim.Ascending claim, int k) {
    return SurdReader.of(claim.sides().get(k))
        .orElseThrow(() -> Unevaluable.form("a side is no sum of square roots"));
  }
}
