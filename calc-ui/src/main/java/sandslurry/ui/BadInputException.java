package sandslurry.ui;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.design.document.Problem;
import sandslurry.units.ShownText;

/** An input that cannot be used; the message is all that a person needs. */
final class BadInputException extends Exception {
  private static final long serialVersionUID = 1L;

  BadInputException(String message) {
    super(ShownText.lines(message));
  }

  /** Refuses what has problems, each on a line of its own. */
  static void check(List<Problem> problems) throws BadInputException {
    if (!problems.isEmpty()) {
      throw new BadInputException(
          problems.stream()
              .map(Problem::toString)
              .collect(Collectors.joining(System.lineSeparator())));
    }
  }

  /** A file by its name, which may have letters that no file of this process can have. */
  static Path path(String name) throws BadInputException {
    if (name.isBlank()) {
      throw new BadInputException("\"" + name + "\" is no name of a file");
    }
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new BadInputException(
          "\""
              + ShownText.message(name)
              + "\" is no name of a file here: "
              + e.getReason()
              + ". In a language setting of UTF-8, such as LC_ALL=C.UTF-8, a name may have any"
              + " letter.");
    }
  }

  /** A name of a file as a message repeats it, on one line and not without end. */
  static String shown(Object file) {
    return ShownText.message(file.toString());
  }

  /** Loads a design file, with every way of failing said in words. */
  static DesignDocument load(Path file) throws BadInputException {
    assert FileWork.isElsewhere();
    try {
      if (Files.isDirectory(file)) {
        throw new BadInputException(shown(file) + " is a folder, not a design file");
      }
      return DesignDocument.load(file);
    } catch (NoSuchFileException e) {
      throw new BadInputException(shown(file) + ": there is no such file");
    } catch (MalformedInputException e) {
      throw new BadInputException(shown(file) + " is not a text file in UTF-8");
    } catch (DesignTextException e) {
      throw new BadInputException(shown(file) + " is not a design file: " + e.getMessage());
    } catch (IOException e) {
      throw new BadInputException(shown(file) + " cannot be read: " + reason(e));
    }
  }

  /** Reads a design from standard input. */
  static DesignDocument read(InputStream in) throws BadInputException {
    try {
      return DesignDocument.read(in);
    } catch (DesignTextException e) {
      throw new BadInputException("standard input is not a design: " + e.getMessage());
    } catch (IOException e) {
      throw new BadInputException("standard input cannot be read: " + reason(e));
    }
  }

  static String reason(IOException e) {
    if (e instanceof FileSystemException failed && failed.getReason() != null) {
      return failed.getReason();
    }
    if (e instanceof AccessDeniedException) {
      return "access denied";
    }
    if (e instanceof NoSuchFileException missing) {
      return "there is no folder for " + shown(missing.getFile());
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
