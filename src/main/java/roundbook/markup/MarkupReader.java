package roundbook.markup;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.NamedBook;
import roundbook.table.Table;
import roundbook.xml.Limited;
import roundbook.xml.SafeXml;

/** Reads the sheets of an OpenDocument spreadsheet, of spreadsheet XML, and of a web page. */
public final class MarkupReader {
  private static final long PART_LIMIT = 1_000_000_000L;
  private static final int PAGE_LIMIT = 50_000_000;

  /** What the names of cells begin with that a crew types in. */
  private static final String CREW_CELL = "measured_";

  private final String file;
  private final Path path;
  private final Markup kind;
  private Map<String, NamedBook.Range> names = Map.of();

  private MarkupReader(String file, Path path, Markup kind) {
    this.file = file;
    this.path = path;
    this.kind = kind;
  }

  /**
   * Reads every sheet: its first rows at once, the others of a long one when they are asked for.
   *
   * @param file the file's name, for messages
   * @param path the file
   * @param kind what it is
   * @return its tables, or the one problem that keeps it from being read; a crew workbook is one
   */
  public static Read<List<Table>> read(String file, Path path, Markup kind) {
    MarkupReader reader = new MarkupReader(file, path, kind);
    Read<NamedBook> book = reader.read();
    if (reader.names.keySet().stream().anyMatch(name -> name.startsWith(CREW_CELL))) {
      return Read.failed(List.of(reader.problem(ProblemCode.CREW_WORKBOOK, "")));
    }
    return new Read<>(book.value().map(NamedBook::tables), book.problems());
  }

  /** Reads every sheet of an OpenDocument spreadsheet in a zip file with its defined names. */
  public static Read<NamedBook> readNamed(String file, Path path) {
    return new MarkupReader(file, path, Markup.PACKED).read();
  }

  private Read<NamedBook> read() {
    Held held = new Held(file, false, this::again);
    Optional<Problem> broken = again(held);
    List<Table> tables = new ArrayList<>(held.tables());
    if (broken.isPresent()) {
      return Read.failed(List.of(broken.get()));
    }
    if (tables.isEmpty()) {
      return Read.failed(
          List.of(
              kind == Markup.PAGE
                  ? problem(ProblemCode.NOT_A_WORKBOOK, "page")
                  : problem(ProblemCode.EMPTY_FILE, "no-sheet")));
    }
    return Read.of(new NamedBook(file, tables, names, Set.of()), List.of());
  }

  private Optional<Problem> again(SheetTaker taker) {
    try {
      give(taker);
      return Optional.empty();
    } catch (Limited.TooLarge large) {
      return Optional.of(problem(ProblemCode.TOO_LARGE, "part").with("most", large.limit()));
    } catch (Locked locked) {
      return Optional.of(problem(ProblemCode.ENCRYPTED, ""));
    } catch (IOException | XMLStreamException broken) {
      return Optional.of(problem(ProblemCode.UNREADABLE, "cut-short").remedyOf("save-again"));
    }
  }

  private Problem problem(ProblemCode code, String variant) {
    return Problem.of(code, variant, CellRef.ofFile(file));
  }

  /** Says that a file is locked with a password. */
  private static final class Locked extends IOException {
    private static final long serialVersionUID = 1L;
  }

  private void give(SheetTaker taker) throws IOException, XMLStreamException {
    switch (kind) {
      case PACKED -> packed(new OpenDocument(taker));
      case PAGE -> new WebPage(taker).read(page());
      default -> {
        try (InputStream in = limited(Files.newInputStream(path))) {
          if (kind == Markup.FLAT) {
            OpenDocument document = new OpenDocument(taker);
            document.read(SafeXml.open(in));
            names = document.names();
          } else {
            new Spreadsheet2003(taker).read(SafeXml.open(in));
          }
        }
      }
    }
  }

  private void packed(OpenDocument document) throws IOException, XMLStreamException {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      if (isLocked(zip)) {
        throw new Locked();
      }
      for (String part : List.of("styles.xml", "content.xml")) {
        ZipEntry entry = zip.getEntry(part);
        if (entry != null) {
          try (InputStream in = limited(zip.getInputStream(entry))) {
            document.read(SafeXml.open(in));
          }
        }
      }
    }
    names = document.names();
  }

  private static boolean isLocked(ZipFile zip) throws IOException {
    ZipEntry manifest = zip.getEntry("META-INF/manifest.xml");
    if (manifest == null) {
      return false;
    }
    try (InputStream in = zip.getInputStream(manifest)) {
      byte[] head = in.readNBytes(PAGE_LIMIT);
      return new String(head, StandardCharsets.UTF_8).contains("encryption-data");
    }
  }

  private static InputStream limited(InputStream in) {
    return new Limited(new BufferedInputStream(in), PART_LIMIT);
  }

  private String page() throws IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(PAGE_LIMIT + 1);
    }
    if (bytes.length > PAGE_LIMIT) {
      throw new Limited.TooLarge(PAGE_LIMIT);
    }
    boolean wide = bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF;
    if (wide) {
      return new String(bytes, StandardCharsets.UTF_16);
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException western) {
      return new String(bytes, Charset.forName("windows-1252"));
    }
  }
}
