package roundbook.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The program's version, as the build wrote it. */
final class Version {
  /** The version's number. */
  static final String NUMBER = read();

  private Version() {}

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("/roundbook/version.properties")) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version");
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
