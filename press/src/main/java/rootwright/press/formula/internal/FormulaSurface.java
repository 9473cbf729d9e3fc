package rootwright.press.formula.internal;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;

/**
 * A drawing surface that refuses pictures, clipping and whatever else a formula never does: better
 * a failing test than a formula with a part missing.
 */
abstract class FormulaSurface extends Graphics2D {

  @Override
  public void drawString(AttributedCharacterIterator text, float x, float y) {
    throw refused("attributed text");
  }

  @Override
  public void drawString(AttributedCharacterIterator text, int x, int y) {
    throw refused("attributed text");
  }

  @Override
  public void clip(Shape shape) {
    throw refused("clipping");
  }

  @Override
  public void clipRect(int x, int y, int width, int height) {
    throw refused("clipping");
  }

  @Override
  public void setClip(int x, int y, int width, int height) {
    throw refused("clipping");
  }

  @Override
  public void setClip(Shape shape) {
    throw refused("clipping");
  }

  @Override
  public Shape getClip() {
    throw refused("clipping");
  }

  @Override
  public Rectangle getClipBounds() {
    throw refused("clipping");
  }

  @Override
  public boolean hit(Rectangle area, Shape shape, boolean onStroke) {
    throw refused("hit testing");
  }

  @Override
  public GraphicsConfiguration getDeviceConfiguration() {
    throw refused("a device");
  }

  @Override
  public Graphics create() {
    throw refused("a second surface");
  }

  @Override
  public FontMetrics getFontMetrics(Font of) {
    throw refused("font metrics");
  }

  @Override
  public void setPaintMode() {
    throw refused("paint modes");
  }

  @Override
  public void setXORMode(Color with) {
    throw refused("paint modes");
  }

  @Override
  public void copyArea(int x, int y, int width, int height, int dx, int dy) {
    throw refused("copying");
  }

  @Override
  public void clearRect(int x, int y, int width, int height) {
    throw refused("clearing");
  }

  @Override
  public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
    throw refused("round corners");
  }

  @Override
  public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
    throw refused("round corners");
  }

  @Override
  public void drawOval(int x, int y, int width, int height) {
    throw refused("ovals");
  }

  @Override
  public void fillOval(int x, int y, int width, int height) {
    throw refused("ovals");
  }

  @Override
  public void drawArc(int x, int y, int width, int height, int start, int angle) {
    throw refused("arcs");
  }

  @Override
  public void fillArc(int x, int y, int width, int height, int start, int angle) {
    throw refused("arcs");
  }

  @Override
  public void drawPolyline(int[] xs, int[] ys, int count) {
    throw refused("polygons");
  }

  @Override
  public void drawPolygon(int[] xs, int[] ys, int count) {
    throw refused("polygons");
  }

  @Override
  public void fillPolygon(int[] xs, int[] ys, int count) {
    throw refused("polygons");
  }

  @Override
  public boolean drawImage(Image image, AffineTransform placed, ImageObserver observer) {
    throw refused("pictures");
  }

  @Override
  public void drawImage(BufferedImage image, BufferedImageOp change, int x, int y) {
    throw refused("pictures");
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform placed) {
    throw refused("pictures");
  }

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform placed) {
    throw refused("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    throw refused("pictures");
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int width, int height, ImageObserver observer) {
    throw refused("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, Color behind, ImageObserver observer) {
    throw refused("pictures");
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int width, int height, Color behind, ImageObserver observer) {
    throw refused("pictures");
  }

  @Override
  public boolean drawImage(
      Image image,
      int dx1,
      int dy1,
      int dx2,
      int dy2,
      int sx1,
      int sy1,
      int sx2,
      int sy2,
      ImageObserver observer) {
    throw refused("pictures");
  }

  @Override
  public boolean drawImage(
      Image image,
      int dx1,
      int dy1,
      int dx2,
      int dy2,
      int sx1,
      int sy1,
      int sx2,
      int sy2,
      Color behind,
      ImageObserver observer) {
    throw refused("pictures");
  }

  private static UnsupportedOperationException refused(String what) {
    return new UnsupportedOperationException("a formula does not need " + what);
  }
}
