package rootwright.working.kind;

import java.util.List;
import java.util.Optional;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/**
 * What a kind of ask finds before routes and slips are tried.
 *
 * @param answer the answer
 * @param goal where every route must end: the answer, or for an ask in one root the reduced form
 * @param reduced for an ask in exactly one root
 * @param conditions what the ask needs and has
 * @param warnings what the coach should know
 * @param second what the second check said of the answer
 */
record Findings(
    Answer answer,
    Answer goal,
    Optional<Solution.Reduced> reduced,
    List<String> conditions,
    List<Warning> warnings,
    SecondOpinion second) {}
