package rootwright.press.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.fop.apps.Fop;
import org.junit.jupiter.api.Test;

class FormatterTest {

  private static final int THREADS = 4;
  private static final int FORMATTERS = 300;

  /** Without the lock one of so many new formatters breaks in every run that was tried. */
  @Test
  void theFirstFilesOfAFormatterMayBeginOnSeveralThreadsAtOnce() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      for (int k = 0; k < FORMATTERS; k++) {
        Formatter fresh = new Formatter();
        CyclicBarrier together = new CyclicBarrier(THREADS);
        List<Future<Fop>> begun = new ArrayList<>();
        for (int file = 0; file < THREADS; file++) {
          begun.add(
              threads.submit(
                  () -> {
                    together.await();
                    return fresh.begin(fresh.agent(), OutputStream.nullOutputStream());
                  }));
        }
        for (Future<Fop> one : begun) {
          assertThat(one.get().getDefaultHandler()).isNotNull();
        }
      }
    } finally {
      threads.shutdownNow();
    }
  }
}
