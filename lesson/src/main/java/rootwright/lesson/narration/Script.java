package rootwright.lesson.narration;

import java.util.ArrayList;
import java.util.List;
import rootwright.lesson.caption.Caption;
import rootwright.lesson.caption.CaptionCutter;
import rootwright.lesson.caption.CaptionRules;
import rootwright.lesson.caption.Cue;
import rootwright.lesson.caption.Units;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.plan.LessonStep;
import rootwright.lesson.slide.Beat;
import rootwright.lesson.slide.Deck;

/**
 * The narration of a lesson with its times, which drive slides, captions and film.
 *
 * @param deck the slides
 * @param beats in order, each beginning where the one before ends
 */
public record Script(Deck deck, List<TimedBeat> beats) {

  /** A formula that is new has to be looked at: a second and a half, common practice. */
  public static final int NEW_FORMULA_MILLIS = 1500;

  public Script {
    beats = List.copyOf(beats);
  }

  /** Times everything at the pace of the plan. */
  public static Script of(Deck deck, Wording wording) {
    List<TimedBeat> beats = new ArrayList<>();
    long clock = 0;
    for (Beat beat : deck.beats()) {
      TimedBeat timed = timed(beat, clock, deck, wording);
      beats.add(timed);
      clock = timed.to();
    }
    return new Script(deck, beats);
  }

  private static TimedBeat timed(Beat beat, long from, Deck deck, Wording wording) {
    LessonStep step = deck.lesson().steps().get(beat.step());
    int pace = deck.lesson().plan().pace().of(beat.kind());
    long shown = from + 1000L * beat.thinking();
    long clock = shown;
    List<Cue> cues = new ArrayList<>();
    for (Caption caption : CaptionCutter.cut(Units.of(beat.said(), wording, step.roots()))) {
      long spoken = (60_000L * caption.words() + pace - 1) / pace;
      long end = clock + Math.max(CaptionRules.LEAST_MILLIS, spoken);
      cues.add(new Cue(clock, end, caption.lines(), caption.words()));
      clock = end;
    }
    if (beat.newFormula()) {
      clock += NEW_FORMULA_MILLIS;
      if (!cues.isEmpty()) {
        Cue last = cues.remove(cues.size() - 1);
        cues.add(new Cue(last.from(), clock, last.lines(), last.words()));
      }
    }
    return new TimedBeat(beat, from, shown, clock, cues);
  }

  /** How long the lesson is, in milliseconds. */
  public long millis() {
    return beats.isEmpty() ? 0 : beats.get(beats.size() - 1).to();
  }

  /** All captions. */
  public List<Cue> cues() {
    return beats.stream().flatMap(beat -> beat.cues().stream()).toList();
  }
}
