package rootwright.lesson.show;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.StepTime;
import rootwright.lesson.narration.TimedBeat;
import rootwright.lesson.picture.Picture;
import rootwright.lesson.picture.SvgWriter;
import rootwright.lesson.plan.LessonStep;
import rootwright.lesson.text.Speech;
import rootwright.press.markup.Markup;

/**
 * The lesson as one HTML file that needs nothing else: the slides, and the coach's own view with
 * the narration, the clock and the next step. Keys, a presenter's remote (page keys), taps and a
 * second window are understood.
 */
public final class HtmlShow {

  private HtmlShow() {}

  /** The text of the file. */
  public static String write(Script script) {
    SvgWriter drawings = new SvgWriter(SvgWriter.Glyphs.SHARED);
    List<String> slides = new ArrayList<>();
    for (Picture slide : script.deck().slides()) {
      slides.add(drawings.layers(slide));
    }
    Markup into = new Markup();
    into.raw("<!DOCTYPE html>\n");
    into.open("html", "lang", "en").open("head").empty("meta", "charset", "utf-8");
    into.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    into.leaf("title", script.deck().lesson().plan().title());
    into.open("style").raw(shipped("show.css")).close().close();
    into.open("body");
    into.open("svg", "class", "glyphs", "aria-hidden", "true").raw(drawings.definitions()).close();
    into.open("main", "aria-live", "polite");
    for (int k = 0; k < slides.size(); k++) {
      into.open(
          "svg",
          "class",
          "slide",
          "data-slide",
          Integer.toString(k),
          "viewBox",
          "0 0 %d %d".formatted(Picture.WIDTH, Picture.HEIGHT),
          "role",
          "group",
          "aria-label",
          "Slide %d: %s".formatted(k + 1, script.deck().slides().get(k).title()));
      into.raw(slides.get(k)).close();
    }
    into.close();
    into.open("p", "id", "caption", "hidden", "hidden").close();
    coach(script, into);
    beats(script, into);
    into.open("script").raw(shipped("show.js")).close();
    into.close().close();
    return into.finished() + "\n";
  }

  /** The coach's own view; empty until the script fills it. */
  private static void coach(Script script, Markup into) {
    into.open("aside", "id", "coach", "hidden", "hidden", "aria-label", "The coach's own view");
    into.open("p", "class", "times");
    into.open("span", "id", "clock").text("0:00").close();
    into.text(" of ");
    into.leaf("span", StepTime.clock(script.millis()), "id", "whole");
    into.open("span", "id", "plan").close();
    into.open("button", "id", "start", "type", "button").text("start the clock (S)").close();
    into.close();
    into.leaf("h2", "Say");
    into.open("p", "id", "said").close();
    into.leaf("h2", "Next");
    into.open("p", "id", "next").close();
    into.open("p", "class", "keys");
    into.text(
        "→ or PageDown: on · ← or PageUp: back · C: this view · W: second window · T: captions ·"
            + " P: by itself, at the times of the narration · B: blank · Home, End · F: whole"
            + " screen");
    into.close();
    into.close();
  }

  /** Everything that is said, as elements, so that nothing of it can become script. */
  private static void beats(Script script, Markup into) {
    into.open("ol", "id", "beats", "hidden", "hidden");
    for (TimedBeat timed : script.beats()) {
      LessonStep step = script.deck().lesson().steps().get(timed.beat().step());
      into.open(
          "li",
          "data-slide",
          Integer.toString(timed.beat().slide()),
          "data-reveal",
          Integer.toString(timed.beat().reveal()),
          "data-from",
          Long.toString(timed.from()),
          "data-shown",
          Long.toString(timed.shown()),
          "data-to",
          Long.toString(timed.to()),
          "data-thinking",
          Integer.toString(timed.beat().thinking()),
          "data-title",
          step.title());
      into.leaf("p", Speech.of(timed.beat().said(), step.roots()));
      timed
          .cues()
          .forEach(
              cue ->
                  into.leaf(
                      "q",
                      String.join("\n", cue.lines()),
                      "data-from",
                      Long.toString(cue.from()),
                      "data-to",
                      Long.toString(cue.to())));
      into.close();
    }
    into.close();
  }

  private static String shipped(String name) {
    try (InputStream stream = HtmlShow.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("not shipped: " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
