package rootwright.cli;

import java.util.List;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.hint.HintLadder;
import rootwright.composing.level.Level;
import rootwright.composing.option.Choices;
import rootwright.composing.scan.ScanResult;
import rootwright.desk.contract.CompositionContract;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.RelaxationInWords;
import rootwright.working.answer.AnswerFormula;

/** Prints what came of an order. */
final class CompositionPrinter {

  private final Console console;
  private final boolean json;

  CompositionPrinter(Console console, boolean json) {
    this.console = console;
    this.json = json;
  }

  void print(Composition composition) {
    if (json) {
      console.out().println(CompositionContract.of(composition, FormulaForms.FOR_SCRIPTS));
      return;
    }
    Ink ink = console.terminal() ? Ink.COLOURED : Ink.PLAIN;
    int number = 1;
    for (Composed composed : composition.problems()) {
      console.out().println(ink.strong(number++ + ".") + " " + composed.solution().statement());
      problem(composed, ink);
      console.out().println();
    }
    for (ScanResult.FilterCount count : composition.counts()) {
      console
          .out()
          .println(
              ink.faint(
                  "   %,d looked at, %,d turned away: %s"
                      .formatted(count.seen(), count.rejected(), count.explanation())));
    }
    composition
        .rejected()
        .forEach(
            (reason, count) ->
                console
                    .out()
                    .println(ink.faint("   %,d turned away: %s".formatted(count, reason))));
    console.out().println(ink.faint("   seed " + composition.blueprint().seed()));
    if (composition.problems().isEmpty()) {
      console
          .out()
          .println(
              composition.exhausted()
                  ? "None exists: every candidate was looked at."
                  : "None was found among the candidates drawn.");
      composition
          .relaxations()
          .forEach(relaxation -> console.out().println("   " + RelaxationInWords.of(relaxation)));
    }
  }

  private void problem(Composed composed, Ink ink) {
    Choices choices = composed.choices();
    StringBuilder options = new StringBuilder("   ");
    for (int k = 0; k < choices.options().size(); k++) {
      String text =
          "(%c) %s"
              .formatted(
                  (char) ('A' + k),
                  UnicodeWriter.write(AnswerFormula.of(choices.options().get(k).value())));
      options.append(k == choices.keyIndex() ? ink.strong(text) : text).append("   ");
    }
    console.out().println(options.toString().stripTrailing());
    console.out().println("   key %c".formatted((char) ('A' + choices.keyIndex())));
    choices.fewer().ifPresent(why -> console.out().println("   " + why));
    for (int k = 0; k < choices.options().size(); k++) {
      List<String> slips = choices.options().get(k).slips();
      if (!slips.isEmpty()) {
        console
            .out()
            .println(ink.faint("   (%c) %s".formatted((char) ('A' + k), String.join(", ", slips))));
      }
    }
    Level.of(composed.solution()).ifPresent(level -> console.out().println("   " + level.words()));
    console.out().println("   " + String.join("; ", composed.good()));
    HintLadder.of(composed.solution())
        .ifPresent(
            ladder ->
                ladder
                    .rungs()
                    .forEach(rung -> console.out().println(ink.faint("   hint: " + rung.text()))));
  }
}
