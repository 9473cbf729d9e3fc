package rootwright.press.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A paper on its way from draft to print. Each step gives a new paper; the old one stays as it was.
 *
 * @param content what it says
 * @param state how far it has come
 * @param code the paper code, empty before it is frozen
 * @param edition from 1
 */
public record Paper(Content content, State state, String code, int edition) {

  /** A first draft. */
  public static Paper draft(Content content) {
    return new Paper(content, State.DRAFT, "", 1);
  }

  /**
   * The paper with other content. It is a draft again; keys of statements that changed are stale.
   *
   * @throws IllegalStateException if it is frozen: a frozen paper gets a new edition instead
   */
  public Paper edited(UnaryOperator<Content> change) {
    if (state.isFinal()) {
      throw new IllegalStateException(
          "paper %s is frozen; make a new edition to correct it".formatted(code));
    }
    return new Paper(change.apply(content), State.DRAFT, "", edition);
  }

  /**
   * The paper with every statement read anew and every key confirmed.
   *
   * @throws BlockedException if an item cannot be read, has no answer, or does not fit its form, or
   *     if the versions do not fit each other
   * @throws IllegalStateException if it is frozen
   */
  public Paper checked(Checker checker) throws BlockedException {
    if (state.isFinal()) {
      throw new IllegalStateException("paper %s is frozen".formatted(code));
    }
    List<Complaint> complaints = new ArrayList<>();
    Content read = new ItemCheck(checker, complaints).read(content);
    if (complaints.isEmpty()) {
      complaints.addAll(VersionRules.complaints(read));
    }
    if (!complaints.isEmpty()) {
      throw new BlockedException(complaints);
    }
    return new Paper(read, State.CHECKED, "", edition);
  }

  /**
   * The paper with its code. The code depends on the content alone, keys included.
   *
   * @throws BlockedException if a version is empty or a key is stale
   * @throws IllegalStateException if it is not checked
   */
  public Paper frozen() throws BlockedException {
    if (state != State.CHECKED) {
      throw new IllegalStateException("a paper is frozen after it is checked; it is " + state);
    }
    requirePrintable();
    return new Paper(content, State.FROZEN, PaperCode.of(content, edition), edition);
  }

  /**
   * The paper after it was handed out.
   *
   * @throws IllegalStateException if it is not frozen
   */
  public Paper printed() {
    if (!state.isFinal()) {
      throw new IllegalStateException("only a frozen paper is handed out; it is " + state);
    }
    return new Paper(content, State.PRINTED, code, edition);
  }

  /**
   * A draft of the next edition; this one stays as it is.
   *
   * @param on the day of the new edition
   * @throws IllegalStateException if this one is not frozen: then it can still be edited
   */
  public Paper nextEdition(LocalDate on, UnaryOperator<Content> change) {
    if (!state.isFinal()) {
      throw new IllegalStateException("a paper that is not frozen is edited; it is " + state);
    }
    Content later =
        new Content(
            content.title(), content.language(), content.instruction(), on, content.versions());
    return new Paper(change.apply(later), State.DRAFT, "", edition + 1);
  }

  /**
   * Says whether anything may be printed of it.
   *
   * @throws BlockedException if a version is empty or a key is stale
   */
  public void requirePrintable() throws BlockedException {
    List<Complaint> complaints = staleKeys();
    if (!complaints.isEmpty()) {
      throw new BlockedException(complaints);
    }
  }

  /**
   * Says whether a frozen paper still says what its code stands for; to be asked once for a paper
   * that was read from somewhere, since it digests everything.
   *
   * @throws BlockedException if a version is empty, a key is stale, or the paper is frozen and does
   *     not say any more what it said then
   */
  public void requireIntact() throws BlockedException {
    List<Complaint> complaints = staleKeys();
    if (complaints.isEmpty() && state.isFinal() && !PaperCode.of(content, edition).equals(code)) {
      complaints.add(
          new Complaint(
              "",
              0,
              "The paper %s was changed after it was frozen; make a new edition to correct it."
                  .formatted(code)));
    }
    if (!complaints.isEmpty()) {
      throw new BlockedException(complaints);
    }
  }

  /** What keeps the paper from being printed: empty versions and stale keys. */
  public List<Complaint> staleKeys() {
    List<Complaint> complaints = new ArrayList<>();
    for (Version version : content.versions()) {
      if (version.items().isEmpty()) {
        complaints.add(new Complaint(version.mark(), 0, "There is no item on the paper."));
      }
      for (int k = 0; k < version.items().size(); k++) {
        if (version.items().get(k).task().isStale()) {
          complaints.add(
              new Complaint(
                  version.mark(),
                  k + 1,
                  "The key is stale: the statement has not been checked since it was written."));
        }
      }
    }
    return complaints;
  }
}
