package rootwright.lesson.show;

import java.nio.charset.StandardCharsets;

/** A file of a lesson. */
public final class LessonFile {

  private final String name;
  private final String mediaType;
  private final byte[] bytes;

  /**
   * A file.
   *
   * @param name with extension, perhaps in a folder
   * @param mediaType of its content
   */
  public LessonFile(String name, String mediaType, byte[] bytes) {
    this.name = name;
    this.mediaType = mediaType;
    this.bytes = bytes.clone();
  }

  /** A text file in UTF-8. */
  public static LessonFile text(String name, String mediaType, String text) {
    return new LessonFile(name, mediaType, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Its name with extension, perhaps in a folder. */
  public String name() {
    return name;
  }

  /** The media type of its content. */
  public String mediaType() {
    return mediaType;
  }

  /** What is in it. */
  public byte[] bytes() {
    return bytes.clone();
  }
}
