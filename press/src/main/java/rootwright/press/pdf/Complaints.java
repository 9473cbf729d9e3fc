package rootwright.press.pdf;

import org.apache.fop.events.Event;
import org.apache.fop.events.EventFormatter;
import org.apache.fop.events.EventListener;
import org.apache.fop.events.model.EventSeverity;
import rootwright.press.output.UnprintableException;

/**
 * Takes what the formatter has to say: text that does not fit is an error here, never a line in a
 * log, since a page with a part missing must not be handed out.
 */
final class Complaints implements EventListener {

  @Override
  public void processEvent(Event event) {
    EventSeverity severity = event.getSeverity();
    boolean overflow = event.getEventID().contains("verflow");
    if (severity == EventSeverity.FATAL || severity == EventSeverity.ERROR || overflow) {
      throw new UnprintableException("The pages could not be set: " + EventFormatter.format(event));
    }
  }
}
