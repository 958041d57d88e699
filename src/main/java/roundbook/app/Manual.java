package roundbook.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.stream.Collectors;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import roundbook.problem.ProblemCode;

/**
 * The manual page and the shell's completion of names, made from the commands themselves so that
 * they never say anything else than {@code --help}.
 *
 * <p>The page is written in the macros of man(7).
 */
final class Manual {
  private static final String NAME = "roundbook";

  private final StringBuilder page = new StringBuilder();

  private Manual() {}

  /**
   * Writes {@code roundbook.1} and {@code roundbook-completion} into a folder.
   *
   * @param args the folder
   */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    CommandLine line = Main.line(nowhere, nowhere);
    Files.writeString(folder.resolve(NAME + ".1"), page(line), StandardCharsets.UTF_8);
    Files.writeString(folder.resolve(NAME + "-completion"), AutoComplete.bash(NAME, line));
  }

  /** Returns the manual page of the program. */
  static String page(CommandLine line) {
    Manual manual = new Manual();
    manual.write(line);
    return manual.page.toString();
  }

  private void write(CommandLine line) {
    CommandSpec program = line.getCommandSpec();
    page.append(".TH ROUNDBOOK 1 \"\" \"roundbook ").append(Version.NUMBER).append("\"\n");
    section("NAME");
    text(NAME + " - " + description(program).toLowerCase(Locale.ROOT));
    section("SYNOPSIS");
    text(NAME + " COMMAND [OPTION]... FILE...");
    section("DESCRIPTION");
    for (String each : program.usageMessage().footer()) {
      text(each);
    }
    for (CommandLine command : line.getSubcommands().values()) {
      command(command.getCommandSpec());
    }
    section("EXIT STATUS");
    for (Exit exit : Exit.values()) {
      entry(String.valueOf(exit.code()), exit.words());
    }
    section("PROBLEMS");
    Properties meanings = meanings();
    for (ProblemCode code : ProblemCode.values()) {
      String meaning = meanings.getProperty(code.id());
      entry(code.id() + " (" + code.severity().word() + ")", meaning);
    }
    section("SAFETY");
    text(
        "Logs weigh hundreds of pounds; chainsaws, axes and lifted loads kill. The program is no"
            + " structural design: local codes, the building authority and licensed engineers and"
            + " riggers decide. Check the first marks of every round by hand before you cut.");
  }

  private void command(CommandSpec command) {
    section("THE COMMAND " + command.name());
    text(description(command));
    command.positionalParameters().forEach(each -> entry(each.paramLabel(), words(each)));
    command.options().stream()
        .filter(option -> !option.hidden())
        .forEach(option -> entry(names(option), words(option)));
  }

  /** Returns what each code of a problem means, by the code. */
  static Properties meanings() {
    try (InputStream in = Manual.class.getResourceAsStream("codes.properties")) {
      Properties meanings = new Properties();
      meanings.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return meanings;
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static String names(OptionSpec option) {
    String names = String.join(", ", option.names());
    return option.arity().max() == 0 ? names : names + " " + option.paramLabel();
  }

  private static String words(CommandLine.Model.ArgSpec argument) {
    return String.join(" ", argument.description());
  }

  private static String description(CommandSpec command) {
    return String.join(" ", command.usageMessage().description());
  }

  private void section(String heading) {
    page.append(".SH ").append(heading).append('\n');
  }

  private void entry(String name, String words) {
    page.append(".TP\n.B ").append(escaped(name)).append('\n');
    text(words);
  }

  private void text(String words) {
    page.append(words.lines().map(Manual::escaped).collect(Collectors.joining("\n")).concat("\n"));
  }

  /** Keeps hyphens as they are typed, and a line's first point or quote from being a macro. */
  private static String escaped(String line) {
    String plain = line.replace("\\", "\\e").replace("-", "\\-");
    return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
  }
}
