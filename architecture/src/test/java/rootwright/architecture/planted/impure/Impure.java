package rootwright.architecture.planted.impure;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/** Planted to be found: everything that the kernel must not do, one method each. */
public final class Impure {

  private Impure() {}

  /** Looks at a clock. */
  public static long clock() {
    return System.nanoTime();
  }

  /** Draws chance that no caller has seeded. */
  public static int chance() {
    return new Random().nextInt();
  }

  /** Looks at the disk. */
  public static boolean disk(Path path) {
    return Files.exists(path);
  }

  /** Says something on its own. */
  public static void speech() {
    System.out.println("impure");
  }

  /** Answers in floating point. */
  public static double answer() {
    return 0.5;
  }

  /** Lets floating point decide, though nothing shows it outside. */
  public static boolean decision(int number) {
    return Math.sqrt(number) < 2;
  }
}
