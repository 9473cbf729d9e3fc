package rootwright.press.document;

import java.util.List;
import java.util.function.Consumer;

/**
 * One paper, ready for any output: the worksheet, the key, the solutions, a handout.
 *
 * @param title printed at the head and kept in the properties of the file
 * @param language the language of the words, which also decides the decimal mark
 * @param audience who may hold it
 * @param layout sheet and size of text
 * @param identity paper code, version and date
 * @param blocks what stands on it, top to bottom; may be empty
 */
public record Document(
    String title,
    Language language,
    Audience audience,
    Layout layout,
    Identity identity,
    List<Block> blocks) {

  /**
   * @throws IllegalArgumentException if a document for students holds the scoring of an item, or
   *     the title is blank
   */
  public Document {
    blocks = List.copyOf(blocks);
    if (title.isBlank()) {
      throw new IllegalArgumentException("a paper without a title: '%s'".formatted(title));
    }
    if (audience == Audience.STUDENT) {
      blocks.forEach(Document::requireNoKey);
    }
  }

  /** The same paper on another sheet or with text of another size. */
  public Document withLayout(Layout other) {
    return new Document(title, language, audience, other, identity, blocks);
  }

  /** The items of the paper in their order, also those inside frames. */
  public List<Block.Item> items() {
    return blocks.stream().flatMap(Block::withInner).mapMulti(Document::itemOnly).toList();
  }

  private static void itemOnly(Block block, Consumer<Block.Item> to) {
    if (block instanceof Block.Item item) {
      to.accept(item);
    }
  }

  private static void requireNoKey(Block block) {
    block.withInner().forEach(Document::requireUnscored);
  }

  private static void requireUnscored(Block block) {
    if (block instanceof Block.Item item && item.scoring().isPresent()) {
      throw new IllegalArgumentException(
          "item %d of a paper for students holds its key".formatted(item.number()));
    }
  }
}
