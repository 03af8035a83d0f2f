package sandslurry.ui;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.WholeFile;

/**
 * A design file as the form last saw it on the disk, so that it notices when another window or
 * program has changed it since.
 *
 * @param path where it is
 * @param print fingerprint of its content; empty when there was no file
 */
record FormFile(Path path, String print) {
  /**
   * A file that was opened.
   *
   * @param file the file
   * @param document what it holds
   */
  record Opened(FormFile file, DesignDocument document) {}

  /** Opens a file. */
  static Opened open(Path path) throws BadInputException {
    // Looked at before it is read: a change in between is then noticed, not missed.
    FormFile seen = seen(path);
    return new Opened(seen, BadInputException.load(path));
  }

  /** A file as it is now. */
  static FormFile seen(Path path) {
    assert FileWork.isElsewhere();
    try (InputStream in = Files.newInputStream(path)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] some = new byte[1 << 16];
      for (int n = in.read(some); n >= 0; n = in.read(some)) {
        digest.update(some, 0, n);
      }
      return new FormFile(path, HexFormat.of().formatHex(digest.digest()));
    } catch (IOException e) {
      return new FormFile(path, "");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Says that another program has written the file since. */
  boolean isChanged() {
    String now = seen(path).print();
    return !now.isEmpty() && !now.equals(print);
  }

  /** Saves a design; the version before stays beside it, with the ending {@code .bak}. */
  static FormFile save(Path path, DesignDocument document) throws BadInputException {
    assert FileWork.isElsewhere();
    try {
      byte[] now = document.toString().getBytes(StandardCharsets.UTF_8);
      byte[] before = Files.isRegularFile(path) ? Files.readAllBytes(path) : now;
      if (!Arrays.equals(before, now)) {
        WholeFile.write(path.resolveSibling(path.getFileName() + ".bak"), before);
      }
      document.save(path);
      return seen(path);
    } catch (IOException e) {
      throw new BadInputException(
          BadInputException.shown(path) + " cannot be written: " + BadInputException.reason(e));
    }
  }
}
