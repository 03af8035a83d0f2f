package sandslurry.ui;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sandslurry.design.document.DesignDocument;

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
    FormFile.Opened opened = file == null ? null : FormFile.open(file);
    // Read here, since the thread of the window reads no files.
    Optional<DesignDocument> first = Examples.first();
    List<Recovery.Left> left = Recovery.left(Recovery.usualFolder());
    try {
      FormWindow.showAndWait(
          model -> {
            if (opened != null) {
              model.start(opened);
            } else {
              model.startFrom(first.orElseGet(DesignDocument::empty));
            }
          },
          left);
      return 0;
    } catch (HeadlessException | AWTError e) {
      throw new BadInputException(NO_DISPLAY);
    }
  }
}
