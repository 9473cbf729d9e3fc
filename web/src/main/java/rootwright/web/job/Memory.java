package rootwright.web.job;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.List;

/** How much memory is left, and who asked for it. */
final class Memory {

  /** From this share on, of what a collection could not free, memory counts as full. */
  private static final double FULL = 0.85;

  private static final List<MemoryPoolMXBean> HEAP =
      ManagementFactory.getMemoryPoolMXBeans().stream()
          .filter(pool -> pool.getType() == MemoryType.HEAP && pool.getCollectionUsage() != null)
          .toList();

  private Memory() {}

  /** Whether little is free once all garbage is away. */
  @SuppressWarnings("DoNotCallSystemGc")
  static boolean isFull() {
    if (!wasFull()) {
      return false;
    }
    // The figure is that of the last collection, and what filled the memory may have ended since.
    System.gc();
    return wasFull();
  }

  private static boolean wasFull() {
    long kept = 0;
    for (MemoryPoolMXBean pool : HEAP) {
      MemoryUsage afterCollection = pool.getCollectionUsage();
      kept += afterCollection.getUsed();
    }
    return kept > FULL * Runtime.getRuntime().maxMemory();
  }

  /** How many bytes a thread has asked for in its life; 0 if this machine does not count them. */
  static long allocatedBy(Thread thread) {
    return ManagementFactory.getThreadMXBean() instanceof ThreadMXBean counting
        ? Math.max(0, counting.getThreadAllocatedBytes(thread.getId()))
        : 0;
  }
}
