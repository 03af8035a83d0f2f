package sandslurry.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A class of the tests or of the program, run in a process of its own. */
final class ChildProgram {
  private ChildProgram() {}

  /** The command; a short life does not pay for compiling well. */
  static List<String> command(List<String> options, Class<?> main, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData"));
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    command.addAll(List.of(args));
    return command;
  }
}
