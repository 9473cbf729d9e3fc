package rootwright.lesson.picture;

import java.util.List;

/**
 * A slide as a drawing of 1920 by 1080 pixels.
 *
 * @param title what it shows, in words
 * @param layers drawn in order
 */
public record Picture(String title, List<Layer> layers) {

  /** The width of every slide. */
  public static final int WIDTH = 1920;

  /** The height of every slide. */
  public static final int HEIGHT = 1080;

  public Picture {
    layers = List.copyOf(layers);
  }

  /** The last reveal. */
  public int lastReveal() {
    return layers.stream().mapToInt(Layer::from).max().orElse(0);
  }

  /** What is to be seen after so many reveals. */
  public Picture at(int reveal) {
    return new Picture(title, layers.stream().filter(layer -> layer.from() <= reveal).toList());
  }

  /** Everything that is said on it, for a reader who does not see it. */
  public String description() {
    StringBuilder text = new StringBuilder(title);
    for (Layer layer : layers) {
      if (!layer.label().isEmpty() && !layer.label().equals(title)) {
        text.append(". ").append(layer.label());
      }
    }
    return text.toString();
  }
}
