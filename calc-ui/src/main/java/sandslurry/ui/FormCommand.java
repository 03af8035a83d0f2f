package sandslurry.ui;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sandslurry.design.DesignDocument;

/** Opens the form and waits until it is closed. */
@Command(name = "form", description = "Opens the form.", mixinStandardHelpOptions = true)
final class FormCommand implements Callable<Integer> {
  static final String NO_DISPLAY =
      "There is no display to open the form on. Type instead:"
          + " java -jar calc-ui/target/sandslurry.jar judge FILE";

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The design file to open; an example if not given.")
  private Path file;

  @Override
  public Integer call() throws BadInputException {
    return open(file);
  }

  static int open(Path file) throws BadInputException {
    if (GraphicsEnvironment.isHeadless()) {
      throw new BadInputException(NO_DISPLAY);
    }
    DesignDocument document =
        file == null
            ? Examples.first().orElseGet(DesignDocument::empty)
            : BadInputException.load(file);
    try {
      FormWindow.showAndWait(document, Optional.ofNullable(file));
      return 0;
    } catch (HeadlessException | AWTError e) {
      throw new BadInputException(NO_DISPLAY);
    }
  }
}
