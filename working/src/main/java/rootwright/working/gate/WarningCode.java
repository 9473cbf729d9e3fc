package rootwright.working.gate;

/** The kinds of thing a coach should know about an ask; the code serves scripts only. */
public enum WarningCode {
  LEAD_ZERO("lead-zero"),
  ZERO_DENOMINATOR("zero-denominator"),
  REPEATED_ROOT("repeated-root"),
  NOT_SYMMETRIC("not-symmetric"),
  ORDER_OPEN("order-open"),
  NOT_REAL("not-real"),
  EXTRANEOUS("extraneous"),
  SEVERAL_PARAMETERS("several-parameters"),
  NO_PARAMETER("no-parameter"),
  REDUCIBLE("reducible"),
  RATIONAL_ROOT("rational-root"),
  DOMAIN_OPEN("domain-open"),
  CONTRADICTORY("contradictory"),
  REDUNDANT("redundant"),
  BY_COINCIDENCE("by-coincidence"),
  PAIRS_OPEN("pairs-open"),
  READ_AS("read-as"),
  NO_RESIDUE("no-residue");

  private final String code;

  WarningCode(String code) {
    this.code = code;
  }

  /** The stable short name, lower case with hyphens. */
  public String code() {
    return code;
  }
}
