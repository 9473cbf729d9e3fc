package rootwright.working.subject;

import rootwright.algebra.notation.PartPlace;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.Refusal;
import rootwright.working.answer.Answer;

/** An ask beyond what is worked, as the refusal that a person sees. */
final class RefusedAsk {

  private static final int LONGEST_PART = 40;

  private RefusedAsk() {}

  static Refusal of(Answer.Refused refused, String text) {
    String part = PlainWriter.write(refused.part());
    String shown = part.length() > LONGEST_PART ? part.substring(0, LONGEST_PART - 4) + "…" : part;
    return new Refusal(
        refused.code(),
        "“%s” cannot be worked: %s.".formatted(shown, refused.why()),
        text,
        PartPlace.of(text, refused.part()),
        refused.code().equals("too-large")
            ? "a smaller exponent, index or number of roots"
            : "roots and numbers joined by +, -, *, / and whole-number powers",
        refused.mend().map(PlainWriter::write).orElse(""));
  }
}
