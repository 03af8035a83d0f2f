package sandslurry.fuzz;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;

/** Reads any bytes as a design file: it is refused in words, or what is written reads back. */
public final class ReaderFuzz {
  private static final int LONGEST_PROBLEM = 1_600;

  /** Of processor time, whoever else is at work; a run with instrumented classes says more. */
  private static final long LONGEST_NS = Long.getLong("fuzz.longest.s", 5) * 1_000_000_000L;

  private ReaderFuzz() {}

  /**
   * One try.
   *
   * @param data what the file holds
   */
  public static void fuzzerTestOneInput(byte[] data) {
    timed(() -> read(data));
  }

  private static void read(byte[] data) {
    DesignDocument document;
    try {
      document = DesignDocument.parse(new String(data, StandardCharsets.UTF_8));
    } catch (DesignTextException e) {
      check(e.getMessage().length() < LONGEST_PROBLEM, "a long refusal");
      return;
    }
    Reading reading = document.read();
    for (Problem problem : reading.problems()) {
      check(problem.toString().length() < LONGEST_PROBLEM, "a long problem: " + problem);
      check(problem.toString().chars().noneMatch(Character::isISOControl), "a control character");
      check(document.without(problem.field()) != null, "a field that nothing can be done with");
    }
    try {
      String saved = document.toString();
      check(DesignDocument.parse(saved).toString().equals(saved), "a save that changes");
    } catch (DesignTextException e) {
      throw new IllegalStateException("what is saved cannot be read", e);
    }
  }

  static void timed(Runnable tried) {
    var threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    tried.run();
    long worked = threads.getCurrentThreadCpuTime() - start;
    check(worked < LONGEST_NS, "it took " + worked + " ns");
  }

  static void check(boolean holds, String what) {
    if (!holds) {
      throw new IllegalStateException(what);
    }
  }
}
