package roundbook.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The program in a process of its own, as a user starts it.
 *
 * @param exit its exit code
 * @param said everything it printed
 */
record OwnProcess(int exit, String said) {
  private static final int SECONDS_MOST = 120;

  /** Runs it to its end, with options of the virtual machine before the arguments. */
  static OwnProcess run(Path folder, List<String> virtualMachine, String... arguments) {
    return run(Path.of(System.getProperty("java.home")), folder, virtualMachine, arguments);
  }

  /** Runs it on the Java of a folder. */
  static OwnProcess run(Path home, Path folder, List<String> virtualMachine, String... arguments) {
    try {
      Path said = Files.createTempFile(folder, "said", ".log");
      Process process = start(home, said, virtualMachine, arguments);
      if (!process.waitFor(SECONDS_MOST, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException("it hangs: " + Arrays.toString(arguments));
      }
      return new OwnProcess(process.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  /** Starts it, with all that it prints going to a file. */
  static Process start(Path said, List<String> virtualMachine, String... arguments)
      throws IOException {
    Path java = Path.of(System.getProperty("java.home"));
    return start(java, said, virtualMachine, arguments);
  }

  private static Process start(
      Path home, Path said, List<String> virtualMachine, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(home.resolve("bin").resolve("java").toString());
    command.addAll(virtualMachine);
    command.addAll(List.of("-Djava.awt.headless=true", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(Main.class.getName());
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(said.toFile())
        .start();
  }
}
