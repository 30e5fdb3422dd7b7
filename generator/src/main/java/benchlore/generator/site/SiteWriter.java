package benchlore.generator.site;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes a site whole: into a sibling folder first, then swapped in, so that a failure leaves the
 * old site as it was.
 *
 * <p>Only a folder that is absent, empty or holds nothing but what a build wrote (by the list in
 * {@code benchlore-site.txt}) is replaced: pointing {@code --out} at a folder of one's own can't
 * wipe it, nor can a file of one's own in a site be lost.
 */
public final class SiteWriter {
  private static final int NAMED = 5;

  private SiteWriter() {}

  /**
   * Refuses a folder that {@link #write} would refuse, before any work is done for it, and puts
   * right what a build that was cut short left beside it.
   *
   * @param out the site's folder
   * @param content the folder the site is made from
   * @throws FileAlreadyExistsException if {@code out} holds something that no build wrote
   * @throws IOException if one of the two lies in the other, or the folders can't be read
   */
  public static void ready(Path out, Path content) throws IOException {
    Path target = target(out);
    if (content.getFileSystem().equals(FileSystems.getDefault())) {
      Path read = content.toRealPath();
      if (read.startsWith(target) || target.startsWith(read)) {
        throw new IOException(
            out
                + " and the content "
                + content
                + " lie in one another; give the site its own folder");
      }
    }
    new Leftovers(target).tidy();
    refuseForeign(target);
  }

  /**
   * Writes and swaps in.
   *
   * @param files bytes by path with forward slashes, relative to the site
   * @param out the site's folder
   * @throws FileAlreadyExistsException if {@code out} holds something that no build wrote
   * @throws IOException if a file can't be written; the old site is untouched
   */
  public static void write(Map<String, byte[]> files, Path out) throws IOException {
    Path target = target(out);
    refuseForeign(target);
    Files.createDirectories(target.getParent());
    Leftovers beside = new Leftovers(target);
    Path fresh = Files.createDirectory(beside.fresh());
    Manifest manifest = Manifest.of(files.keySet());
    try {
      // The list stands first, and is held while the folder is filled: a later build can tell what
      // a killed one left from what another is still writing.
      try (FileChannel list =
          FileChannel.open(
              fresh.resolve(Manifest.FILE),
              StandardOpenOption.CREATE_NEW,
              StandardOpenOption.WRITE)) {
        list.lock();
        ByteBuffer text = ByteBuffer.wrap(manifest.text().getBytes(StandardCharsets.UTF_8));
        while (text.hasRemaining()) {
          list.write(text);
        }
        fill(files, fresh);
      }
      openToReaders(fresh);
      swap(fresh, target, beside.old());
    } finally {
      if (Files.exists(fresh)) {
        manifest.delete(fresh);
      }
    }
  }

  private static void fill(Map<String, byte[]> files, Path fresh) throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path path = fresh.resolve(file.getKey()).normalize();
      if (!path.startsWith(fresh)) {
        throw new IOException("a page would leave the site's folder: " + file.getKey());
      }
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
  }

  /** The folder itself where the path leads to it over a link, so that the link stays. */
  private static Path target(Path out) throws IOException {
    Path full = out.toAbsolutePath().normalize();
    if (Files.exists(full)) {
      return full.toRealPath();
    }
    if (Files.isSymbolicLink(full)) {
      throw new IOException(out + " is a link that leads nowhere; make its folder or remove it");
    }
    Path parent = full;
    while (!Files.exists(parent)) {
      parent = parent.getParent();
    }
    return parent.toRealPath().resolve(parent.relativize(full));
  }

  private static void refuseForeign(Path target) throws IOException {
    if (!Files.exists(target)) {
      return;
    }
    if (!Files.isDirectory(target)) {
      throw new FileAlreadyExistsException(target + " is a file; give a folder");
    }
    if (Manifest.isEmpty(target)) {
      return;
    }
    Optional<Manifest> manifest = Manifest.in(target);
    if (manifest.isEmpty()) {
      boolean marked = Files.exists(target.resolve(Manifest.FILE), LinkOption.NOFOLLOW_LINKS);
      throw new FileAlreadyExistsException(
          target
              + (marked
                  ? " holds a site without a list of its files; delete that folder or give another"
                  : " holds files that are no site of ours; give an empty or new folder"));
    }
    List<String> foreign = manifest.get().foreign(target);
    if (!foreign.isEmpty()) {
      String more = foreign.size() > NAMED ? " and " + (foreign.size() - NAMED) + " more" : "";
      throw new FileAlreadyExistsException(
          target
              + " holds what no build wrote: "
              + String.join(", ", foreign.subList(0, Math.min(NAMED, foreign.size())))
              + more
              + "; move it elsewhere, then build again");
    }
  }

  private static void swap(Path fresh, Path target, Path old) throws IOException {
    boolean replaced = Files.exists(target) && !Manifest.isEmpty(target);
    if (replaced) {
      Files.move(target, old);
    } else {
      Files.deleteIfExists(target);
    }
    try {
      Files.move(fresh, target);
    } catch (IOException e) {
      if (replaced) {
        Files.move(old, target);
      }
      throw e;
    }
    if (replaced) {
      Leftovers.delete(old);
    }
  }

  private static void openToReaders(Path folder) throws IOException {
    // A site is read by others too where the system knows such rights.
    if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }
}
