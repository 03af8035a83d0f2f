package sandslurry.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sandslurry.design.document.WholeFile;

/** Files that a command writes: whole or not at all, never onto its input nor onto each other. */
final class OutputFile {
  private OutputFile() {}

  /**
   * Refuses outputs that would destroy the input or each other; before anything is computed.
   *
   * @param input the design file; null when there is none
   * @param outputs the files to be written; null for one that is not wanted
   */
  static void check(Path input, Path... outputs) throws BadInputException {
    List<Path> seen = new ArrayList<>();
    if (input != null) {
      seen.add(input);
    }
    for (Path output : outputs) {
      if (output == null) {
        continue;
      }
      for (Path other : seen) {
        if (isSame(output, other)) {
          throw new BadInputException(
              other == input
                  ? BadInputException.shown(output)
                      + " is the design file itself: nothing is written onto it"
                  : BadInputException.shown(output)
                      + " is wanted for two outputs: give each a file of its own");
        }
      }
      seen.add(output);
    }
  }

  /** The same place, by whatever link or spelling. */
  static boolean isSame(Path a, Path b) {
    assert FileWork.isElsewhere();
    try {
      if (Files.exists(a) && Files.exists(b)) {
        return Files.isRegularFile(a) && Files.isSameFile(a, b);
      }
    } catch (IOException e) {
      // Then the spellings decide.
    }
    return a.toAbsolutePath().normalize().equals(b.toAbsolutePath().normalize());
  }

  /**
   * Writes one output.
   *
   * @param what what it is, such as "The report"
   * @param file where it goes
   * @param content all of it
   */
  static void write(String what, Path file, byte[] content) throws BadInputException {
    assert FileWork.isElsewhere();
    try {
      WholeFile.write(file, Objects.requireNonNull(content));
    } catch (IOException e) {
      throw new BadInputException(
          what
              + " cannot be written to "
              + BadInputException.shown(file)
              + ": "
              + BadInputException.reason(e));
    }
  }
}
