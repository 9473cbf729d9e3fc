package rootwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;

/**
 * Runs benchmarks by the processor time of their own thread, for a machine that others use as well:
 * there the clock on the wall says little. Two seconds of warming, then batches of a fifth of a
 * second; the median batch is printed. Arguments: names of benchmark classes of this package.
 */
public final class ThreadTime {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final long WARMING = 2_000_000_000L;
  private static final long BATCH = 200_000_000L;
  private static final int BATCHES = 9;

  /** Results go here, so that no call can be optimised away. */
  private static volatile Object sink = "";

  private ThreadTime() {}

  public static void main(String[] names) throws ReflectiveOperationException {
    System.out.println("| benchmark | parameters | µs |\n|---|---|---|");
    for (String name : names) {
      Class<?> type = Class.forName(ThreadTime.class.getPackageName() + "." + name);
      List<Method> methods = new ArrayList<>();
      for (Method method : type.getDeclaredMethods()) {
        if (method.isAnnotationPresent(Benchmark.class)) {
          methods.add(method);
        }
      }
      methods.sort(Comparator.comparing(Method::getName));
      for (Method method : methods) {
        for (Map<Field, String> choice : choices(type)) {
          measure(type, method, choice);
        }
      }
    }
  }

  private static List<Map<Field, String>> choices(Class<?> type) {
    List<Map<Field, String>> choices = new ArrayList<>(List.of(Map.of()));
    for (Field field : type.getDeclaredFields()) {
      Param param = field.getAnnotation(Param.class);
      if (param != null) {
        List<Map<Field, String>> longer = new ArrayList<>();
        for (Map<Field, String> choice : choices) {
          for (String value : param.value()) {
            Map<Field, String> more = new LinkedHashMap<>(choice);
            more.put(field, value);
            longer.add(more);
          }
        }
        choices = longer;
      }
    }
    return choices;
  }

  private static void measure(Class<?> type, Method method, Map<Field, String> choice)
      throws ReflectiveOperationException {
    Object benchmark = type.getDeclaredConstructor().newInstance();
    for (Map.Entry<Field, String> entry : choice.entrySet()) {
      Field field = entry.getKey();
      if (field.getType() == int.class) {
        field.setInt(benchmark, Integer.parseInt(entry.getValue()));
      } else if (field.getType() == long.class) {
        field.setLong(benchmark, Long.parseLong(entry.getValue()));
      } else {
        field.set(benchmark, entry.getValue());
      }
    }
    for (Method setup : type.getDeclaredMethods()) {
      if (setup.isAnnotationPresent(Setup.class)) {
        setup.invoke(benchmark);
      }
    }
    batch(benchmark, method, WARMING);
    double[] times = new double[BATCHES];
    for (int k = 0; k < BATCHES; k++) {
      times[k] = batch(benchmark, method, BATCH);
    }
    Arrays.sort(times);
    System.out.printf(
        "| %s | %s | %.1f |%n", method.getName(), choice.values(), times[BATCHES / 2] / 1000);
  }

  /** Calls for so many nanoseconds of this thread; the nanoseconds of one call. */
  private static double batch(Object benchmark, Method method, long nanoseconds)
      throws IllegalAccessException, InvocationTargetException {
    long start = THREADS.getCurrentThreadCpuTime();
    long calls = 0;
    long spent;
    do {
      sink = method.invoke(benchmark);
      calls++;
      spent = THREADS.getCurrentThreadCpuTime() - start;
    } while (spent < nanoseconds);
    return (double) spent / calls;
  }
}
