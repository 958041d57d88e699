package roundbook.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The program's version, as the build wrote it. */
final class Version {
  /** The version's number. */
  static final String NUMBER = read("version");

  /** The commit it was built from, or "unknown" where that could not be told. */
  static final String COMMIT = read("commit");

  private Version() {}

  private static String read(String key) {
    try (InputStream in = Version.class.getResourceAsStream("/roundbook/version.properties")) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty(key);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
