package rootwright.working.review;

/** What can be said of one line of somebody's working. */
public enum LineVerdict {
  /** True, and seen to follow from what is given and what stands above. */
  FOLLOWS("follows", "follows"),
  /** True, but what stands above does not lead to it in one step. */
  UNEXPLAINED("true-unexplained", "true, but not explained"),
  /** Not true. */
  WRONG("wrong", "wrong"),
  /** Not true, but what a wrong line above leads to: rightly done from there on. */
  FOLLOWS_FROM_WRONG("follows-from-wrong", "follows from a wrong line"),
  /** Words that no computation can judge. */
  REMARK("remark", "words, for you to judge"),
  /** A formula that could not be read, or that neither check can decide. */
  UNDECIDED("undecided", "cannot be judged");

  private final String code;
  private final String words;

  LineVerdict(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /** Stable short name for scripts. */
  public String code() {
    return code;
  }

  /** A few words for a person. */
  public String words() {
    return words;
  }

  /** Whether the line asserts something that is true. */
  public boolean isTrue() {
    return this == FOLLOWS || this == UNEXPLAINED;
  }
}
