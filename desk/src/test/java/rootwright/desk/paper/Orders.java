package rootwright.desk.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rootwright.desk.Desk;
import rootwright.press.document.Language;
import rootwright.working.problem.Statement;

/** Orders for papers in the tests. */
final class Orders {

  static final Desk DESK = new Desk();
  static final Papers PAPERS = DESK.papers();
  static final LocalDate DAY = LocalDate.of(2026, 11, 26);

  private Orders() {}

  static ItemOrder problem(String polynomial, String find, AnswerForm form) {
    return new ItemOrder.Problem(Statement.of(polynomial, find), form, OptionalInt.empty());
  }

  /** A short answer, a choice, a whole number and a proof. */
  static List<ItemOrder> four() {
    List<ItemOrder> items = new ArrayList<>();
    items.add(problem("x^3 - 6x^2 + 5x - 1", "Σ 1/r^2", AnswerForm.SHORT));
    items.add(problem("2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2", AnswerForm.CHOICE));
    items.add(problem("4x^3 - 10x^2 - x + 5", "r^2 + s^2 + t^2", AnswerForm.INTEGER));
    items.add(
        new ItemOrder.Proof(
            "Let $P$ be a real cubic. Prove that $P(x) = 0$ has a real solution.",
            List.of("$P$ takes both signs and is continuous."),
            OptionalInt.of(5)));
    return items;
  }

  static PaperOrder order(List<ItemOrder> items, int versions, Arrangement arrangement) {
    return new PaperOrder(
        "Sums over the roots", Language.ENGLISH, DAY, items, 4, versions, arrangement, 41);
  }

  static PaperOrder one() {
    return order(four(), 1, Arrangement.REORDERED);
  }
}
