package benchlore.generator.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** A file that is written whole or not at all. */
final class WholeFile {
  private WholeFile() {}

  /**
   * Refuses a place that can't take a whole file, before any work is done for it.
   *
   * @param file the file to write
   * @throws IOException if a folder, a device or a pipe stands there, or its folder is missing
   */
  static void ready(Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException(file + " is a folder; give a file");
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)) {
      throw new IOException(file + " is no ordinary file; print to it with > instead");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new IOException(folder + " is no folder; make it first");
    }
  }

  /**
   * Writes beside the file, then puts it in its place.
   *
   * @param file the file; replaced if it is there
   * @param bytes what it is to hold
   * @throws IOException if it can't be written; the file is as it was
   */
  static void write(Path file, byte[] bytes) throws IOException {
    ready(file);
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path part = target.resolveSibling("." + target.getFileName() + "-" + UUID.randomUUID());
    try {
      try (FileChannel channel =
          FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
          channel.write(rest);
        }
        channel.force(true);
      }
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new IOException(file + " can't be written: " + e.getMessage(), e);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
