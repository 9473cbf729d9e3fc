package rootwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.Condition;
import rootwright.composing.climb.Climb;
import rootwright.composing.climb.ClimbStep;
import rootwright.composing.option.Choices;
import rootwright.composing.scan.ScanResult;
import rootwright.desk.contract.CompositionContract;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.RelaxationInWords;
import rootwright.desk.table.Margin;
import rootwright.working.answer.Answer;
import rootwright.working.route.Working;
import rootwright.working.step.Idea;

/** Prints what came of an order. */
final class CompositionPrinter {

  private static final String INDENT = "   ";

  private final Console console;
  private final OutputForm form;
  private final Ink ink;

  CompositionPrinter(Console console, OutputForm form) {
    this.console = console;
    this.form = form;
    this.ink = Ink.of(console);
  }

  /** What an order gave. */
  void print(Composition composition) {
    switch (form) {
      case JSON ->
          console.out().println(CompositionContract.of(composition, FormulaForms.FOR_SCRIPTS));
      case LATEX -> console.out().println(CompositionLatex.of(composition.problems()));
      default -> {
        int number = 1;
        for (Composed composed : composition.problems()) {
          console.out().println(text(number++ + ".", composed));
        }
        console.out().println(counts(composition));
      }
    }
  }

  /** A climb, each problem under what it adds. */
  void print(Climb climb) {
    switch (form) {
      case JSON -> console.out().println(CompositionContract.of(climb, FormulaForms.FOR_SCRIPTS));
      case LATEX ->
          console
              .out()
              .println(
                  CompositionLatex.of(climb.steps().stream().map(ClimbStep::composed).toList()));
      default -> {
        int number = 1;
        for (ClimbStep step : climb.steps()) {
          String adds =
              step.adds().isEmpty()
                  ? "reads off"
                  : "adds: "
                      + step.adds().stream().map(Idea::words).collect(Collectors.joining(", "));
          console.out().println(ink.faint(INDENT + adds));
          console.out().println(text(number++ + ".", step.composed()));
        }
        climb
            .missing()
            .ifPresent(why -> console.out().println("The climb ends here: " + why + "."));
      }
    }
  }

  private String text(String number, Composed composed) {
    Paragraph lines = new Paragraph(console.width());
    lines.add(ink.strong(number) + " ", composed.solution().statement());
    options(composed, lines);
    Margin margin = Margin.of(composed);
    margin.level().ifPresent(level -> lines.add(INDENT, level.words()));
    lines.add(INDENT, "good: " + String.join("; ", composed.good()));
    for (Condition condition : composed.conditions()) {
      lines.add(INDENT, ink.faint(condition.sentence()));
    }
    for (String remark : composed.remarks()) {
      lines.add(INDENT, "beside an earlier one: " + remark);
    }
    margin.hints().forEach(rung -> lines.add(INDENT, ink.faint("hint: " + rung.text())));
    workings(composed.solution().routes(), lines);
    lines.blank();
    return lines.text();
  }

  private void options(Composed composed, Paragraph lines) {
    Choices choices = composed.choices();
    if (choices.options().size() == 1) {
      lines.line(INDENT + "key: " + answer(choices.key().value()));
      choices.fewer().ifPresent(why -> lines.add(INDENT, why));
      return;
    }
    StringBuilder row = new StringBuilder();
    for (int k = 0; k < choices.options().size(); k++) {
      String option = "(%s) %s".formatted(letter(k), answer(choices.options().get(k).value()));
      row.append(k == choices.keyIndex() ? ink.strong(option) : option).append("   ");
    }
    lines.add(INDENT, row.toString().stripTrailing());
    lines.line(
        INDENT + "key %s: %s".formatted(letter(choices.keyIndex()), answer(choices.key().value())));
    for (int k = 0; k < choices.options().size(); k++) {
      List<String> slips = choices.options().get(k).slips();
      if (!slips.isEmpty()) {
        lines.add(
            INDENT, ink.faint("(%s) comes of %s".formatted(letter(k), String.join(", ", slips))));
      }
    }
    choices.fewer().ifPresent(why -> lines.add(INDENT, why));
  }

  /** The letter a choice is printed with. */
  static String letter(int place) {
    return String.valueOf((char) ('A' + place));
  }

  private static String answer(Answer answer) {
    return answer.alternatives().stream()
        .map(UnicodeWriter::write)
        .collect(Collectors.joining(" or "));
  }

  /** The shortest working in full, the others by name and cost. */
  private void workings(List<Working> workings, Paragraph lines) {
    for (Working working : workings.subList(0, Math.min(1, workings.size()))) {
      lines.line(INDENT + "working: " + working.title());
      lines.steps(INDENT, working, ink);
    }
    if (workings.size() > 1) {
      lines.add(
          INDENT,
          ink.faint(
              "other routes: "
                  + workings.subList(1, workings.size()).stream()
                      .map(each -> "%s, cost %s".formatted(each.route(), each.cost().total()))
                      .collect(Collectors.joining("; "))));
    }
  }

  private String counts(Composition composition) {
    Paragraph lines = new Paragraph(console.width());
    for (ScanResult.FilterCount count : composition.counts()) {
      lines.add(
          INDENT,
          ink.faint(
              "%,d looked at, %,d turned away: %s"
                  .formatted(count.seen(), count.rejected(), count.explanation())));
    }
    composition
        .rejected()
        .forEach(
            (reason, count) ->
                lines.add(INDENT, ink.faint("%,d turned away: %s".formatted(count, reason))));
    lines.line(ink.faint(INDENT + "seed " + composition.blueprint().seed()));
    lines.add("", ending(composition));
    for (String conflict : composition.conflicts()) {
      lines.add(INDENT, conflict);
    }
    composition
        .relaxations()
        .forEach(relaxation -> lines.add(INDENT, RelaxationInWords.of(relaxation)));
    return lines.text();
  }

  private static String ending(Composition composition) {
    int found = composition.problems().size();
    int wanted = composition.blueprint().many();
    String count = found == 0 ? "None" : "%d of %d".formatted(found, wanted);
    return switch (composition.ending()) {
      case FILLED -> found == 1 ? "The order is filled." : "All %d are found.".formatted(found);
      case EXHAUSTED ->
          found == 0
              ? "None exists: every candidate was looked at."
              : count + " found: every candidate was looked at, so there are no others.";
      case GIVEN_UP ->
          count
              + " found among the candidates worked; the reasons above say which wish turned most"
              + " away. Another seed tries others.";
      case STOPPED -> count + " found when it was stopped.";
    };
  }
}
