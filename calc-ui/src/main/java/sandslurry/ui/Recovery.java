package sandslurry.ui;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;

/**
 * Keeps the design of a window while it has changes that are not saved, so that it survives the end
 * of the program, whatever ended it. A lock tells the designs of windows that are still open from
 * those that were left behind.
 */
final class Recovery {
  private static final String LOCK = ".lock";
  private static final String DESIGN = ".json";

  private final Path folder;
  private final String id = UUID.randomUUID().toString();
  private FileChannel held;

  /**
   * Makes the keeper of one window.
   *
   * @param folder where unsaved designs are kept
   */
  Recovery(Path folder) {
    this.folder = folder;
  }

  /** The folder of the user who is at work. */
  static Path usualFolder() {
    return Path.of(System.getProperty("user.home"), ".sandslurry", "unsaved");
  }

  /**
   * A design that was left behind.
   *
   * @param kept where it is kept
   * @param file the file that it was saved to before, if any, as its window last saw it
   * @param document the design
   * @param when when it was last changed
   */
  record Left(Path kept, Optional<FormFile> file, DesignDocument document, Instant when) {
    /** What a person calls it. */
    String name() {
      return file.map(f -> f.path().getFileName().toString())
          .orElse(document.text("/title").isBlank() ? "A new design" : document.text("/title"));
    }

    /** It was restored, or is not wanted. */
    void forget() {
      Recovery.delete(kept);
    }
  }

  /** Keeps a design in place of the one kept before. */
  synchronized void keep(DesignDocument document, Optional<FormFile> file) throws IOException {
    assert FileWork.isElsewhere();
    if (held == null) {
      Files.createDirectories(folder);
      held =
          FileChannel.open(
              folder.resolve(id + LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      held.lock();
    }
    DesignDocument kept = DesignDocument.empty().withPart("/design", document.toString());
    if (file.isPresent()) {
      kept =
          kept.with("/file", file.get().path().toAbsolutePath().toString())
              .with("/print", file.get().print());
    }
    kept.save(folder.resolve(id + DESIGN));
  }

  /** Keeps a design that was left behind, and only then forgets the earlier copy of it. */
  void adopt(Left left) throws BadInputException {
    try {
      keep(left.document(), left.file());
    } catch (IOException e) {
      throw new BadInputException(
          "The restored design cannot be kept: " + BadInputException.reason(e) + ". Save it.");
    }
    left.forget();
  }

  /** Everything is saved or not wanted any more. */
  synchronized void clear() {
    delete(folder.resolve(id + DESIGN));
    if (held != null) {
      try {
        held.close();
      } catch (IOException e) {
        // The end of the program lets go of it.
      }
      held = null;
    }
    delete(folder.resolve(id + LOCK));
  }

  /** The designs that windows left behind, the newest first. */
  static List<Left> left(Path folder) {
    assert FileWork.isElsewhere();
    List<Left> left = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return left;
    }
    try (DirectoryStream<Path> designs = Files.newDirectoryStream(folder, "*" + DESIGN)) {
      for (Path design : designs) {
        String name = design.getFileName().toString();
        Path lock = folder.resolve(name.substring(0, name.length() - DESIGN.length()) + LOCK);
        if (!isHeld(lock)) {
          read(design).ifPresent(left::add);
        }
      }
    } catch (IOException e) {
      return List.of();
    }
    left.sort(Comparator.comparing(Left::when).reversed());
    return left;
  }

  private static Optional<Left> read(Path kept) {
    try {
      DesignDocument all = DesignDocument.load(kept);
      Optional<FormFile> file =
          all.has("/file")
              ? Optional.of(new FormFile(Path.of(all.text("/file")), all.text("/print")))
              : Optional.empty();
      return Optional.of(
          new Left(
              kept,
              file,
              DesignDocument.parse(all.json("/design")),
              Files.getLastModifiedTime(kept).toInstant()));
    } catch (IOException | DesignTextException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static boolean isHeld(Path lock) {
    try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE);
        FileLock free = channel.tryLock()) {
      return free == null;
    } catch (OverlappingFileLockException e) {
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
      String name = file.getFileName().toString();
      if (name.endsWith(DESIGN)) {
        Files.deleteIfExists(
            file.resolveSibling(name.substring(0, name.length() - DESIGN.length()) + LOCK));
      }
    } catch (IOException e) {
      // It is offered once more.
    }
  }
}
