package roundbook.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import roundbook.csv.CsvText;
import roundbook.page.Book;
import roundbook.page.PlainTable;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.kind.Intact;
import roundbook.sheet.read.BookReader;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;

/** Writes a job's crew workbook and plain tables, never over an input. */
final class CrewFile {
  private static final int TRIES = 50;

  private final Path file;
  private final Run run;
  private final Console console;

  CrewFile(Path file, Run run, Console console) {
    this.file = file;
    this.run = run;
    this.console = console;
  }

  /**
   * Writes the workbook under the name asked for, or as the next free revision.
   *
   * <p>Where another run takes that revision meanwhile, the one after it is made and written.
   *
   * @param book makes the book of a revision
   * @return where it was written
   */
  Path write(IntFunction<Book> book) throws IOException {
    return write(revision(), book);
  }

  /** Writes the workbook of an order, likewise. */
  Path writeOrder(IntFunction<Book> book) throws IOException {
    return write(revision().ofOrder(), book);
  }

  /** Writes the workbook that follows a revision of a crew workbook, likewise. */
  Path writeAfter(int revision, IntFunction<Book> book) throws IOException {
    return write(Revision.after(revision, file, folder()), book);
  }

  private Path write(Revision revision, IntFunction<Book> book) throws IOException {
    StyleTemplate template = template();
    Optional<Path> named = wanted().file();
    if (named.isPresent()) {
      refuseInput(named.get());
      makeFolder();
      write(named.get(), wanted().force(), book.apply(revision.first()), template);
      return named.get();
    }
    makeFolder();
    for (int tries = 1; ; tries++) {
      int number = revision.firstFree();
      try {
        write(revision.path(number), false, book.apply(number), template);
        return revision.path(number);
      } catch (FileAlreadyExistsException taken) {
        if (tries == TRIES) {
          throw taken;
        }
      }
    }
  }

  /** Fails early where the workbook could not be written, before any log is taken for it. */
  void checkFolder() throws IOException {
    Path folder = makeFolder();
    if (!Files.isWritable(folder)) {
      throw new AccessDeniedException(folder.toString());
    }
  }

  /** Returns the newest workbook of the file, under the name asked for or the last revision's. */
  Optional<Path> newest() throws IOException {
    Optional<Path> named = wanted().file();
    if (named.isPresent()) {
      return named.filter(Files::isRegularFile);
    }
    Revision revision = revision();
    int last = revision.highest();
    return last == 0 ? Optional.empty() : Optional.of(revision.path(last));
  }

  /** Returns the workbook's name; what once had its ending in it keeps it. */
  private Revision revision() {
    Revision plain = Revision.of(file, folder());
    Revision whole = plain.withEnding(file);
    return run.files().hasNamesakeBeside(file) || Files.exists(whole.path(1)) ? whole : plain;
  }

  /** Returns the doubt that the revision to be written follows one of another file. */
  Optional<Problem> otherInput() throws IOException {
    String own = file.getFileName().toString();
    Optional<Path> before = wanted().file().isPresent() ? Optional.empty() : newest();
    return before
        .flatMap(book -> BookReader.property(book, Book.INPUT_PROPERTY))
        .filter(input -> !input.equals(own))
        .map(
            input ->
                Problem.of(ProblemCode.OTHER_INPUT, "before", CellRef.ofFile(own))
                    .with("revision", before.get().getFileName().toString())
                    .with("input", input));
  }

  /** Returns the doubt that another revision follows the one that is read back already. */
  Optional<Problem> newer(int revision) throws IOException {
    Revision after = Revision.after(revision, file, folder());
    Path newest = after.path(after.highest());
    if (wanted().file().isPresent() || after.highest() <= revision) {
      return Optional.empty();
    }
    CellRef where = CellRef.ofFile(file.getFileName().toString());
    return Optional.of(
        Problem.of(ProblemCode.OTHER_INPUT, "newer", where)
            .with("revision", newest.getFileName().toString())
            .remedyOf("newest-revision"));
  }

  private static void write(Path target, boolean replace, Book book, StyleTemplate template)
      throws IOException {
    SafeFile.write(target, replace, out -> BookWriter.write(book, template, out), Intact::check);
  }

  private void refuseInput(Path target) throws IOException {
    List<Path> inputs = new ArrayList<>(run.options().tallies());
    inputs.add(file);
    inputs.addAll(run.files().files());
    for (Path input : inputs) {
      if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
        throw new IOException("the output would replace an input: " + target);
      }
    }
  }

  private StyleTemplate template() throws IOException {
    if (wanted().template().isEmpty()) {
      return StyleTemplate.standard();
    }
    Path path = wanted().template().get();
    Read<StyleTemplate> read =
        StyleTemplate.read(Files.readAllBytes(path), path.getFileName().toString());
    console.say(read.problems());
    return read.value().orElseGet(StyleTemplate::standard);
  }

  /** Returns the folder that the workbook goes to, made where there is none. */
  private Path makeFolder() throws IOException {
    Path beside = wanted().file().orElse(file).toAbsolutePath().getParent();
    Path folder = outFolder().orElse(beside);
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
    }
    return folder;
  }

  private Path folder() {
    return outFolder().orElse(null);
  }

  /** Returns the folder asked for, or the one below it that keeps the file from a namesake. */
  private Optional<Path> outFolder() {
    return wanted().folder().map(top -> run.files().apart(file, top));
  }

  private BookOptions wanted() {
    return run.options().book();
  }

  /** Writes the plain tables where they are asked for; a batch gives each file a folder. */
  void tables(Supplier<List<PlainTable>> tables) throws IOException {
    if (run.options().run().tables().isEmpty()) {
      return;
    }
    for (PlainTable table : tables.get()) {
      table(table.name(), out -> out.write(CsvText.bytes(table)));
    }
  }

  /** Writes one plain table as its rows come, where tables are asked for; says whether. */
  boolean table(String name, SafeFile.Content content) throws IOException {
    Optional<Path> tables = run.options().run().tables();
    if (tables.isEmpty()) {
      return false;
    }
    Path top = run.files().apart(file, tables.get());
    Path folder =
        Files.createDirectories(
            run.files().isBatch() ? top.resolve(file.getFileName().toString()) : top);
    SafeFile.write(folder.resolve(name + ".csv"), true, content, written -> {});
    return true;
  }
}
