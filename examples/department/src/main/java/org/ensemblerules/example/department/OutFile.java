package org.ensemblerules.example.department;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * A file written line by line, in UTF-8 and with the same line ends everywhere. It is written
 * beside the one that is there, and takes its place only once it is whole: a run that stops halfway
 * leaves the old one. Devices and pipes are written to directly.
 */
final class OutFile implements Closeable {
  private final Path path;
  private final Writer writer;
  private final Optional<Move> move;
  private boolean closed;

  /** What is moved where, once it is whole. */
  private record Move(Path from, Path to) {}

  private OutFile(Path path, Writer writer, Optional<Move> move) {
    this.path = path;
    this.writer = writer;
    this.move = move;
  }

  /** Starts a file. */
  static OutFile create(Path path) throws IOException {
    try {
      if (Files.isDirectory(path)) {
        throw new FileSystemException(path.toString(), null, "it is a folder");
      }
      if (isDevice(path)) {
        return new OutFile(path, Files.newBufferedWriter(path), Optional.empty());
      }
      Path target = target(path);
      if (Files.exists(target) && !Files.isWritable(target)) {
        throw new FileSystemException(path.toString(), null, "access denied");
      }
      for (int tried = 0; ; tried++) {
        Path beside = beside(target, tried);
        try {
          Writer writer =
              Files.newBufferedWriter(
                  beside,
                  StandardCharsets.UTF_8,
                  StandardOpenOption.CREATE_NEW,
                  StandardOpenOption.WRITE);
          // For a run that is ended from outside.
          beside.toFile().deleteOnExit();
          return new OutFile(path, writer, Optional.of(new Move(beside, target)));
        } catch (FileAlreadyExistsException e) {
          if (tried == 100) {
            throw e;
          }
        }
      }
    } catch (FileSystemException e) {
      throw cannotWrite(path, Failures.why(e), e);
    }
  }

  private static boolean isDevice(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    return (Files.exists(path) && !Files.isRegularFile(path))
        || absolute.startsWith("/dev")
        || absolute.startsWith("/proc");
  }

  /** Follows links, so that what they lead to is replaced and not they. */
  private static Path target(Path path) throws IOException {
    if (Files.exists(path)) {
      return path.toRealPath();
    }
    Path absolute = path.toAbsolutePath();
    return Files.isSymbolicLink(path)
        ? absolute.resolveSibling(Files.readSymbolicLink(path))
        : absolute;
  }

  private static Path beside(Path target, int tried) {
    return target.resolveSibling(
        ".department-" + ProcessHandle.current().pid() + "-" + tried + ".part");
  }

  private static IOException cannotWrite(Path path, String why, IOException cause) {
    return new IOException("cannot write " + path + ": " + why, cause);
  }

  void line(String line) throws IOException {
    try {
      writer.write(line);
      writer.write('\n');
    } catch (IOException e) {
      throw cannotWrite(path, String.valueOf(e.getMessage()), e);
    }
  }

  /** Ends the file: it is whole, and takes its place. */
  void finish() throws IOException {
    try {
      closed = true;
      writer.close();
      if (move.isPresent()) {
        put(move.get());
      }
    } catch (FileSystemException e) {
      throw cannotWrite(path, Failures.why(e), e);
    } catch (IOException e) {
      throw cannotWrite(path, String.valueOf(e.getMessage()), e);
    } finally {
      remove();
    }
  }

  private static void put(Move move) throws IOException {
    if (Files.exists(move.to())
        && Files.getFileStore(move.to()).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(move.from(), Files.getPosixFilePermissions(move.to()));
    }
    try {
      Files.move(move.from(), move.to(), StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(move.from(), move.to(), StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private void remove() throws IOException {
    if (move.isPresent()) {
      Files.deleteIfExists(move.get().from());
    }
  }

  /** Ends a file that was not finished: the one that was there stays. */
  @Override
  public void close() throws IOException {
    if (!closed) {
      closed = true;
      try {
        writer.close();
      } finally {
        remove();
      }
    }
  }
}
