package rootwright.lesson.picture;

/** Marks at another place. */
final class Moved {

  private Moved() {}

  static Mark by(Mark mark, double dx, double dy) {
    if (mark instanceof Mark.Letters it) {
      return new Mark.Letters(
          it.text(), it.x() + dx, it.baseline() + dy, it.size(), it.cut(), it.ink());
    } else if (mark instanceof Mark.Outline it) {
      return new Mark.Outline(it.drawing(), it.x() + dx, it.y() + dy, it.ink());
    } else if (mark instanceof Mark.Disc it) {
      return new Mark.Disc(it.x() + dx, it.y() + dy, it.radius(), it.fill(), it.ink());
    } else if (mark instanceof Mark.Box it) {
      return new Mark.Box(it.x() + dx, it.y() + dy, it.width(), it.height(), it.fill(), it.ink());
    }
    Mark.Stroke it = (Mark.Stroke) mark;
    return new Mark.Stroke(
        it.points().stream().map(point -> new Mark.Point(point.x() + dx, point.y() + dy)).toList(),
        it.width(),
        it.ink());
  }
}
