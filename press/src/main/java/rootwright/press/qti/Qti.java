package rootwright.press.qti;

/** Names that the specification fixes. */
final class Qti {

  static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

  static final String NAMESPACE = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

  /** Scores a response by its mapping. */
  static final String MAP_RESPONSE =
      "https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/map_response";

  private Qti() {}
}
