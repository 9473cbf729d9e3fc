package rootwright.press.formula.internal;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Map;

/**
 * A drawing surface that draws nothing and keeps the outline of everything filled, stroked or
 * written on it.
 */
public final class OutlineRecorder extends FormulaSurface {

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private final Path2D.Double outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
  private AffineTransform transform = new AffineTransform();
  private Font font = new Font(Font.SERIF, Font.PLAIN, 1);
  private Stroke stroke = new BasicStroke(1);
  private Color color = Color.BLACK;

  /** Everything drawn so far, as one shape to be filled. */
  public Path2D outline() {
    return outline;
  }

  @Override
  public void fill(Shape shape) {
    outline.append(shape.getPathIterator(transform), false);
  }

  @Override
  public void draw(Shape shape) {
    fill(stroke.createStrokedShape(shape));
  }

  @Override
  public void drawChars(char[] data, int offset, int length, int x, int y) {
    drawString(new String(data, offset, length), (float) x, (float) y);
  }

  @Override
  public void drawString(String text, float x, float y) {
    fill(font.createGlyphVector(EXACT, text).getOutline(x, y));
  }

  @Override
  public void drawString(String text, int x, int y) {
    drawString(text, (float) x, (float) y);
  }

  @Override
  public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
    fill(glyphs.getOutline(x, y));
  }

  @Override
  public void drawLine(int x1, int y1, int x2, int y2) {
    draw(new Line2D.Double(x1, y1, x2, y2));
  }

  @Override
  public void fillRect(int x, int y, int width, int height) {
    fill(new Rectangle(x, y, width, height));
  }

  @Override
  public FontRenderContext getFontRenderContext() {
    return EXACT;
  }

  @Override
  public void translate(int x, int y) {
    transform.translate(x, y);
  }

  @Override
  public void translate(double x, double y) {
    transform.translate(x, y);
  }

  @Override
  public void rotate(double angle) {
    transform.rotate(angle);
  }

  @Override
  public void rotate(double angle, double x, double y) {
    transform.rotate(angle, x, y);
  }

  @Override
  public void scale(double x, double y) {
    transform.scale(x, y);
  }

  @Override
  public void shear(double x, double y) {
    transform.shear(x, y);
  }

  @Override
  public void transform(AffineTransform other) {
    transform.concatenate(other);
  }

  @Override
  public void setTransform(AffineTransform other) {
    transform = new AffineTransform(other);
  }

  @Override
  public AffineTransform getTransform() {
    return new AffineTransform(transform);
  }

  @Override
  public void setFont(Font other) {
    font = other;
  }

  @Override
  public Font getFont() {
    return font;
  }

  @Override
  public void setStroke(Stroke other) {
    stroke = other;
  }

  @Override
  public Stroke getStroke() {
    return stroke;
  }

  @Override
  public void setColor(Color other) {
    color = other;
  }

  @Override
  public Color getColor() {
    return color;
  }

  @Override
  public Paint getPaint() {
    return color;
  }

  @Override
  public void setPaint(Paint paint) {}

  @Override
  public Color getBackground() {
    return Color.WHITE;
  }

  @Override
  public void setBackground(Color background) {}

  @Override
  public Composite getComposite() {
    return AlphaComposite.SrcOver;
  }

  @Override
  public void setComposite(Composite composite) {}

  @Override
  public RenderingHints getRenderingHints() {
    return new RenderingHints(Map.of());
  }

  @Override
  public Object getRenderingHint(RenderingHints.Key key) {
    return "unset";
  }

  @Override
  public void setRenderingHint(RenderingHints.Key key, Object value) {}

  @Override
  public void setRenderingHints(Map<?, ?> hints) {}

  @Override
  public void addRenderingHints(Map<?, ?> hints) {}

  @Override
  public void dispose() {}
}
