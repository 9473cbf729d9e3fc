package rootwright.lesson.slide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rootwright.lesson.picture.Board;
import rootwright.lesson.picture.Entry;
import rootwright.lesson.picture.Picture;
import rootwright.lesson.plan.Lesson;
import rootwright.lesson.plan.LessonLine;
import rootwright.lesson.plan.LessonStep;
import rootwright.lesson.plan.StepKind;
import rootwright.lesson.text.Phrase;
import rootwright.lesson.text.Speech;

/** Puts a lesson on slides: one idea a slide, one line at a time. */
public final class DeckMaker {

  /** The pause before an answer, in seconds: common practice. */
  public static final int BEFORE_ANSWER = 2;

  private final List<Picture> slides = new ArrayList<>();
  private final List<Beat> beats = new ArrayList<>();
  private int step;

  private DeckMaker() {}

  /** The slides of a lesson. */
  public static Deck deck(Lesson lesson) {
    DeckMaker maker = new DeckMaker();
    for (LessonStep step : lesson.steps()) {
      maker.add(step);
      maker.step++;
    }
    return new Deck(lesson, maker.slides, maker.beats);
  }

  private void add(LessonStep lessonStep) {
    Board board = board(lessonStep, lessonStep.title());
    Figures.draw(lessonStep, board);
    int reveal = 0;
    Phrase opening = Phrase.words(opening(lessonStep));
    if (lessonStep.statement().isEmpty()) {
      beat(lessonStep, 0, opening, 0, false);
    } else {
      board.add(statement(lessonStep), 0);
      beat(lessonStep, 0, opening.then(" ", lessonStep.statement()), 0, true);
    }
    Optional<LessonLine> before = Optional.empty();
    for (int k = 0; k < lessonStep.lines().size(); k++) {
      LessonLine line = lessonStep.lines().get(k);
      Entry entry = entry(line, lessonStep);
      if (!board.isEmpty() && !board.fits(entry)) {
        slides.add(board.finished());
        board = board(lessonStep, lessonStep.title() + ", continued");
        before.ifPresent(carried(lessonStep, board));
        reveal = 0;
      } else {
        reveal++;
      }
      board.add(entry, reveal);
      boolean answer =
          k == lessonStep.lines().size() - 1
              && lessonStep.kind().ofProblem()
              && lessonStep.kind() != StepKind.WARNING;
      int trying = k == 0 && lessonStep.kind() == StepKind.TRY ? lessonStep.seconds() : 0;
      beat(
          lessonStep,
          reveal,
          line.said(),
          trying + (answer ? BEFORE_ANSWER : 0),
          line.shown().isPresent());
      before = line.shown().isPresent() ? Optional.of(line) : before;
    }
    slides.add(board.finished());
  }

  private static Consumer<LessonLine> carried(LessonStep step, Board board) {
    return line ->
        board.add(
            new Entry(
                Phrase.EMPTY,
                line.shown(),
                Phrase.EMPTY,
                Entry.Tick.NOTHING,
                Optional.empty(),
                line.shown().map(shown -> Speech.of(shown, step.roots())).orElse("")),
            0);
  }

  private static Board board(LessonStep step, String title) {
    boolean margin =
        !step.figure().isEmpty() || step.lines().stream().anyMatch(line -> line.slip().isPresent());
    Board board = new Board(title, margin ? Board.Division.WITH_MARGIN : Board.Division.WHOLE);
    if (step.kind() == StepKind.PROOF) {
      board.legend();
    }
    return board;
  }

  private void beat(
      LessonStep lessonStep, int reveal, Phrase said, int thinking, boolean newFormula) {
    beats.add(new Beat(step, slides.size(), reveal, lessonStep.kind(), said, thinking, newFormula));
  }

  private static String opening(LessonStep step) {
    String title = step.title();
    return switch (step.kind()) {
      case AIM -> title + ".";
      case FACT -> "The fact: " + title + ".";
      case TRICK -> "A shorter way: " + title + ".";
      default -> title + ".";
    };
  }

  private static Entry statement(LessonStep step) {
    return new Entry(
        step.statement(),
        Optional.empty(),
        Phrase.EMPTY,
        Entry.Tick.NOTHING,
        Optional.empty(),
        Speech.of(step.statement(), step.roots()));
  }

  private static Entry entry(LessonLine line, LessonStep step) {
    boolean proof = step.kind() == StepKind.PROOF || step.kind().ofProblem();
    Entry.Tick tick =
        switch (line.standing()) {
          case CHECKED -> line.shown().isPresent() ? Entry.Tick.CHECKED : Entry.Tick.NOTHING;
          case ARGUMENT -> proof ? Entry.Tick.ARGUED : Entry.Tick.NOTHING;
          case STATED -> Entry.Tick.NOTHING;
        };
    Phrase shown = line.shown().map(Phrase::of).orElse(Phrase.EMPTY);
    Phrase all = line.words().then(" ", shown).then(", ", line.because());
    return new Entry(
        line.words(),
        line.shown(),
        line.because(),
        tick,
        line.slip().map(slip -> new Entry.Note(slip.text(), slip.value())),
        Speech.of(all, step.roots()));
  }
}
