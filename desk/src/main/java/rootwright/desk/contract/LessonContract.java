package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.StepTime;
import rootwright.lesson.narration.TimedBeat;
import rootwright.lesson.picture.Picture;
import rootwright.lesson.picture.SvgWriter;
import rootwright.lesson.plan.Complaint;
import rootwright.lesson.text.Speech;

/** A lesson, or what is wrong with its plan, as JSON for a page. */
public final class LessonContract {

  private LessonContract() {}

  /** {@code complaints} [{line, text, found, mend}]. */
  public static ObjectNode refused(List<Complaint> complaints) {
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    complaints(complaints, reply);
    return reply;
  }

  /**
   * {@code complaints} (only of the time), {@code length}, {@code steps} [{title, kind, from, time,
   * late}], {@code glyphs} and {@code slides} [{title, drawing, said}], drawings as elements of
   * SVG.
   */
  public static ObjectNode of(Script script, List<Complaint> late) {
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    complaints(late, reply);
    reply.put("length", StepTime.clock(script.millis()));
    ArrayNode steps = reply.putArray("steps");
    for (StepTime time : StepTime.of(script)) {
      steps
          .addObject()
          .put("title", time.step().title())
          .put("kind", time.step().kind().title())
          .put("from", StepTime.clock(time.end() - time.millis()))
          .put("time", StepTime.clock(time.millis()))
          .put("late", time.over() > 0 ? StepTime.clock(time.over()) : "");
    }
    SvgWriter writer = new SvgWriter(SvgWriter.Glyphs.SHARED);
    ArrayNode slides = reply.putArray("slides");
    List<Picture> pictures = script.deck().slides();
    for (int k = 0; k < pictures.size(); k++) {
      ObjectNode slide = slides.addObject();
      slide.put("title", pictures.get(k).title());
      slide.put("description", pictures.get(k).description());
      slide.put("drawing", writer.layers(pictures.get(k)));
      ArrayNode said = slide.putArray("said");
      for (TimedBeat timed : script.beats()) {
        if (timed.beat().slide() == k) {
          said.addObject()
              .put("at", StepTime.clock(timed.shown()))
              .put(
                  "text",
                  Speech.of(
                      timed.beat().said(),
                      script.deck().lesson().steps().get(timed.beat().step()).roots()));
        }
      }
    }
    reply.put("glyphs", writer.definitions());
    return reply;
  }

  private static void complaints(List<Complaint> complaints, ObjectNode into) {
    ArrayNode list = into.putArray("complaints");
    for (Complaint complaint : complaints) {
      list.addObject()
          .put("line", complaint.line())
          .put("text", complaint.text())
          .put("found", complaint.found())
          .put("mend", complaint.mend());
    }
  }
}
