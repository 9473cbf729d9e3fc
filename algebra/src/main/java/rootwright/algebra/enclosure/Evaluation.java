package rootwright.algebra.enclosure;

/** The value of a polynomial at a point: the exact value lies within {@code error} of it. */
record Evaluation(Point value, Magnitude error) {

  /** A bound for |value| from above. */
  Magnitude absoluteUp() {
    return value.absoluteUp().plusUp(error);
  }
}
