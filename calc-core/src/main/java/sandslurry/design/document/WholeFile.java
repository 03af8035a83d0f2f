package sandslurry.design.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * Writes a file whole or not at all. The text goes to a file of its own in the same folder, is
 * forced to the disk and takes the place of the old file in one step, so that a reader, a second
 * writer or a failure of the power never meets half of it. Links are followed, permissions are
 * kept, and a file that is protected against writing is not replaced.
 */
public final class WholeFile {
  private static final String PREFIX = ".saving-";
  private static final String ENDING = ".part";
  private static final int MOST_LINKS = 40;

  /** No save takes so long: what is older was left behind when its writer was killed. */
  private static final Duration LEFT_BEHIND = Duration.ofHours(1);

  private WholeFile() {}

  /**
   * Writes a file.
   *
   * @param file the file, which may exist; a pipe or a terminal is written to as it is
   * @param content all that it will hold
   * @throws IOException if it cannot be written; an existing file is then as it was
   */
  public static void write(Path file, byte[] content) throws IOException {
    Path target = followed(file.toAbsolutePath());
    if (Files.isDirectory(target)) {
      throw new FileSystemException(file.toString(), null, "it is a folder");
    }
    if (Files.exists(target) && !Files.isRegularFile(target)) {
      Files.write(target, content);
      return;
    }
    Path folder = target.getParent();
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(file.toString());
    }
    refuseProtected(target);
    sweep(folder);
    Path part = folder.resolve(PREFIX + UUID.randomUUID() + ENDING);
    try {
      fill(part, content);
      takeOver(target, part);
      try {
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(part);
    }
    force(folder);
  }

  private static Path followed(Path file) throws IOException {
    Path target = file;
    for (int i = 0; Files.isSymbolicLink(target); i++) {
      if (i == MOST_LINKS) {
        throw new FileSystemException(file.toString(), null, "its links lead in a circle");
      }
      target = target.resolveSibling(Files.readSymbolicLink(target));
    }
    return target.normalize();
  }

  /** A superuser may write everything, but a protected file was protected on purpose. */
  private static void refuseProtected(Path target) throws IOException {
    if (!Files.exists(target)) {
      return;
    }
    PosixFileAttributeView posix = posix(target);
    if (!Files.isWritable(target)
        || posix != null
            && !posix.readAttributes().permissions().contains(PosixFilePermission.OWNER_WRITE)) {
      throw new AccessDeniedException(target.toString(), null, "it is protected against writing");
    }
  }

  private static PosixFileAttributeView posix(Path file) {
    return Files.getFileAttributeView(
        file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
  }

  private static void fill(Path part, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(content);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    } catch (AccessDeniedException | NoSuchFileException e) {
      throw new AccessDeniedException(
          part.getParent().toString(), null, "its folder takes no new file");
    }
  }

  /** Gives the new file the permissions of the old one and, where that is allowed, its owner. */
  private static void takeOver(Path old, Path part) throws IOException {
    PosixFileAttributeView view = Files.exists(old) ? posix(old) : null;
    if (view == null) {
      return;
    }
    var attributes = view.readAttributes();
    try {
      posix(part).setGroup(attributes.group());
      posix(part).setOwner(attributes.owner());
    } catch (IOException e) {
      // Only the superuser may give files away; the content matters more.
    }
    posix(part).setPermissions(attributes.permissions());
  }

  private static void sweep(Path folder) {
    Instant limit = Instant.now().minus(LEFT_BEHIND);
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, PREFIX + "*" + ENDING)) {
      for (Path part : parts) {
        if (Files.getLastModifiedTime(part).toInstant().isBefore(limit)) {
          Files.deleteIfExists(part);
        }
      }
    } catch (IOException e) {
      // Tidying up must not keep anybody from saving.
    }
  }

  /** The new name is on the disk once its folder is; not every system can force a folder. */
  private static void force(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // The content itself was forced before.
    }
  }
}
