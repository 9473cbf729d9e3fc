package rootwright.lesson.film;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import org.jcodec.codecs.h264.H264Encoder;
import org.jcodec.common.Codec;
import org.jcodec.common.MuxerTrack;
import org.jcodec.common.VideoCodecMeta;
import org.jcodec.common.VideoEncoder;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.io.SeekableByteChannel;
import org.jcodec.common.model.ColorSpace;
import org.jcodec.common.model.Packet;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Size;
import org.jcodec.containers.mp4.muxer.MP4Muxer;
import org.jcodec.scale.AWTUtil;
import rootwright.lesson.narration.Script;
import rootwright.lesson.picture.Painter;

/**
 * An encoder that comes with the program: H.264 in MP4, 1280 by 720, one encoded picture for each
 * change with its duration. Captions stay in a file of their own.
 */
final class OwnEncoder implements FilmMaker {

  private static final int WIDTH = 1280;
  private static final int HEIGHT = 720;
  private static final int MILLIS = 1000;

  /** What one picture took on a slow machine. */
  private static final long MILLIS_A_PICTURE = 450;

  @Override
  public String title() {
    return "the encoder that comes with the program";
  }

  @Override
  public boolean isHere() {
    return true;
  }

  @Override
  public long estimate(Script script) {
    return 1_000 + MILLIS_A_PICTURE * script.beats().size();
  }

  @Override
  public void make(Script script, Path file, FilmListener listener) throws IOException {
    List<Frames.Frame> frames = Frames.of(script);
    try (SeekableByteChannel channel = NIOUtils.writableChannel(file.toFile())) {
      MP4Muxer muxer = MP4Muxer.createMP4MuxerToChannel(channel);
      MuxerTrack track =
          muxer.addVideoTrack(
              Codec.H264,
              VideoCodecMeta.createSimpleVideoCodecMeta(
                  new Size(WIDTH, HEIGHT), ColorSpace.YUV420J));
      long clock = 0;
      for (int k = 0; k < frames.size(); k++) {
        long millis = frames.get(k).millis();
        // Each picture stands alone, so that a player can go to any of them.
        H264Encoder encoder = H264Encoder.createH264Encoder();
        Picture picture =
            AWTUtil.fromBufferedImage(
                scaled(Painter.paint(frames.get(k).picture())), ColorSpace.YUV420J);
        ByteBuffer room = ByteBuffer.allocate(WIDTH * HEIGHT * 6);
        VideoEncoder.EncodedFrame encoded = encoder.encodeFrame(picture, room);
        track.addFrame(
            Packet.createPacket(
                NIOUtils.clone(encoded.getData()),
                clock,
                MILLIS,
                millis,
                k,
                Packet.FrameType.KEY,
                null));
        clock += millis;
        listener.done(k + 1, frames.size());
      }
      muxer.finish();
    }
  }

  private static BufferedImage scaled(BufferedImage image) {
    BufferedImage small = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D onto = small.createGraphics();
    onto.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    onto.drawImage(image, 0, 0, WIDTH, HEIGHT, null);
    onto.dispose();
    return small;
  }
}
