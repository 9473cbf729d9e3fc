package rootwright.desk.figure;

/**
 * What one of several numbers may be.
 *
 * @param name the number
 * @param from the least it may be
 * @param to the greatest it may be
 * @param fromText the least, exact, in plain notation
 * @param toText the greatest, exact, in plain notation
 * @param greatestAsked whether the greatest was asked for, and not the least
 */
public record RangePicture(
    String name, double from, double to, String fromText, String toText, boolean greatestAsked)
    implements Picture {

  @Override
  public String kind() {
    return "range";
  }
}
